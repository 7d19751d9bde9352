import type { Region } from '../compose/drawing.ts';
import { composeEdging } from '../compose/edging.ts';
import { familiesOf } from '../compose/families.ts';
import { composeField } from '../compose/field.ts';
import type { Box } from '../geometry/path.ts';
import type { Motif, Part, Settings } from '../motif/motif.ts';
import { drawMotif } from '../motif/record.ts';
import { regionText } from './path.ts';
import { element } from './svg.ts';

/** A motif as it looks at work, in a square of `size` mm with its left top corner at 0, 0. */
export interface Specimen {
  regions: Region[];
  /** What is shown, about the middle of the square. */
  box: Box;
}

const centred = (across: number, along: number): Box => ({
  left: -across / 2,
  top: -along / 2,
  right: across / 2,
  bottom: along / 2,
});

/** Repeats across a specimen of a field: enough to see how they meet. */
const REPEATS = 3;

/** As many whole repeats of the field as come nearest to a square. */
function fieldSpecimen(motif: Motif, settings: Settings, size: number): Specimen {
  const wide = motif.ratio >= 1 ? Math.max(2, Math.round(REPEATS * motif.ratio)) : REPEATS;
  const high = motif.ratio >= 1 ? REPEATS : Math.max(2, Math.round(REPEATS / motif.ratio));
  const across = size / Math.max(wide, high * motif.ratio);
  const pitch = { across, along: across * motif.ratio };
  const box = centred(wide * pitch.across, high * pitch.along);
  const phase = { across: 0, along: 0 };
  const first = { drawn: drawMotif(motif, pitch, settings), lattice: motif.lattice };
  return { regions: composeField({ pitch, phase }, box, familiesOf(first)), box };
}

/** A border turning its four corners: its own where it has one, otherwise cut on the diagonal, otherwise butted. */
async function borderSpecimen(motif: Motif, settings: Settings, size: number): Promise<Specimen> {
  const box = centred(size, size);
  const turn = motif.corner ? 'own' : motif.refuses?.mitre ? 'butt' : 'mitre';
  const width = size / 5;
  const count = (side: number) => Math.max(2, 2 * Math.round(side / (2 * width * motif.ratio)));
  const repeats = { across: count(turn === 'butt' ? size : size - 2 * width), along: count(size - 2 * width) };
  const regions = await composeEdging({
    order: 'border',
    outer: box,
    width,
    repeats,
    motif,
    settings,
    turn,
    run: 'reverse',
  });
  return { regions, box };
}

/** Any motif at work. */
export async function specimenOf(motif: Motif, settings: Settings, size: number): Promise<Specimen> {
  if (motif.kind === 'field') return fieldSpecimen(motif, settings, size);
  if (motif.kind === 'border') return borderSpecimen(motif, settings, size);
  const box = centred(size, size);
  const regions = drawMotif(motif, { across: size, along: size }, settings).map(
    ({ part, pieces }): Region => ({ element: 'field', part, pieces, cut: false, at: Float64Array.of(0, 0) }),
  );
  return { regions, box };
}

/** Its regions as paths, moved so that its middle lies at (x, y). */
export function specimenPaths({ regions }: Specimen, [x, y]: [number, number], hex: (part: Part) => string): string {
  return regions
    .map(({ part, pieces, at }) => {
      const moved = at.map((value, i) => value + (i % 2 === 0 ? x : y));
      return element('path', { fill: hex(part), d: regionText(pieces, moved) });
    })
    .join('\n');
}
