import type { Point } from '../../geometry/path.ts';

export const plus = (p: Point, q: Point): Point => [p[0] + q[0], p[1] + q[1]];
export const minus = (p: Point, q: Point): Point => [p[0] - q[0], p[1] - q[1]];
export const times = (p: Point, k: number): Point => [p[0] * k, p[1] * k];
export const dot = (p: Point, q: Point): number => p[0] * q[0] + p[1] * q[1];
/** Positive where `q` lies clockwise of `p` on the page (y down). */
export const cross = (p: Point, q: Point): number => p[0] * q[1] - p[1] * q[0];
export const length = (p: Point): number => Math.sqrt(dot(p, p));
export const distance = (p: Point, q: Point): number => length(minus(p, q));
export const between = (p: Point, q: Point, t: number): Point => plus(times(p, 1 - t), times(q, t));

export function mean(points: readonly Point[]): Point {
  let [x, y] = [0, 0];
  for (const point of points) {
    x += point[0];
    y += point[1];
  }
  return [x / points.length, y / points.length];
}
