import type { Point, Ring, Side } from '../../geometry/path.ts';
import { NEAR } from '../limits.ts';

/** Greatest turn from one chord of a curve to the next, radians. */
const TURN = (6 * Math.PI) / 180;
const MOST_HALVINGS = 12;
/** Chords shorter than this may turn as they like. */
const SHORT = 5 * NEAR;

const middle = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

const apart = (a: Point, b: Point): number => Math.sqrt((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2);

/** By how much the way from `a` to `b` turns into the way from `c` to `d`, radians; 0 where either has no length. */
function turnBetween(a: Point, b: Point, c: Point, d: Point): number {
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  return Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy));
}

/** Bound on how far a cubic lies from its chord, by the second differences of its handles. */
function bulge(from: Point, out: Point, into: Point, to: Point): number {
  const bend = (a: Point, b: Point, c: Point): number =>
    Math.sqrt((a[0] - 2 * b[0] + c[0]) ** 2 + (a[1] - 2 * b[1] + c[1]) ** 2);
  return 0.75 * Math.max(bend(from, out, into), bend(out, into, to));
}

function isFlat(from: Point, out: Point, into: Point, to: Point): boolean {
  if (bulge(from, out, into, to) > NEAR / 2) return false;
  if (apart(from, out) + apart(out, into) + apart(into, to) <= SHORT) return true;
  return turnBetween(from, out, out, into) + turnBetween(out, into, into, to) <= TURN;
}

/** The corners of the chords of one side, its end among them, its start not. */
export function chordsOf(from: Point, side: Side): Point[] {
  if (side.kind === 'line') return [side.to];
  const found: Point[] = [];
  const cut = (a: Point, b: Point, c: Point, d: Point, halvings: number): void => {
    if (halvings === 0 || isFlat(a, b, c, d)) {
      found.push(d);
      return;
    }
    const [ab, bc, cd] = [middle(a, b), middle(b, c), middle(c, d)];
    const [abc, bcd] = [middle(ab, bc), middle(bc, cd)];
    const half = middle(abc, bcd);
    cut(a, ab, abc, half, halvings - 1);
    cut(half, bcd, cd, d, halvings - 1);
  };
  cut(from, side.out, side.into, side.to, MOST_HALVINGS);
  return found;
}

/** The ring as a polygon whose corners turn little, the first not repeated. */
export function chordedRing({ start, sides }: Ring): Point[] {
  const points: Point[] = [start];
  for (const side of sides) points.push(...chordsOf(points.at(-1)!, side));
  const last = points.at(-1)!;
  if (points.length > 1 && last[0] === start[0] && last[1] === start[1]) points.pop();
  return points;
}
