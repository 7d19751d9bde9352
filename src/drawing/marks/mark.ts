import type { Place } from '../refusal.ts';
import type { Matrix } from '../syntax/matrix.ts';
import type { Outline } from '../syntax/outline.ts';

export type FillRule = 'nonzero' | 'evenodd';
export type Cap = 'butt' | 'round' | 'square';
export type Join = 'miter' | 'round' | 'bevel';

/** A line drawn along an outline. Lengths in the shape's own coordinates. */
export interface Stroke {
  width: number;
  cap: Cap;
  join: Join;
  /** Longest mitre allowed, in widths of the line. */
  limit: number;
  /** Lengths of dash and gap in turn; empty for a whole line. */
  dashes: number[];
  offset: number;
}

/** What everything in it is cut to: all the shapes together, themselves cut where they say so. */
export interface Clip {
  shapes: { outlines: Outline[]; matrix: Matrix; rule: FillRule }[];
  within: Clip[];
}

/** One colour laid on: an outline filled, or a line drawn along it. */
export interface Mark {
  outlines: Outline[];
  /** From the shape's own coordinates to the page's. */
  matrix: Matrix;
  how: { kind: 'fill'; rule: FillRule } | { kind: 'stroke'; stroke: Stroke };
  /** `#rrggbb`. */
  colour: string;
  clips: Clip[];
  place: Place;
}
