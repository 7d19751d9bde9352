import type { Frame } from '../read/outline.ts';
import { distanceTo } from './flat.ts';

/**
 * How far two polygons lie apart, mm: the farthest any corner of one is from the other's outline. Curves are to be flattened finely,
 * so that corners stand for the outline between them. Stops at the first corner farther away than `within` and says Infinity.
 */
export function apartAsPolygons(one: readonly number[], other: readonly number[], within: number): number {
  return Math.max(farthestFrom(one, other, within), farthestFrom(other, one, within));
}

function farthestFrom(points: readonly number[], outline: readonly number[], within: number): number {
  let far = 0;
  for (let i = 0; i < points.length; i += 2) {
    const off = distanceTo(outline, points[i]!, points[i + 1]!);
    if (off > within) return Infinity;
    if (off > far) far = off;
  }
  return far;
}

export function polygonFrame(points: readonly number[]): Frame {
  const frame = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  for (let i = 0; i < points.length; i += 2) {
    frame.left = Math.min(frame.left, points[i]!);
    frame.right = Math.max(frame.right, points[i]!);
    frame.top = Math.min(frame.top, points[i + 1]!);
    frame.bottom = Math.max(frame.bottom, points[i + 1]!);
  }
  return frame;
}

/** Area and length of outline of a polygon, mm² and mm. */
export function sizeOf(points: readonly number[]): { area: number; around: number } {
  let [twice, around] = [0, 0];
  for (let i = 0, j = points.length - 2; i < points.length; j = i, i += 2) {
    const [ax, ay, bx, by] = [points[j]!, points[j + 1]!, points[i]!, points[i + 1]!];
    twice += ax * by - bx * ay;
    around += Math.hypot(bx - ax, by - ay);
  }
  return { area: Math.abs(twice) / 2, around };
}
