import { bezier, cornerCount, isStraight, type Outline } from '../read/outline.ts';

/** The outline as a polygon, x, y, x, y …, whose chords lie within `tolerance` mm of its curves. */
export function flat(outline: Outline, tolerance = 0.005): number[] {
  const n = cornerCount(outline);
  const { corners, handles } = outline;
  const points: number[] = [];
  for (let i = 0; i < n; i++) {
    const [x0, y0] = [corners[2 * i]!, corners[2 * i + 1]!];
    points.push(x0, y0);
    if (isStraight(outline, i)) continue;
    const [x1, y1, x2, y2] = handles.subarray(4 * i, 4 * i + 4) as unknown as [number, number, number, number];
    const j = (i + 1) % n;
    const [x3, y3] = [corners[2 * j]!, corners[2 * j + 1]!];
    // A chord of a cubic over 1/m of its run strays at most 6/8 of the larger second difference, over m².
    const bend = Math.max(
      Math.hypot(x0 - 2 * x1 + x2, y0 - 2 * y1 + y2),
      Math.hypot(x1 - 2 * x2 + x3, y1 - 2 * y2 + y3),
    );
    const chords = Math.min(10_000, Math.max(1, Math.ceil(Math.sqrt((0.75 * bend) / tolerance))));
    for (let k = 1; k < chords; k++)
      points.push(bezier(x0, x1, x2, x3, k / chords), bezier(y0, y1, y2, y3, k / chords));
  }
  return points;
}

/** Whether a point lies inside a polygon given as x, y, x, y … (even-odd). */
export function holds(polygon: readonly number[], x: number, y: number): boolean {
  let inside = false;
  for (let i = 0, j = polygon.length - 2; i < polygon.length; j = i, i += 2) {
    const [xi, yi, xj, yj] = [polygon[i]!, polygon[i + 1]!, polygon[j]!, polygon[j + 1]!];
    if (yi > y !== yj > y && x < xi + ((y - yi) / (yj - yi)) * (xj - xi)) inside = !inside;
  }
  return inside;
}

/** How far a point is from the nearest side of a polygon, mm. */
export function distanceTo(polygon: readonly number[], x: number, y: number): number {
  let least = Infinity;
  for (let i = 0, j = polygon.length - 2; i < polygon.length; j = i, i += 2) {
    const [ax, ay] = [polygon[j]!, polygon[j + 1]!];
    const [ux, uy] = [polygon[i]! - ax, polygon[i + 1]! - ay];
    const long = ux * ux + uy * uy;
    const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * ux + (y - ay) * uy) / long));
    const [px, py] = [ax + t * ux - x, ay + t * uy - y];
    const far = px * px + py * py;
    if (far < least) least = far;
  }
  return Math.sqrt(least);
}

/** How long the way round a closed polygon is, mm. */
export function roundOf(points: readonly number[]): number {
  let sum = 0;
  for (let i = 0, j = points.length - 2; i < points.length; j = i, i += 2)
    sum += Math.hypot(points[i]! - points[j]!, points[i + 1]! - points[j + 1]!);
  return sum;
}
