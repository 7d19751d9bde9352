import type { Point } from '../geometry/path.ts';

const NEAR = 1e-6;

/** Twice the signed area of a triangle, mm²; positive where it runs clockwise on the page. */
const turnOf = ([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number =>
  (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);

/** Signed area of a closed polygon, mm². */
const polygonArea = (polygon: Point[]): number =>
  polygon.reduce((sum, [x0, y0], at) => {
    const [x1, y1] = polygon[(at + 1) % polygon.length]!;
    return sum + (x0 * y1 - x1 * y0) / 2;
  }, 0);

/** The same outline without repeated corners and corners on a straight line. */
export function simplified(polygon: Point[]): Point[] {
  const points = polygon.filter(([x, y], at) => {
    const [px, py] = polygon[(at + polygon.length - 1) % polygon.length]!;
    return Math.hypot(x - px, y - py) > NEAR;
  });
  return points.filter((point, at) => {
    const before = points[(at + points.length - 1) % points.length]!;
    const after = points[(at + 1) % points.length]!;
    return Math.abs(turnOf(before, point, after)) > NEAR * Math.hypot(after[0] - before[0], after[1] - before[1]);
  });
}

export const withoutArea = (polygon: Point[]): boolean => polygon.length < 3 || Math.abs(polygonArea(polygon)) < 1;

/** Whether two sides that are not neighbours meet. */
export function crossesItself(polygon: Point[]): boolean {
  const count = polygon.length;
  const at = (n: number): Point => polygon[n % count]!;
  for (let i = 0; i < count; i++)
    for (let j = i + 2; j < count; j++) {
      if (i === 0 && j === count - 1) continue;
      const [a, b, c, d] = [at(i), at(i + 1), at(j), at(j + 1)];
      if (turnOf(a, b, c) * turnOf(a, b, d) <= 0 && turnOf(c, d, a) * turnOf(c, d, b) <= 0) return true;
    }
  return false;
}

/** The corners of the smallest convex outline round the points, clockwise on the page. */
export function hullOf(points: Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (list: Point[]): Point[] => {
    const kept: Point[] = [];
    for (const point of list) {
      while (kept.length > 1 && turnOf(kept.at(-2)!, kept.at(-1)!, point) <= 0) kept.pop();
      kept.push(point);
    }
    return kept.slice(0, -1);
  };
  return [...half(sorted), ...half([...sorted].reverse())];
}

/** Whether a point lies in a triangle that is clockwise on the page and more than `by` (twice an area, mm²) inside each side. */
const inTriangle = (point: Point, [a, b, c]: readonly [Point, Point, Point], by: number): boolean =>
  turnOf(a, b, point) >= by && turnOf(b, c, point) >= by && turnOf(c, a, point) >= by;

/** A simple polygon as convex pieces, each clockwise on the page: itself where it is convex, otherwise triangles, ear by ear. */
export function convexPieces(polygon: Point[]): Point[][] {
  let left = polygonArea(polygon) < 0 ? [...polygon].reverse() : [...polygon];
  const pieces: Point[][] = [];
  const three = (at: number): [Point, Point, Point] => {
    const count = left.length;
    return [left[(at + count - 1) % count]!, left[at]!, left[(at + 1) % count]!];
  };
  const earAt = (by: number): number =>
    left.findIndex((_, at) => {
      const corner = three(at);
      return turnOf(...corner) > 0 && !left.some((point) => !corner.includes(point) && inTriangle(point, corner, by));
    });
  while (left.length > 3 && left.some((_, at) => turnOf(...three(at)) < 0)) {
    // Where corners touch the only ears, an ear that has them on its outline is as good.
    const ear = earAt(0) >= 0 ? earAt(0) : Math.max(0, earAt(1e-6));
    pieces.push(three(ear));
    left = left.filter((_, at) => at !== ear);
  }
  return [...pieces, left].filter((piece) => polygonArea(piece) > 1e-3);
}

/** What lies inside the hull of a polygon and outside the polygon, as simple polygons. */
export function pocketsOf(polygon: Point[]): Point[][] {
  const hull = new Set(hullOf(polygon));
  const count = polygon.length;
  const start = polygon.findIndex((point) => hull.has(point));
  const pockets: Point[][] = [];
  let pocket: Point[] = [];
  for (let n = 0; n <= count; n++) {
    const point = polygon[(start + n) % count]!;
    pocket.push(point);
    if (!hull.has(point)) continue;
    if (pocket.length > 2) pockets.push(pocket);
    pocket = [point];
  }
  return pockets;
}
