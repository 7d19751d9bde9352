import { fitOne } from './fit-run.ts';
import { pointOnCurve } from './flatten.ts';
import type { Point, Side } from './path.ts';

type Curve = Side & { kind: 'curve' };

/** Points closer than this are one, and a handle shorter than this shows no direction. */
const SAME = 1e-5;
const MOST_HALVINGS = 7;
/** Places at which a curve is followed in each of its parts. */
const PLACES = 12;

/** Direction of a curve, not of length 1; at an end without a handle, towards the next. */
export function headingOf(from: Point, side: Side, t: number): Point {
  const way = side.kind === 'line' ? [from, side.to] : [from, side.out, side.into, side.to];
  const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1]];
  const isLong = ([x, y]: Point) => x * x + y * y > SAME * SAME;
  if (t === 0) return minus(way.find((point) => isLong(minus(point, from))) ?? from, from);
  if (t === 1) return minus(side.to, way.findLast((point) => isLong(minus(side.to, point))) ?? side.to);
  if (side.kind === 'line') return minus(side.to, from);
  const u = 1 - t;
  const [a, b, c] = [minus(side.out, from), minus(side.into, side.out), minus(side.to, side.into)];
  const at = (i: 0 | 1) => u * u * a[i] + 2 * u * t * b[i] + t * t * c[i];
  return [at(0), at(1)];
}

/** The point beside a place on a side, `by` to its right as it runs with y down. */
export function beside(at: Point, [x, y]: Point, by: number): Point {
  const length = Math.sqrt(x * x + y * y);
  return [at[0] - (y / length) * by, at[1] + (x / length) * by];
}

/**
 * The line that runs beside a side at one distance all along, as lines and cubics within a distance of it. Halved where the side is
 * halved, so that what mirrors stays so. Nothing where the side bends more tightly than the distance.
 */
export function offsetSide(from: Point, side: Side, by: number, within: number): Side[] | undefined {
  if (side.kind === 'line') return [{ kind: 'line', to: beside(side.to, headingOf(from, side, 1), by) }];
  return offsetCurve(from, side, by, within, 0, 1, MOST_HALVINGS);
}

const backwards = ([x, y]: Point): Point => [-x, -y];

function offsetCurve(
  from: Point,
  curve: Curve,
  by: number,
  within: number,
  start: number,
  end: number,
  halvings: number,
): Side[] | undefined {
  const headings: Point[] = [];
  const points: Point[] = [];
  for (let i = 0; i <= PLACES; i++) {
    const t = start + ((end - start) * i) / PLACES;
    const heading = headingOf(from, curve, t);
    headings.push(heading);
    points.push(beside(i === 0 && t === 0 ? from : pointOnCurve(from, curve, t), heading, by));
    const before = points[i - 1];
    if (before === undefined) continue;
    const [x, y] = [points[i]![0] - before[0], points[i]![1] - before[1]];
    // Beside a tight bend the line runs back.
    const [u, v] = [headings[i - 1]!, heading];
    if (x * u[0] + y * u[1] <= 0 || x * v[0] + y * v[1] <= 0) return undefined;
  }
  const fitted = fitOne(points, headings[0]!, backwards(headings.at(-1)!), within);
  if (fitted) return [fitted];
  if (halvings === 0) return undefined;
  const middle = (start + end) / 2;
  const first = offsetCurve(from, curve, by, within, start, middle, halvings - 1);
  const second = first && offsetCurve(from, curve, by, within, middle, end, halvings - 1);
  return second && [...first, ...second];
}
