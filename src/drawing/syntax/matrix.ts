import type { Point } from '../../geometry/path.ts';

/** An affine move: x' = a x + c y + e, y' = b x + d y + f. */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const STILL: Matrix = [1, 0, 0, 1, 0, 0];

/** First `inner`, then `outer`. */
export const times = (outer: Matrix, inner: Matrix): Matrix => {
  const [a, b, c, d, e, f] = outer;
  const [p, q, r, s, t, u] = inner;
  return [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f];
};

export const moved = ([a, b, c, d, e, f]: Matrix, [x, y]: Point): Point => [a * x + c * y + e, b * x + d * y + f];

/** By how much areas grow. Negative when the move mirrors. */
export const determinant = ([a, b, c, d]: Matrix): number => a * d - b * c;

export const shift = (x: number, y: number): Matrix => [1, 0, 0, 1, x, y];

export const stretch = (x: number, y: number): Matrix => [x, 0, 0, y, 0, 0];
