import type { Box, Piece, Point } from '../geometry/path.ts';
import type { Lettering } from '../job/job.ts';
import type { Part } from '../motif/motif.ts';

/** Which element of the layout a region belongs to. Near is at the bottom of the plan (y > 0), far at the top. */
export type Element =
  | 'field'
  | 'border-near'
  | 'border-far'
  | 'border-left'
  | 'border-right'
  | 'corner'
  | 'inner-near'
  | 'inner-far'
  | 'inner-left'
  | 'inner-right'
  | 'inner-corner'
  | 'medallion'
  | 'lettering';

/**
 * One shape and every place it is painted. Placing a region at `(x, y)` moves its pieces by that much.
 * Distinct shapes stand once, however often they are painted.
 */
export interface Region {
  element: Element;
  part: Part;
  /** The pieces of one part of one repeat, already turned for its side, clipped if `cut`. */
  pieces: Piece[];
  /** True when the edge of the field took part of it away. */
  cut: boolean;
  /** Lies over gaps that bridges leave in what else is painted of its part, and laps over their edges. */
  fills?: true;
  /** Where it is painted: x0, y0, x1, y1, … in mm. */
  at: Float64Array;
}

/** A line of lettering where it stands, and the room that repeats made for it. Lengths in mm, about the centre of the work. */
export interface Lettered extends Box, Pick<Lettering, 'text' | 'place' | 'arc'> {
  /** Name of the face. */
  face: string;
  capHeight: number;
  /** What the letters reach, before any bridge is cut. */
  reach: Box;
  /** y of the base line where it crosses the axis. */
  base: number;
  /** Where each letter stands on the base line, in the order read, spaces included; turned clockwise, radians. */
  stands: { foot: Point; turn: number }[];
}

/**
 * The painted floor, in millimetres about the centre of the work: x to the right, y down, near end at the bottom.
 * Regions of different parts do not overlap.
 */
export interface Drawing {
  /** Outer edge of the work. */
  work: Box;
  /** Outer and inner edge of the border; equal to each other without one. */
  border: { outer: Box; inner: Box };
  /** Outer and inner edge of the second border, where there is one. */
  innerBorder?: { outer: Box; inner: Box };
  field: Box;
  /** Lines between repeats are marked in here only, where walls end them; everywhere without it. */
  marked?: Box;
  /** The lines of lettering and the rooms that repeats made for them, in the order of the job. */
  lettering?: Lettered[];
  regions: Region[];
}
