import { cornerCount, isStraight, makeOutline, type Outline } from '../read/outline.ts';

/** Corners farther from each other than this are never taken for the same corner, mm. */
const REACH = 1;
/** A corner closer than this to the straight line between its neighbours bends nothing, mm. */
const STRAIGHT = 0.005;

/**
 * How far two outlines lie apart, mm: the farthest any corner or handle of one is from its partner on the other.
 * They may begin at different corners and run opposite ways. Infinity when they are not the same kind of outline.
 */
export function apart(one: Outline, other: Outline): number {
  // Of copies, the outlines that they are copies of are compared where the copies lie.
  const [a, b] = [one.copyOf ?? one, other.copyOf ?? other];
  const [[ax, ay], [bx, by]] = [one.by ?? [0, 0], other.by ?? [0, 0]];
  if (cornerCount(a) === cornerCount(b)) return apartAsDrawn(a, b, bx - ax, by - ay);
  const [c, d] = [withoutIdleCorners(a), withoutIdleCorners(b)];
  return cornerCount(c) === cornerCount(d) ? apartAsDrawn(c, d, bx - ax, by - ay) : Infinity;
}

/** How far apart two outlines are when the other is moved by `x`, `y`. */
function apartAsDrawn(one: Outline, other: Outline, x: number, y: number): number {
  const n = cornerCount(one);
  const first = [one.corners[0]!, one.corners[1]!] as const;
  let least = Infinity;
  for (let start = 0; start < n; start++) {
    const dx = other.corners[2 * start]! + x - first[0];
    const dy = other.corners[2 * start + 1]! + y - first[1];
    if (Math.abs(dx) > REACH || Math.abs(dy) > REACH) continue;
    for (const way of [1, -1] as const) {
      const far = farthest(one, other, x, y, start, way, least);
      if (far < least) least = far;
    }
  }
  return least;
}

/** Farthest partner when corner 0 goes with corner `start` and both run on, or the other runs back. Stops early beyond `least`. */
function farthest(
  one: Outline,
  other: Outline,
  x: number,
  y: number,
  start: number,
  way: 1 | -1,
  least: number,
): number {
  const n = cornerCount(one);
  const between = (a: Float64Array, at: number, b: Float64Array, to: number): number => {
    const dx = a[at]! - b[to]! - x;
    const dy = a[at + 1]! - b[to + 1]! - y;
    return Math.sqrt(dx * dx + dy * dy);
  };
  let far = 0;
  for (let i = 0; i < n; i++) {
    const j = (((start + way * i) % n) + n) % n;
    far = Math.max(far, between(one.corners, 2 * i, other.corners, 2 * j));
    if (far >= least || far > REACH) return Infinity;
    const side = way === 1 ? j : (j - 1 + n) % n;
    const straight = isStraight(one, i);
    if (straight !== isStraight(other, side)) return Infinity;
    if (straight) continue;
    const [out, into] = way === 1 ? [0, 2] : [2, 0];
    far = Math.max(far, between(one.handles, 4 * i, other.handles, 4 * side + out));
    far = Math.max(far, between(one.handles, 4 * i + 2, other.handles, 4 * side + into));
  }
  return far;
}

/** The same outline without corners that lie on the straight line between their neighbours. */
function withoutIdleCorners(outline: Outline): Outline {
  const n = cornerCount(outline);
  const { corners, handles } = outline;
  const kept: number[] = [];
  for (let i = 0; i < n; i++) {
    const before = (i - 1 + n) % n;
    if (!(isStraight(outline, before) && isStraight(outline, i) && isIdle(corners, before, i, (i + 1) % n)))
      kept.push(i);
  }
  if (kept.length === n || kept.length < 2) return outline;
  const points = kept.flatMap((i) => [corners[2 * i]!, corners[2 * i + 1]!]);
  const sides = kept.flatMap((i) => [...handles.subarray(4 * i, 4 * i + 4)]);
  return makeOutline(Float64Array.from(points), Float64Array.from(sides));
}

function isIdle(corners: Float64Array, before: number, at: number, after: number): boolean {
  const ux = corners[2 * after]! - corners[2 * before]!;
  const uy = corners[2 * after + 1]! - corners[2 * before + 1]!;
  const vx = corners[2 * at]! - corners[2 * before]!;
  const vy = corners[2 * at + 1]! - corners[2 * before + 1]!;
  const long = Math.sqrt(ux * ux + uy * uy);
  const onward = ux * vx + uy * vy;
  return long > 0 && onward > 0 && onward < long * long && Math.abs(ux * vy - uy * vx) / long < STRAIGHT;
}
