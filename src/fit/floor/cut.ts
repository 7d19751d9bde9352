import type { Reach } from '../../site/floor-room.ts';

/** Evenly spaced lines to either side of a centre line, mm: the first at `first`, which is 0 or half of `unit`. */
export interface Spacing {
  unit: number;
  first: number;
}

/** What a wall leaves of the last repeat (or of the last of its pieces), mm: where the centre line meets it, and at its narrowest and widest. */
export interface Cut {
  centre: number;
  least: number;
  most: number;
  /** The wall runs along a line between repeats: nothing is cut. */
  whole: boolean;
}

/** What lies this near a line, mm, lies on it. */
const ON = 1e-6;

/**
 * How a wall cuts the pattern. Undefined where no whole repeat lies before it, or where it crosses a line between repeats, so that a sliver is left of
 * one of them.
 */
export function cutAt({ centre, least, most }: Reach, { unit, first }: Spacing): Cut | undefined {
  const lines = Math.ceil((least - first) / unit - ON / unit) - 1;
  const line = first + lines * unit;
  if (lines < 0 || most > line + unit + ON) return undefined;
  const isWhole = Math.abs(least - line - unit) <= ON && most - least <= ON;
  if (isWhole) return { centre: unit, least: unit, most: unit, whole: true };
  return { centre: centre - line, least: least - line, most: most - line, whole: false };
}

/**
 * Whether a cut is allowed: whole, or never under half a repeat, at its narrowest. The rule of ANSI A108.02, 4.3.1 and 4.3.2, for tile: centre and balance,
 * no piece under half size.
 */
export const isBalanced = (cut: Cut, { unit }: Spacing): boolean => cut.whole || cut.least >= unit / 2 - ON;

/** Share of a repeat that is left at the narrowest, from a half to 1. */
export const shareOf = (cut: Cut, { unit }: Spacing): number => Math.min(1, cut.least / unit);
