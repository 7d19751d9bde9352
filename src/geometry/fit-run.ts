import { pointOnCurve } from './flatten.ts';
import type { Point, Side } from './path.ts';

type Curve = Side & { kind: 'curve' };

const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1]];
const plus = (a: Point, b: Point, by: number): Point => [a[0] + by * b[0], a[1] + by * b[1]];
const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1];
const size = (a: Point): number => Math.sqrt(dot(a, a));

export function unit(a: Point): Point {
  const length = size(a);
  return length === 0 ? [0, 0] : [a[0] / length, a[1] / length];
}

/** Signed angle from one direction to another. */
const angle = (a: Point, b: Point): number => Math.atan2(a[0] * b[1] - a[1] * b[0], dot(a, b));

function turned([x, y]: Point, by: number): Point {
  const [cos, sin] = [Math.cos(by), Math.sin(by)];
  return [x * cos - y * sin, x * sin + y * cos];
}

/** The direction at `a` of the circle that runs through three points one after another. */
const headingAt = (a: Point, b: Point, c: Point): Point => turned(unit(minus(b, a)), -angle(minus(a, c), minus(b, c)));

/** The direction of that circle in the middle one of the three. */
const headingThrough = (a: Point, b: Point, c: Point): Point =>
  turned(unit(minus(c, b)), -angle(minus(b, a), minus(c, a)));

/** The cubic with given ends and directions that comes nearest to the points at their parameters (least squares). */
function nearest(points: Point[], at: number[], leave: Point, arrive: Point): Curve {
  const [first, last] = [points[0]!, points.at(-1)!];
  let [aa, ab, bb, ax, bx] = [0, 0, 0, 0, 0];
  points.forEach((point, i) => {
    const t = at[i]!;
    const u = 1 - t;
    const [b1, b2] = [3 * u * u * t, 3 * u * t * t];
    const a: Point = [leave[0] * b1, leave[1] * b1];
    const b: Point = [arrive[0] * b2, arrive[1] * b2];
    const [s, e] = [u * u * u + b1, t * t * t + b2];
    const rest: Point = [point[0] - s * first[0] - e * last[0], point[1] - s * first[1] - e * last[1]];
    aa += dot(a, a);
    ab += dot(a, b);
    bb += dot(b, b);
    ax += dot(a, rest);
    bx += dot(b, rest);
  });
  const determinant = aa * bb - ab * ab;
  const chord = size(minus(last, first));
  let [one, two] = [chord / 3, chord / 3];
  if (Math.abs(determinant) > 1e-12 * aa * bb) {
    const [p, q] = [(ax * bb - bx * ab) / determinant, (aa * bx - ab * ax) / determinant];
    if (p > 1e-3 * chord && q > 1e-3 * chord && p < 5 * chord && q < 5 * chord) [one, two] = [p, q];
  }
  return { kind: 'curve', out: plus(first, leave, one), into: plus(last, arrive, two), to: last };
}

/** The parameter moved one Newton step towards where the curve is nearest to the point. */
function nearer(from: Point, { out, into, to }: Curve, point: Point, t: number): number {
  const u = 1 - t;
  const [a, b, c] = [minus(out, from), minus(into, out), minus(to, into)];
  const first: Point = [0, 1].map((i) => 3 * (u * u * a[i]! + 2 * u * t * b[i]! + t * t * c[i]!)) as unknown as Point;
  const second: Point = [0, 1].map((i) => 6 * (u * (b[i]! - a[i]!) + t * (c[i]! - b[i]!))) as unknown as Point;
  const off = minus(pointOnCurve(from, { kind: 'curve', out, into, to }, t), point);
  const slope = dot(first, first) + dot(off, second);
  return slope === 0 ? t : Math.min(1, Math.max(0, t - dot(off, first) / slope));
}

/** Whether both handles lie on the chord, as near as makes no odds. */
function isStraight(from: Point, { out, into, to }: Curve, within: number): boolean {
  const [x, y] = unit(minus(to, from));
  const off = (point: Point) => Math.abs((point[0] - from[0]) * y - (point[1] - from[1]) * x);
  return off(out) < within / 10 && off(into) < within / 10;
}

/** Points closer than this say little of a direction: what one of them is off by weighs too much. */
const APART = 1;

/** Index of the first point far enough from one of a run to tell a direction by, or of the last there is. */
function lookFrom(points: Point[], from: number, step: 1 | -1): number {
  let at = from + step;
  while (points[at + step] !== undefined && size(minus(points[at]!, points[from]!)) < APART) at += step;
  return at;
}

/** The direction of a smooth line in one of its points that is not its end. */
export const headingIn = (points: Point[], at: number): Point =>
  headingThrough(points[lookFrom(points, at, -1)]!, points[at]!, points[lookFrom(points, at, 1)]!);

/** The direction of a smooth line at the first of its three or more points. */
export function headingOut(points: Point[]): Point {
  const middle = Math.min(lookFrom(points, 0, 1), points.length - 2);
  return headingAt(points[0]!, points[middle]!, points[lookFrom(points, middle, 1)]!);
}

/** Shares of the way along the points, from 0 to 1. */
function shares(points: Point[]): number[] {
  const at = [0];
  for (let i = 1; i < points.length; i++) at.push(at[i - 1]! + size(minus(points[i]!, points[i - 1]!)));
  const whole = at.at(-1)!;
  return at.map((one) => one / whole);
}

/**
 * The cubic through a run of points with given directions at its ends, if it comes within a distance of each of them.
 * @param leave direction at the first point; @param arrive direction back from the last
 */
export function fitOne(points: Point[], leave: Point, arrive: Point, within: number): Side | undefined {
  const [first, last] = [points[0]!, points.at(-1)!];
  const [out, back] = [unit(leave), unit(arrive)];
  let at = shares(points);
  for (let turn = 0; turn < 6; turn++) {
    const curve = nearest(points, at, out, back);
    const most = points.reduce(
      (far, point, i) => Math.max(far, size(minus(pointOnCurve(first, curve, at[i]!), point))),
      0,
    );
    if (most <= within) return isStraight(first, curve, within) ? { kind: 'line', to: last } : curve;
    if (most > 50 * within) return undefined;
    at = at.map((t, i) => nearer(first, curve, points[i]!, t));
  }
  return undefined;
}

/** Cubics through a run of points that lie on a smooth line, within a distance of each of them. Directions as for `fitOne`. */
export function fitRun(points: Point[], leave: Point, arrive: Point, within: number): Side[] {
  if (points.length === 2) return [{ kind: 'line', to: points[1]! }];
  const one = fitOne(points, leave, arrive, within);
  if (one) return [one];
  const half = shares(points).findIndex((share) => share >= 0.5);
  const middle = Math.min(Math.max(half, 1), points.length - 2);
  const way = headingIn(points, middle);
  return [
    ...fitRun(points.slice(0, middle + 1), leave, [-way[0], -way[1]], within),
    ...fitRun(points.slice(middle), way, arrive, within),
  ];
}
