import type { Point } from '../../geometry/path.ts';
import { type Edge, reversedEdge } from './edge.ts';
import { between, cross, distance, dot, length, minus, times } from './vector.ts';

/** Bends sharper than this, as a sine, are corners. */
const BEND = 1e-4;
const SAMPLES = 16;

type Cubic = readonly [Point, Point, Point, Point];
const cubicOf = (edge: Edge): Cubic => edge.points as unknown as Cubic;

/** The blossom of a cubic: its point at t for three times the same t, its handles for mixed ones. */
function blossom([p0, p1, p2, p3]: Cubic, r: number, s: number, t: number): Point {
  const [a, b, c] = [between(p0, p1, r), between(p1, p2, r), between(p2, p3, r)];
  return between(between(a, b, s), between(b, c, s), t);
}

/** The part of the same cubic from one parameter to another, either of which may lie outside 0 to 1. */
const partOf = (cubic: Cubic, from: number, to: number): Point[] => [
  blossom(cubic, from, from, from),
  blossom(cubic, from, from, to),
  blossom(cubic, from, to, to),
  blossom(cubic, to, to, to),
];

/** Parameter of the place on a curve that a point lies on, or nothing where it lies `within` or more away. */
export function placeOnCurve(edge: Edge, point: Point, within: number): number | undefined {
  const cubic = cubicOf(edge);
  const [p0, p1, p2, p3] = cubic;
  const at = (t: number): Point => blossom(cubic, t, t, t);
  let t = 0;
  let least = Infinity;
  for (let i = 0; i <= SAMPLES; i++) {
    const away = distance(at(i / SAMPLES), point);
    if (away < least) [t, least] = [i / SAMPLES, away];
  }
  // Newton on the distance, held within one sample's step of where it started.
  const [low, high] = [Math.max(0, t - 1 / SAMPLES), Math.min(1, t + 1 / SAMPLES)];
  for (let i = 0; i < 8; i++) {
    const away = minus(at(t), point);
    const [d0, d1, d2] = [minus(p1, p0), minus(p2, p1), minus(p3, p2)];
    const speed = times(between(between(d0, d1, t), between(d1, d2, t), t), 3);
    const push = times(between(minus(d1, d0), minus(d2, d1), t), 6);
    const slope = dot(speed, speed) + dot(away, push);
    if (slope <= 0) break;
    t = Math.min(high, Math.max(low, t - dot(away, speed) / slope));
  }
  return distance(at(t), point) < within ? t : undefined;
}

export function cutCurve(edge: Edge, t: number): [Edge, Edge] {
  const cubic = cubicOf(edge);
  return [
    { ...edge, points: partOf(cubic, 0, t) },
    { ...edge, points: partOf(cubic, t, 1) },
  ];
}

/** Both edges as one, where the second begins at the end of the first and is the same cubic led on. */
export function joinCurve(first: Edge, next: Edge, within: number): Edge | undefined {
  const [u, v] = [minus(first.points[3]!, first.points[2]!), minus(next.points[1]!, next.points[0]!)];
  const ratio = length(v) / length(u);
  if (!(ratio > 0 && ratio < Infinity) || dot(u, v) <= 0) return undefined;
  if (Math.abs(cross(u, v)) > BEND * length(u) * length(v)) return undefined;
  // Leading on the longer one is the steadier way.
  if (ratio > 1) {
    const joined = joinCurve(reversedEdge(next), reversedEdge(first), within);
    return joined && reversedEdge(joined);
  }
  const cubic = cubicOf(first);
  const ledOn = partOf(cubic, 1, 1 + ratio);
  if (ledOn.some((point, i) => distance(point, next.points[i]!) > 8 * within)) return undefined;
  return { ...first, points: partOf(cubic, 0, 1 + ratio) };
}

/** Whether a cubic is a straight line. */
export function isStraight([from, out, into, to]: Point[], within: number): boolean {
  const chord = minus(to!, from!);
  const size = length(chord);
  const off = (point: Point) => Math.abs(cross(chord, minus(point, from!)));
  const ahead = (point: Point) => dot(chord, minus(point, from!)) / size;
  return [out!, into!].every(
    (point) => off(point) <= within * size && ahead(point) >= -within && ahead(point) <= size + within,
  );
}
