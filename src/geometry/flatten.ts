import type { Point, Ring, Side } from './path.ts';

/** How many chords keep a cubic within `tolerance` mm of its polyline (bound on the second difference of its handles). */
function chords(from: Point, side: Side & { kind: 'curve' }, tolerance: number): number {
  const [x0, y0] = from;
  const [x1, y1] = side.out;
  const [x2, y2] = side.into;
  const [x3, y3] = side.to;
  const ux = Math.max(Math.abs(x0 - 2 * x1 + x2), Math.abs(x1 - 2 * x2 + x3));
  const uy = Math.max(Math.abs(y0 - 2 * y1 + y2), Math.abs(y1 - 2 * y2 + y3));
  return Math.max(1, Math.ceil(Math.sqrt((0.75 * Math.sqrt(ux * ux + uy * uy)) / tolerance)));
}

/** The ring as a closed polygon (first point not repeated) whose chords lie within `tolerance` mm of the curve. */
export function flatten(ring: Ring, tolerance = 0.005): Point[] {
  const points: Point[] = [ring.start];
  let from = ring.start;
  for (const side of ring.sides) {
    if (side.kind === 'curve') {
      const n = chords(from, side, tolerance);
      for (let i = 1; i < n; i++) points.push(pointOnCurve(from, side, i / n));
    }
    points.push(side.to);
    from = side.to;
  }
  const [first, last] = [points[0]!, points[points.length - 1]!];
  if (points.length > 1 && Math.abs(first[0] - last[0]) < 1e-9 && Math.abs(first[1] - last[1]) < 1e-9) points.pop();
  return points;
}

export function pointOnCurve(from: Point, side: Side & { kind: 'curve' }, t: number): Point {
  const u = 1 - t;
  const a = u * u * u;
  const b = 3 * u * u * t;
  const c = 3 * u * t * t;
  const d = t * t * t;
  return [
    a * from[0] + b * side.out[0] + c * side.into[0] + d * side.to[0],
    a * from[1] + b * side.out[1] + c * side.into[1] + d * side.to[1],
  ];
}
