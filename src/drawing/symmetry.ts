import type { Lines, Motif } from '../motif/motif.ts';
import { drawMotif } from '../motif/record.ts';
import { linesOf, planeGroup } from '../motif/symmetry/index.ts';
import type { Notes } from './notes.ts';

/**
 * How far a drawing may be off its own image, as shares of its shorter side: as drawn by reckoning, and as files that round their
 * numbers hold it (0.015 mm on a repeat of 300 mm).
 */
const OFF = [1e-6, 1e-5, 5e-5];
/** The shorter side of the cell that symmetry is looked for in, mm. */
const SIDE = 300;
/** With more sides than this symmetry is not looked for, which would take too long. */
const MOST_SIDES = 4_000;
/** With more than this only the closest match counts. */
const MOST_TRIED = 1_500;

type Symmetry = Pick<Motif, 'lines' | 'symmetry'>;

const EDGE: Lines = { mirrors: [], whole: [0], half: [] };

const mirrorsOf = ({ lines }: Symmetry): number => lines.across.mirrors.length + lines.along.mirrors.length;

const mirrorsBothWays = ({ lines }: Symmetry): boolean =>
  lines.across.mirrors.length > 0 && lines.along.mirrors.length > 0;

/** Where the drawing's pattern may be met, and its plane group, worked out from what it draws. Of several, what has most mirror lines. */
export function symmetryOf(motif: Motif, notes: Notes): Symmetry {
  const { ratio } = motif;
  const cell = ratio < 1 ? { across: SIDE / ratio, along: SIDE } : { across: SIDE, along: SIDE * ratio };
  const drawn = drawMotif(motif, cell, {});
  const sides = drawn.flatMap(({ pieces }) => pieces.flat()).reduce((sum, ring) => sum + ring.sides.length, 0);
  if (sides > MOST_SIDES) {
    notes.add(
      `With ${sides} lines and curves the drawing is too large for its mirror lines to be looked for; it ends at the edges of its page`,
    );
    return { lines: { across: EDGE, along: EDGE } };
  }
  let best: Symmetry | undefined;
  for (const off of OFF) {
    const { group } = planeGroup(drawn, cell, 'rectangular', off);
    const found: Symmetry = { lines: linesOf(drawn, cell, 'rectangular', off), symmetry: group };
    if (best === undefined || mirrorsOf(found) > mirrorsOf(best)) best = found;
    if (sides > MOST_TRIED || mirrorsBothWays(found)) break;
  }
  return best!;
}
