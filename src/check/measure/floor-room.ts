import type { FloorCorners, FloorEntry, WallName } from '../read/floor.ts';

type Point = readonly [number, number];

export const WALL_NAMES: readonly WallName[] = ['near', 'right', 'far', 'left'];

/** From near to far, or from left to right. */
export const WALL_ENDS: Record<WallName, readonly [keyof FloorCorners, keyof FloorCorners]> = {
  near: ['near-left', 'near-right'],
  right: ['near-right', 'far-right'],
  far: ['far-left', 'far-right'],
  left: ['near-left', 'far-left'],
};

export const ROUND: readonly (keyof FloorCorners)[] = ['near-left', 'near-right', 'far-right', 'far-left'];

/** x, y, x, y … of the corners in turn. */
export const ringOf = (corners: FloorCorners): number[] => ROUND.flatMap((corner) => [...corners[corner]]);

/** Away from the crossing, towards a wall. */
const away = (wall: WallName, [x, y]: Point): number => ({ near: y, right: x, far: -y, left: -x })[wall];

/** Where a centre line meets a wall: how far from the crossing, and how far along the wall from its first end. */
export function met(corners: FloorCorners, wall: WallName): { out: number; along: number; length: number } {
  const [a, b] = WALL_ENDS[wall].map((corner): Point => corners[corner]) as [Point, Point];
  const cross = wall === 'near' || wall === 'far' ? 0 : 1;
  const share = a[cross] / (a[cross] - b[cross]);
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return { out: away(wall, a) + share * (away(wall, b) - away(wall, a)), along: share * length, length };
}

/** How far a wall lies from the centre line that it faces at its two ends. */
export const endsOf = (corners: FloorCorners, wall: WallName): [number, number] =>
  WALL_ENDS[wall].map((corner) => away(wall, corners[corner])) as [number, number];

/** What stands on the way from the crossing to a wall: from where to where. */
export function onTheWay({ obstacles, corners }: FloorEntry, wall: WallName) {
  const [dx, dy] = { near: [0, 1], right: [1, 0], far: [0, -1], left: [-1, 0] }[wall] as [number, number];
  const end = met(corners, wall).out;
  return obstacles.flatMap(({ name, outline }) => {
    const hits: number[] = [];
    for (let i = 0, j = outline.length - 1; i < outline.length; j = i++) {
      const [a, b] = [outline[j]!, outline[i]!];
      const [u, v] = [a[0] * dy - a[1] * dx, b[0] * dy - b[1] * dx];
      if (u < 0 !== v < 0) {
        const t = u / (u - v);
        hits.push((a[0] + t * (b[0] - a[0])) * dx + (a[1] + t * (b[1] - a[1])) * dy);
      }
    }
    hits.sort((one, other) => one - other);
    const found: { name: string; from: number; to: number }[] = [];
    for (let i = 0; i + 1 < hits.length; i += 2) {
      const [from, to] = [Math.max(0, hits[i]!), Math.min(end, hits[i + 1]!)];
      if (to - from > 1e-6) found.push({ name, from, to });
    }
    return found;
  });
}
