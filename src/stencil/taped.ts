import type { Chosen, Motifs } from '../compose/compose.ts';
import type { Job } from '../job/job.ts';
import type { Motif, Part, Pen } from '../motif/motif.ts';

/** A part that is masked off with tape and painted without a sheet. */
export interface TapedPart {
  part: Part;
  colour: string;
  /** What to do, in a sentence. */
  says: string;
}

/** The parts a motif draws, in the order it names them. */
function partsOf(motif: Motif, settings: Record<string, number>): Part[] {
  const parts = new Set<Part>();
  const nothing = () => {};
  const pen: Pen = {
    part: (name) => parts.add(name),
    moveTo: nothing,
    lineTo: nothing,
    curveTo: nothing,
    close: nothing,
  };
  const across = 100;
  motif.draw({ across, along: motif.kind === 'field' ? across * motif.ratio : across }, settings, pen);
  return [...parts];
}

const WHERE: Record<Motif['kind'], string> = {
  field: 'the field',
  border: 'the border',
  corner: 'the corner blocks',
  medallion: 'the medallion',
};

/** What is painted between lines of tape instead of through a sheet: plain bands and plain corner blocks. */
export function tapedParts(job: Chosen & Pick<Job, 'colours'>, motifs: Motifs): TapedPart[] {
  const chosen: [Motif | undefined, Record<string, number>][] = [
    [motifs.field, job.field.settings],
    [motifs.border, job.border.settings],
    [motifs.corner, job.border.corner.settings],
  ];
  return chosen.flatMap(([motif, settings]) => {
    if (motif?.made !== 'tape') return [];
    return partsOf(motif, settings).map((part): TapedPart => {
      const colour = job.colours[part];
      return {
        part,
        colour,
        says: `Mask ${WHERE[motif.kind]} with tape along its lines and paint between them in ${colour}; no sheet is needed.`,
      };
    });
  });
}
