import { isInside } from '../../geometry/inside.ts';
import type { Piece, Point } from '../../geometry/path.ts';
import type { Outline } from './outline.ts';

/** A place where too little of the sheet is left, mm. */
interface Weak {
  x: number;
  y: number;
  width: number;
}

/** A strip to be kept along a neck, and its middle line. Lengths in mm. */
export interface NeckStrip {
  piece: Piece;
  at: Point;
  way: Point;
  length: number;
}

/** Stations along a neck lie this share of the bridge apart. */
const STATION = 1 / 16;
/** A neck is followed this many bridges far, either way. */
const FARTHEST = 12;

/** A strip reaches so much into the sheet on either side, in widths of a bridge. */
const INTO = 0.35;

const insideAny = (outlines: Outline[], point: Point): boolean => {
  const [x, y] = point;
  return (
    outlines.filter(
      ({ box, points }) =>
        x >= box.left && x <= box.right && y >= box.top && y <= box.bottom && isInside(points, point),
    ).length %
      2 ===
    1
  );
};

/** The point of the outlines nearest to a place, among those that lie in the way given, if one is. */
function nearest(outlines: Outline[], [x, y]: Point, within: number, way?: Point): Point | undefined {
  let best = within * within;
  let found: Point | undefined;
  for (const { points, box } of outlines) {
    if (x < box.left - within || x > box.right + within || y < box.top - within || y > box.bottom + within) continue;
    let [ax, ay] = points[points.length - 1]!;
    for (const [bx, by] of points) {
      const [ux, uy] = [bx - ax, by - ay];
      const long = ux * ux + uy * uy;
      const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * ux + (y - ay) * uy) / long));
      const [px, py] = [ax + t * ux, ay + t * uy];
      const [dx, dy] = [px - x, py - y];
      const far = dx * dx + dy * dy;
      if (far < best && (!way || dx * way[0] + dy * way[1] > 0.5 * Math.sqrt(far))) {
        best = far;
        found = [px, py];
      }
      [ax, ay] = [bx, by];
    }
  }
  return found;
}

/** Across a neck of no width, where two windows touch: the way in which most of a small circle round the place is cut, on both sides. */
function acrossTouch(outlines: Outline[], [x, y]: Point, radius: number): Point {
  const steps = Array.from({ length: 48 }, (_, n) => (Math.PI * n) / 24);
  let [c, s] = [0, 0];
  for (const share of [0.4, 0.7, 1])
    for (const angle of steps) {
      const [r, dx, dy] = [share * radius, Math.cos(angle), Math.sin(angle)];
      if (!insideAny(outlines, [x + r * dx, y + r * dy])) continue;
      // Opposite ways count alike, so angles are taken twice.
      c += Math.cos(2 * angle);
      s += Math.sin(2 * angle);
    }
  const angle = Math.atan2(s, c) / 2;
  return [Math.cos(angle), Math.sin(angle)];
}

/** The way across a neck, of length 1. */
function acrossNeck(outlines: Outline[], at: Point, least: number): Point {
  const one = nearest(outlines, at, least);
  const [dx, dy] = one ? [one[0] - at[0], one[1] - at[1]] : [0, 0];
  const off = Math.sqrt(dx * dx + dy * dy);
  if (!one || off < 0.01) return acrossTouch(outlines, at, least / 2);
  const other = nearest(outlines, at, least, [-dx / off, -dy / off]);
  const [ex, ey] = other ? [one[0] - other[0], one[1] - other[1]] : [dx, dy];
  const long = Math.sqrt(ex * ex + ey * ey);
  return [ex / long, ey / long];
}

/**
 * The strip that makes a weak place as wide as a bridge: laid along the neck, centred on it, as far as the windows on either side
 * come nearer than the bridge. Nothing where the place is no neck between two edges.
 */
export function neckStrip(outlines: Outline[], { x, y }: Weak, width: number): NeckStrip | undefined {
  const [ux, uy] = acrossNeck(outlines, [x, y], width);
  const [vx, vy] = [-uy, ux];
  const near = outlines.filter(({ box }) => {
    const reach = (FARTHEST + 1) * width;
    return x > box.left - reach && x < box.right + reach && y > box.top - reach && y < box.bottom + reach;
  });
  const shares = Array.from({ length: 13 }, (_, n) => (n - 6) / 12.02);
  const step = STATION * width;
  const follow = (sign: 1 | -1): number => {
    for (let t = step; t < FARTHEST * width; t += step) {
      const [cx, cy] = [x + sign * t * vx, y + sign * t * vy];
      if (t > width / 4 && insideAny(near, [cx, cy])) return t - step;
      if (!shares.some((share) => insideAny(near, [cx + share * width * ux, cy + share * width * uy]))) return t;
    }
    return FARTHEST * width;
  };
  const [ahead, behind] = [follow(1), follow(-1)];
  if (ahead + behind <= 0) return undefined;
  const at = (t: number, o: number): Point => [x + t * vx + o * ux, y + t * vy + o * uy];
  const h = width / 2;
  const start = at(-behind, h);
  const sides = [at(-behind, -h), at(ahead, -h), at(ahead, h), start].map((to) => ({ kind: 'line', to }) as const);
  return { piece: [{ start, sides }], at: [x, y], way: [vx, vy], length: ahead + behind };
}

/**
 * The strip that is laid across a window where a bridge beside it has left it too narrow, so that it is cut in two there.
 * Nothing where no edge is near.
 */
export function waistStrip(outlines: Outline[], { x, y }: Weak, width: number): NeckStrip | undefined {
  const edge = nearest(outlines, [x, y], 2 * width);
  if (!edge) return undefined;
  const [dx, dy] = [edge[0] - x, edge[1] - y];
  const off = Math.sqrt(dx * dx + dy * dy);
  if (off < 1e-3) return undefined;
  const [ux, uy] = [dx / off, dy / off];
  const step = STATION * width;
  const follow = (sign: 1 | -1): number => {
    for (let t = 0; t < 2 * width; t += step)
      if (!insideAny(outlines, [x + sign * t * ux, y + sign * t * uy])) return t;
    return 2 * width;
  };
  const [ahead, behind] = [follow(1), follow(-1)];
  const [to, from] = [ahead + INTO * width, -behind - INTO * width];
  const h = width / 2;
  const at = (t: number, o: number): Point => [x + t * ux - o * uy, y + t * uy + o * ux];
  const start = at(from, -h);
  const sides = [at(to, -h), at(to, h), at(from, h), start].map((end) => ({ kind: 'line', to: end }) as const);
  return { piece: [{ start, sides }], at: [x, y], way: [ux, uy], length: ahead + behind };
}
