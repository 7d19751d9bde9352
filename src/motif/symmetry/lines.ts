import { type Cell, type Drawn, type Lines, PLAIN } from '../motif.ts';
import { type Gap, gapsBetween } from './free.ts';
import { type Arrangement, basisOf } from './lattice.ts';
import { type Analysis, analyse, TOLERANCE } from './plane.ts';
import { apart, type Direction, wrapped } from './shares.ts';

const holds = ({ from, to }: Gap, share: number, slack: number): boolean => {
  const ahead = wrapped(share - from + slack);
  return ahead <= to - from + 2 * slack;
};

const middle = ({ from, to }: Gap): number => wrapped((from + to) / 2);

/** Whether moving along the direction by any length changes nothing. */
const isEven = ({ outline }: Analysis, direction: Direction): boolean => {
  const aside = direction === 'across' ? 1 : 0;
  return outline.features.every(
    (feature) => feature.kind === 'endless' && Math.abs(feature.run[aside]) < 1e-6 * Math.abs(feature.run[1 - aside]!),
  );
};

/** See `linesOf`. */
function landings(mirrors: number[], gaps: Gap[], slack: number): Lines {
  const isFree = (share: number) => gaps.some((gap) => holds(gap, share, slack));
  const mirrored = mirrors.length > 0;
  const boundary = mirrored ? mirrors.some((share) => apart(share, 0) <= slack) : isFree(0);
  const choices = [
    mirrors.filter(isFree),
    boundary ? [0] : [],
    gaps.map(middle).sort((one, other) => one - other),
    mirrored ? [] : [0],
  ];
  const whole = choices.find((choice) => choice.length > 0) ?? [];
  return { mirrors, whole, half: mirrors.filter((share) => !whole.some((one) => apart(one, share) <= slack)) };
}

/**
 * Where the pattern may be met, worked out from what is drawn, in both directions. For a border only `across` means anything.
 *
 * `mirrors` are the lines that mirror the whole pattern. A line is free when no piece reaches over it, a shape drawn in several
 * pieces of one part that meet counting as one piece. `whole` is the first of these that has any lines:
 *
 * 1. the mirror lines that are free;
 * 2. the repeat's boundary (0): where it is a mirror line, although pieces are cut in half there; where the direction has no
 *    mirror lines, if it is free;
 * 3. other free lines, one for each gap between pieces, at its middle. Mirrors bring them onto each other, so that an edge on
 *    one and an edge on its image meet the pattern alike: the lines between the squares of a checkerboard;
 * 4. where the direction has no mirror lines and no free ones, the repeat's boundary still.
 *
 * `half` are all other mirror lines. A direction in which nothing changes, such as along stripes, has the lines of `PLAIN`.
 * Parameters as for `planeGroup`.
 */
export function linesOf(
  drawn: readonly Drawn[],
  cell: Cell,
  arrangement: Arrangement = 'rectangular',
  tolerance = TOLERANCE,
): { across: Lines; along: Lines } {
  const analysis = analyse(drawn, cell, basisOf(cell, arrangement), tolerance);
  const within = tolerance * Math.min(cell.across, cell.along);
  const one = (direction: Direction): Lines => {
    if (isEven(analysis, direction)) return PLAIN;
    const gaps = gapsBetween(drawn, analysis.outline, cell, arrangement, direction, within);
    return landings(analysis.mirrors[direction], gaps, (2 * within) / cell[direction]);
  };
  return { across: one('across'), along: one('along') };
}
