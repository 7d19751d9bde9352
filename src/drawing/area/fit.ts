import type { Piece, Point, Ring, Side } from '../../geometry/path.ts';
import { NEAR } from '../limits.ts';
import { fitRun, headingIn, headingOut, unit } from './fit-run.ts';

/** A corner that turns more than this is a true one, radians: chords turn by 6 degrees at most. */
const CORNER = (13 * Math.PI) / 180;
/** An edge that would bulge by more than this, did it bend as the line beside it does, is a straight side and no chord. */
const BULGE = 5 * NEAR;
/** Where an edge that may be straight is followed, in shares of its length. */
const ALONG = [0.1, 0.3, 0.5, 0.7, 0.9];

const apart = (a: Point, b: Point): number => Math.sqrt((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2);

function turnAt(a: Point, b: Point, c: Point): number {
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], c[0] - b[0], c[1] - b[1]];
  return Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy));
}

/** The corners of a polygon, those closer than a tenth of `NEAR` to the one before left out. */
function cornersOf({ start, sides }: Ring): Point[] {
  const points: Point[] = [start];
  for (const side of sides) if (apart(points.at(-1)!, side.to) > NEAR / 10) points.push(side.to);
  while (points.length > 3 && apart(points[0]!, points.at(-1)!) <= NEAR / 10) points.pop();
  return points;
}

/** Where the runs of a polygon end: at its corners and at the ends of its straight sides; and the edges that may be straight or not. */
function breaksOf(points: Point[]): Record<'breaks' | 'straight' | 'doubtful', Set<number>> {
  const n = points.length;
  const index = (i: number): number => ((i % n) + n) % n;
  const at = (i: number): Point => points[index(i)]!;
  const length = points.map((point, i) => apart(point, at(i + 1)));
  const turn = points.map((point, i) => turnAt(at(i - 1), point, at(i + 1)));
  const isCorner = (i: number): boolean => turn[index(i)]! > CORNER;
  /** How much the line bends per unit beyond an edge: over its end and, if that is no corner, the next. */
  const bend = (edge: number, end: number, step: 1 | -1): number => {
    const beyond = length[index(edge + step)]!;
    if (isCorner(end + step)) return turn[index(end)]! / ((length[edge]! + beyond) / 2);
    const both = turn[index(end)]! + turn[index(end + step)]!;
    return both / (length[edge]! / 2 + beyond + length[index(edge + 2 * step)]! / 2);
  };
  const straight = new Set<number>();
  const doubtful = new Set<number>();
  for (let i = 0; i < n; i++) {
    const bulge = (end: number, step: 1 | -1) => (length[i]! ** 2 * bend(i, end, step)) / 8;
    const [start, end] = [isCorner(i) ? Infinity : bulge(i, -1), isCorner(i + 1) ? Infinity : bulge(i + 1, 1)];
    if (Math.min(start, end) > BULGE) straight.add(i);
    else if (Math.max(start, end) > NEAR) doubtful.add(i);
  }
  const breaks = new Set<number>();
  for (let i = 0; i < n; i++) {
    if (isCorner(i)) breaks.add(i);
    if (straight.has(i)) breaks.add(i).add(index(i + 1));
  }
  return { breaks, straight, doubtful };
}

/** The left-, top-, right- and bottommost points: where a ring without corners is best cut. */
function extremes(points: Point[]): Set<number> {
  const found = [0, 0, 0, 0];
  points.forEach(([x, y], i) => {
    if (x < points[found[0]!]![0]) found[0] = i;
    if (y < points[found[1]!]![1]) found[1] = i;
    if (x > points[found[2]!]![0]) found[2] = i;
    if (y > points[found[3]!]![1]) found[3] = i;
  });
  return new Set(found);
}

/** A run with points set along the edges that may be straight, so that what is fitted to it must follow them. */
const filled = (run: Point[], isDoubtful: (edge: number) => boolean): Point[] =>
  run.flatMap((point, i) => {
    const before = run[i - 1];
    if (before === undefined || !isDoubtful(i - 1)) return [point];
    const between = (t: number): Point => [
      before[0] + t * (point[0] - before[0]),
      before[1] + t * (point[1] - before[1]),
    ];
    return [...ALONG.map(between), point];
  });

const turnedBack = ([x, y]: Point): Point => [-x, -y];

/** A ring of chords as lines and curves again. */
function fitRing(ring: Ring): Ring {
  const points = cornersOf(ring);
  const n = points.length;
  if (n < 4) return ring;
  const at = (i: number): Point => points[((i % n) + n) % n]!;
  const { breaks, straight, doubtful } = breaksOf(points);
  const smooth = breaks.size === 0;
  const cuts = [...(smooth ? extremes(points) : breaks)].sort((a, b) => a - b);
  const way = (from: Point, to: Point): Point => unit([to[0] - from[0], to[1] - from[1]]);
  const around = smooth ? [...points, ...points, ...points] : [];
  const goesOn = (i: number): boolean => turnAt(at(i - 1), at(i), at(i + 1)) <= CORNER;
  /** Directions at the ends of a run: on from a straight side or a smooth cut, else as its own points say. */
  const leaving = (i: number, run: Point[]): Point => {
    if (smooth) return headingIn(around, i + n);
    return straight.has((i + n - 1) % n) && goesOn(i) ? way(at(i - 1), at(i)) : headingOut(run);
  };
  const arriving = (i: number, run: Point[]): Point => {
    if (smooth) return turnedBack(headingIn(around, (i % n) + n));
    return straight.has(i % n) && goesOn(i) ? way(at(i + 1), at(i)) : headingOut(run.toReversed());
  };
  const sides: Side[] = [];
  cuts.forEach((from, index) => {
    const to = index + 1 < cuts.length ? cuts[index + 1]! : cuts[0]! + n;
    const run = Array.from({ length: to - from + 1 }, (_, i) => at(from + i));
    if (run.length === 2) sides.push({ kind: 'line', to: run[1]! });
    else
      sides.push(
        ...fitRun(
          filled(run, (edge) => doubtful.has((from + edge) % n)),
          leaving(from, run),
          arriving(to, run),
        ),
      );
  });
  return { start: at(cuts[0]!), sides };
}

/** Polygons whose corners lie close on true curves, as those curves again: within `NEAR`, corners and straight sides kept. */
export const fitPieces = (pieces: Piece[]): Piece[] => pieces.map((piece) => piece.map(fitRing));
