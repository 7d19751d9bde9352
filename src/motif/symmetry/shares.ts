import type { Cell } from '../motif.ts';
import type { Operation } from './operations.ts';
import { length } from './vector.ts';

/** Across: lines that run along the work, told from the left side. Along: lines that run across it, told from the near side. */
export type Direction = 'across' | 'along';

/** Shares are told to a millionth of a millionth, so that a half is 0.5 and not a hair beside it. */
const FINEST = 1e12;

/** The same place in the repeat: from 0 to just under 1. */
export function wrapped(share: number): number {
  const told = Math.round((share - Math.floor(share)) * FINEST) / FINEST;
  return told >= 1 ? 0 : told;
}

/** Where a place, mm from the middle of the cell, lies as a share of the repeat. */
export const shareOf = (place: number, cell: Cell, direction: Direction): number =>
  direction === 'across' ? place / cell.across + 0.5 : 0.5 - place / cell.along;

/** How far apart two shares are, the repeat's ends being one. */
export const apart = (one: number, other: number): number => {
  const gap = Math.abs(one - other) % 1;
  return Math.min(gap, 1 - gap);
};

/** Lines square to a direction that mirror the whole pattern, as rising shares of a repeat. */
export function mirrorShares(operations: readonly Operation[], cell: Cell, direction: Direction): number[] {
  const at = direction === 'across' ? 0 : 1;
  for (const operation of operations) {
    if (operation.kind !== 'mirror' || Math.abs(operation.axis[at]) > 1e-6) continue;
    const first = shareOf(operation.shift[at] / 2, cell, direction);
    const count = Math.round((2 * cell[direction]) / length(operation.aside));
    return Array.from({ length: count }, (_, i) => wrapped(first + i / count)).sort((one, other) => one - other);
  }
  return [];
}
