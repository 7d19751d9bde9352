import type { Layout } from '../fit/layout.ts';
import type { Box } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import type { Motif } from '../motif/motif.ts';
import { drawMotif } from '../motif/record.ts';
import { composeCorners, composeSides } from './border.ts';
import type { Drawing } from './drawing.ts';
import { composeField } from './field.ts';

/** The motifs a job names, found. Without a border there is neither border nor corner. */
export interface Motifs {
  field: Motif;
  border?: Motif;
  corner?: Motif;
}

/** What composing needs of a job. */
export interface Chosen {
  field: Pick<Job['field'], 'settings'>;
  border: Pick<Job['border'], 'settings'> & { corner: Pick<Job['border']['corner'], 'settings'> };
}

const centred = (across: number, along: number): Box => ({
  left: -across / 2,
  top: -along / 2,
  right: across / 2,
  bottom: along / 2,
});

/**
 * Draws the layout: the field, then the four sides of the border, then the corner blocks, about the centre of the work.
 * The border lies at the edge of the work; the reserve, if any, between border and field.
 */
export async function compose(layout: Layout, job: Chosen, motifs: Motifs): Promise<Drawing> {
  const { work, border, field: size, pitch } = layout;
  const outer = centred(work.across, work.along);
  const inner = centred(work.across - 2 * border, work.along - 2 * border);
  const field = centred(size.across, size.along);
  const cell = { across: pitch.across, along: pitch.along };
  const regions = await composeField(layout, field, drawMotif(motifs.field, cell, job.field.settings));
  if (border > 0 && motifs.border) regions.push(...composeSides(layout, outer, motifs.border, job.border.settings));
  if (border > 0 && motifs.corner) {
    regions.push(...composeCorners(layout, outer, motifs.corner, job.border.corner.settings));
  }
  return { work: outer, border: { outer, inner }, field, regions };
}
