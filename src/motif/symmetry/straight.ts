import type { Point } from '../../geometry/path.ts';
import { type Edge, endOf, startOf } from './edge.ts';
import { between, cross, dot, length, minus } from './vector.ts';

/** Bends sharper than this, as a sine, are corners however short the sides. */
const BEND = 1e-5;

/** Where on a straight edge a point lies, from 0 to 1, or nothing where it lies `within` or more away. */
export function placeOnStraight(edge: Edge, point: Point, within: number): number | undefined {
  const along = minus(endOf(edge), startOf(edge));
  const to = minus(point, startOf(edge));
  const size = length(along);
  return Math.abs(cross(along, to)) < within * size ? dot(along, to) / (size * size) : undefined;
}

export function cutStraight(edge: Edge, t: number): [Edge, Edge] {
  const [from, to] = [startOf(edge), endOf(edge)];
  const middle = between(from, to, t);
  return [
    { ...edge, points: [from, middle] },
    { ...edge, points: [middle, to] },
  ];
}

/** Both edges as one, where the second begins at the end of the first and goes on the same way. */
export function joinStraight(first: Edge, next: Edge, within: number): Edge | undefined {
  const [u, v] = [minus(endOf(first), startOf(first)), minus(endOf(next), startOf(next))];
  const bend = Math.abs(cross(u, v));
  if (dot(u, v) <= 0 || bend > BEND * length(u) * length(v) || bend > within * (length(u) + length(v)))
    return undefined;
  return { ...first, points: [startOf(first), endOf(next)] };
}
