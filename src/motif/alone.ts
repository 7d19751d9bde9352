import { emptyBox, joinBoxes, piecesBox } from '../geometry/measure.ts';
import type { Motif } from './motif.ts';
import { drawMotif } from './record.ts';

/** Width of the repeat drawn for a look, mm, and how far a piece may stand over its edge by rounding. */
const ACROSS = 100;
const TOUCH = 1e-6;

/** Whether a field motif at its usual settings fills its own repeat and no other: one unit to a cell, none of it beyond the cell's edges. */
export function standsAlone(motif: Motif): boolean {
  if (motif.lattice !== undefined && motif.lattice !== 'rectangular') return false;
  const usual = Object.fromEntries(Object.entries(motif.parameters).map(([name, { default: value }]) => [name, value]));
  const [x, y] = [ACROSS / 2, (ACROSS * motif.ratio) / 2];
  const { left, right, top, bottom } = drawMotif(motif, { across: 2 * x, along: 2 * y }, usual)
    .map(({ pieces }) => piecesBox(pieces))
    .reduce(joinBoxes, emptyBox());
  return Math.max(-left - x, right - x, -top - y, bottom - y) <= TOUCH;
}
