/** How much of a person's file is taken. Beyond these it is refused, so that no file can stop the program. */
export const MOST_BYTES = 2_000_000;
export const MOST_DEEP = 64;
/** How deep elements may stand in one another where copies (`use`) lead on. */
export const MOST_LINKED = 200;
/** Elements, those that a `use` repeats counted every time. */
export const MOST_ELEMENTS = 20_000;
export const MOST_NUMBERS = 500_000;
export const MOST_RULES = 2_000;
/** Lines and curves drawn, those that a `use` repeats counted every time. */
export const MOST_SIDES = 20_000;
export const MOST_DASHES = 5_000;
/** Rings of one repeat. */
export const MOST_RINGS = 5_000;
/** Corners of all outlines once their curves are cut into chords. */
export const MOST_CORNERS = 400_000;
/** Pairs of chords that lie at the same height, a pair that crosses counted a hundred times: how long a drawing takes (about 10 s). */
export const MOST_PAIRS = 100_000_000;

/** The longer side of the page in the units all shapes are worked in; a unit is the thousandth part of it. */
export const PAGE = 1000;
/** Nothing may be drawn farther out than this, in the same units. */
export const FARTHEST = 100_000;
/** How far a redrawn curve may lie from the true one, in the same units. */
export const NEAR = 0.02;
