import type { Layout } from '../fit/layout.ts';
import type { Motifs } from '../fit/problem.ts';
import type { Box } from '../geometry/path.ts';
import type { Job, Way } from '../job/job.ts';
import type { Drawn, Motif, Settings } from '../motif/motif.ts';
import { drawMotif } from '../motif/record.ts';
import { clearRoom } from './clear.ts';
import type { Drawing, Region } from './drawing.ts';
import { composeEdging } from './edging.ts';
import { type Family, familiesOf } from './families.ts';
import { composeField } from './field.ts';
import { asDrawn, type Finish, metAlone, type Standing } from './finish.ts';
import { composeInset } from './inset.ts';

export type { Motifs } from '../fit/problem.ts';

type Set = { settings: Settings };

/** What composing needs of a job. */
export interface Chosen {
  field: Set & Pick<Job['field'], 'alternation' | 'inset'>;
  border: Set & Partial<Way> & { corner: Set };
  inner?: Set & Partial<Way> & { corner: Set };
  medallion?: NonNullable<Job['medallion']>;
}

const centred = (across: number, along: number): Box => ({
  left: -across / 2,
  top: -along / 2,
  right: across / 2,
  bottom: along / 2,
});

const shrunk = (box: Box, across: number, along: number): Box => ({
  left: box.left + across,
  top: box.top + along,
  right: box.right - across,
  bottom: box.bottom - along,
});

/** The kinds of repeats of the field, each finished. */
function fieldFamilies({ pitch }: Layout, job: Chosen, motifs: Motifs, finish: Finish): Family[] {
  const { alternation, settings } = job.field;
  const unit = (motif: Motif, given: Settings) => ({
    drawn: drawMotif(motif, pitch, given),
    lattice: motif.lattice,
    cell: pitch,
  });
  const other = motifs.other && unit(motifs.other, alternation?.other?.settings ?? {});
  const families = familiesOf(unit(motifs.field, settings), alternation?.by, other);
  const standing = families.map(({ drawn, from, every }): Standing => {
    return {
      drawn,
      at: [from.across * pitch.across, -from.along * pitch.along],
      every: [every.across * pitch.across, every.along * pitch.along],
    };
  });
  const met = finish.meeting(standing).map((drawn, at) => ({ ...standing[at]!, drawn }));
  return finish.repeated(met).map((drawn, at): Family => {
    const { drawn: bare, ...family } = families[at]!;
    return { ...family, bare, drawn: finish.unit(drawn, 'motif') };
  });
}

/** One repeat of the field, the first, as it is finished. */
export const repeatOf = (layout: Layout, job: Chosen, motifs: Motifs, finish: Finish): Drawn[] =>
  fieldFamilies(layout, job, motifs, finish)[0]!.drawn;

function fieldRegions(layout: Layout, field: Box, job: Chosen, motifs: Motifs, finish: Finish): Region[] {
  const { inset, settings } = job.field;
  const regions = composeField(layout, field, fieldFamilies(layout, job, motifs, finish));
  if (!inset || !motifs.inset) return regions;
  const host = { motif: motifs.field, settings };
  return [...regions, ...composeInset(layout, field, host, { ...inset, motif: motifs.inset }, finish)];
}

/** The field with a medallion in its middle, in the room of a whole number of repeats. */
async function withMedallion(
  regions: Region[],
  layout: Layout,
  { medallion }: Chosen,
  motifs: Motifs,
  finish: Finish,
): Promise<Region[]> {
  if (!medallion || !motifs.medallion) return regions;
  const { pitch } = layout;
  const cell = { across: medallion.repeats.across * pitch.across, along: medallion.repeats.along * pitch.along };
  const drawn = finish.unit(metAlone(drawMotif(motifs.medallion, cell, medallion.settings), finish), 'motif');
  const placed = drawn.map(
    ({ part, pieces }): Region => ({ element: 'medallion', part, pieces, cut: false, at: Float64Array.of(0, 0) }),
  );
  return [...(await clearRoom(regions, centred(cell.across, cell.along))), ...placed];
}

/**
 * Draws the layout about the centre of the work: the field with what stands in it, then the border and its corners, then a second border.
 * The border lies at the edge of the work; the reserve, if any, between border and field.
 * @param finish what is done with each unit before it is placed
 */
export async function compose(layout: Layout, job: Chosen, motifs: Motifs, finish: Finish = asDrawn): Promise<Drawing> {
  const { work, border, field: size, inner } = layout;
  const outer = centred(work.across, work.along);
  const inside = shrunk(outer, border, border);
  const field = centred(size.across, size.along);
  const regions = await withMedallion(fieldRegions(layout, field, job, motifs, finish), layout, job, motifs, finish);
  const drawing: Drawing = { work: outer, border: { outer, inner: inside }, field, regions };
  if (border > 0 && motifs.border) {
    const { settings, corner, turn = 'block', run = 'reverse' } = job.border;
    const repeats = layout.borderRepeats;
    const block = motifs.corner && { corner: { motif: motifs.corner, settings: corner.settings } };
    regions.push(
      ...(await composeEdging({
        order: 'border',
        outer,
        width: border,
        repeats,
        motif: motifs.border,
        settings,
        turn,
        run,
        finish,
        ...block,
      })),
    );
  }
  if (inner && job.inner && motifs.inner) {
    const { settings, corner, turn = 'block', run = 'reverse' } = job.inner;
    const around = shrunk(inside, inner.offset.across, inner.offset.along);
    const block = motifs.innerCorner && { corner: { motif: motifs.innerCorner, settings: corner.settings } };
    const { width, repeats } = inner;
    regions.push(
      ...(await composeEdging({
        order: 'inner',
        outer: around,
        width,
        repeats,
        motif: motifs.inner,
        settings,
        turn,
        run,
        finish,
        ...block,
      })),
    );
    drawing.innerBorder = { outer: around, inner: shrunk(around, width, width) };
  }
  return drawing;
}
