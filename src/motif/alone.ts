import { emptyBox, joinBoxes, pieceBox, piecesBox } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import type { Motif } from './motif.ts';
import { drawMotif } from './record.ts';

/** Width of the repeat drawn for a look, mm, and how far a piece may stand over its edge by rounding. */
const ACROSS = 100;
const TOUCH = 1e-6;

/** One repeat at its usual settings, and half its size. */
function usualRepeat(motif: Motif) {
  const usual = Object.fromEntries(Object.entries(motif.parameters).map(([name, { default: value }]) => [name, value]));
  const [x, y] = [ACROSS / 2, (ACROSS * motif.ratio) / 2];
  return { drawn: drawMotif(motif, { across: 2 * x, along: 2 * y }, usual), x, y };
}

const isRectangular = ({ lattice = 'rectangular' }: Motif): boolean => lattice === 'rectangular';

/** By how much a box stands over the edges of a repeat, mm. */
const over = ({ left, right, top, bottom }: Box, x: number, y: number): number =>
  Math.max(-left - x, right - x, -top - y, bottom - y);

/** What is found of a motif stays so: jobs are read anew with every letter typed. */
function keptOf(find: (motif: Motif) => boolean): (motif: Motif) => boolean {
  const kept = new WeakMap<Motif, boolean>();
  return (motif) => {
    const found = kept.get(motif) ?? find(motif);
    kept.set(motif, found);
    return found;
  };
}

/** Whether every second repeat of a field can have its colours exchanged: they stand in rows, and something lies wholly within each. */
export const takesTurns = keptOf((motif) => {
  if (!isRectangular(motif)) return false;
  const { drawn, x, y } = usualRepeat(motif);
  return drawn.length === 0 || drawn.some(({ pieces }) => pieces.some((piece) => over(pieceBox(piece), x, y) <= TOUCH));
});

/** Whether a field motif at its usual settings fills its own repeat and no other: one unit to a cell, none of it beyond the cell's edges. */
export const standsAlone = keptOf((motif) => {
  if (!isRectangular(motif)) return false;
  const { drawn, x, y } = usualRepeat(motif);
  return over(drawn.map(({ pieces }) => piecesBox(pieces)).reduce(joinBoxes, emptyBox()), x, y) <= TOUCH;
});
