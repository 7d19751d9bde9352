import { pieceBox } from '../../geometry/measure.ts';
import type { Cell, Drawn } from '../motif.ts';
import { endOf, startOf } from './edge.ts';
import type { Arrangement } from './lattice.ts';
import type { Outline } from './outline.ts';
import { apart, type Direction, shareOf, wrapped } from './shares.ts';

/** A stretch of shares from `from`, 0 to just under 1, to `to`, which may be over 1. */
export interface Gap {
  from: number;
  to: number;
}

/** Shares a direction's pieces reach over, low before high. */
function reaches(drawn: readonly Drawn[], cell: Cell, arrangement: Arrangement, direction: Direction): Gap[] {
  const steps = arrangement === 'rectangular' ? [0] : [0, 0.5];
  return drawn.flatMap(({ pieces }) =>
    pieces.flatMap((piece) => {
      const box = pieceBox(piece);
      const ends = direction === 'across' ? [box.left, box.right] : [box.bottom, box.top];
      const [from, to] = ends.map((place) => shareOf(place, cell, direction)) as [number, number];
      return steps.map((step) => ({ from: from + step, to: to + step }));
    }),
  );
}

/** Where two pieces of one part meet along a line square to the direction, and so are one piece. */
const seamShares = (outline: Outline, cell: Cell, direction: Direction, within: number): number[] => {
  const at = direction === 'across' ? 0 : 1;
  return outline.seams
    .filter((edge) => edge.kind === 'straight' && Math.abs(startOf(edge)[at] - endOf(edge)[at]) <= within)
    .map((edge) => shareOf(startOf(edge)[at], cell, direction));
};

/**
 * The gaps between pieces in one direction: lines square to it that cut none. A gap without width is a line at which pieces
 * of both sides end.
 * @param within mm that a piece may reach over a line without being cut by it
 */
export function gapsBetween(
  drawn: readonly Drawn[],
  outline: Outline,
  cell: Cell,
  arrangement: Arrangement,
  direction: Direction,
  within: number,
): Gap[] {
  const slack = within / cell[direction];
  const covers = reaches(drawn, cell, arrangement, direction)
    .map(({ from, to }) => ({ from: from + slack, to: to - slack }))
    .filter(({ from, to }) => to > from)
    .map(({ from, to }) => ({ from: from - Math.floor(from), to: to - Math.floor(from) }))
    .sort((one, other) => one.from - other.from);
  const first = covers[0];
  if (first === undefined) return [];
  // Once round, from the first piece's start to the same a repeat later.
  const gaps: Gap[] = [];
  let reached = Math.max(...covers.map(({ to }) => to - 1), first.from);
  for (const { from, to } of [...covers, { from: first.from + 1, to: first.from + 1 }]) {
    if (from > reached) gaps.push({ from: reached, to: from });
    reached = Math.max(reached, to);
  }
  const seams = seamShares(outline, cell, direction, within);
  return gaps
    .filter(({ from, to }) => to - from > 4 * slack || !seams.some((seam) => apart(seam, (from + to) / 2) <= 4 * slack))
    .map(({ from, to }) => ({ from: wrapped(from), to: wrapped(from) + to - from }));
}
