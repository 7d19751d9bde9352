import type { Booleans } from '../../geometry/booleans.ts';
import { beside, headingOf, offsetSide } from '../../geometry/offset-side.ts';
import type { Piece, Point, Ring, Side } from '../../geometry/path.ts';
import { stretchOf } from '../../geometry/split.ts';

/** How far a line drawn beside a curve may lie from the true one, mm. */
const WITHIN = 0.002;
/** Points closer than this are one, mm. */
const SAME = 1e-7;
/** Directions that turn by less than this go straight on, radians. */
const STRAIGHT = 1e-4;
/** Parts of a curve that bends too tightly, each looked at by itself. */
const PARTS = 8;

const isSame = ([ax, ay]: Point, [bx, by]: Point): boolean => Math.abs(ax - bx) < SAME && Math.abs(ay - by) < SAME;

const line = (to: Point): Side => ({ kind: 'line', to });

/** Round a corner on the outside, from straight beside one direction to straight beside the next. */
function roundJoin([x, y]: Point, radius: number, from: number, turn: number): Side[] {
  const count = Math.max(1, Math.ceil(Math.abs(turn) / (Math.PI / 4) - 1e-9));
  const step = turn / count;
  const k = (4 / 3) * Math.tan(step / 4);
  return Array.from({ length: count }, (_, n): Side => {
    const [a, b] = [from + n * step, from + (n + 1) * step];
    const [ca, sa, cb, sb] = [Math.cos(a), Math.sin(a), Math.cos(b), Math.sin(b)];
    return {
      kind: 'curve',
      out: [x + radius * (ca - k * sa), y + radius * (sa + k * ca)],
      into: [x + radius * (cb + k * sb), y + radius * (sb - k * cb)],
      to: [x + radius * cb, y + radius * sb],
    };
  });
}

interface Run {
  from: Point;
  side: Side;
  /** What runs beside it, and where that begins; the side itself where it bends more tightly than the distance. */
  start: Point;
  beside: Side[];
}

function runOf(from: Point, side: Side, by: number): Run | undefined {
  const found = offsetSide(from, side, by, WITHIN);
  return found && { from, side, start: beside(from, headingOf(from, side, 0), by), beside: found };
}

/** Where a curve bends more tightly than the distance, what stands beside it is covered from its neighbours. */
function runsOf(from: Point, side: Side, by: number): Run[] {
  const whole = runOf(from, side, by);
  if (whole) return [whole];
  return Array.from({ length: PARTS }, (_, n): Run => {
    const part = stretchOf(from, side, n / PARTS, (n + 1) / PARTS);
    return runOf(part.from, part.side, by) ?? { ...part, start: part.from, beside: [part.side] };
  });
}

/** A ring with a band of one width added on its left as it runs. It may cross itself; every place it winds round is within the width. */
function banded(ring: Ring, by: number): Ring {
  const sides: Side[] = [];
  let at = ring.start;
  for (const side of ring.sides) {
    if (!isSame(at, side.to) || side.kind === 'curve') sides.push(side);
    at = side.to;
  }
  if (!isSame(at, ring.start)) sides.push(line(ring.start));
  const runs: Run[] = [];
  at = ring.start;
  for (const side of sides) {
    runs.push(...runsOf(at, side, -by));
    at = side.to;
  }
  const found: Side[] = [];
  runs.forEach((run, index) => {
    const next = runs[(index + 1) % runs.length]!;
    found.push(...run.beside);
    const end = run.beside.at(-1)!.to;
    if (isSame(end, next.start)) return;
    const [ux, uy] = headingOf(run.from, run.side, 1);
    const [vx, vy] = headingOf(next.from, next.side, 0);
    const turn = Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
    const corner = run.side.to;
    const isBeside = (point: Point) => !isSame(point, corner);
    if (Math.abs(turn) < STRAIGHT && isBeside(end) && isBeside(next.start)) found.push(line(next.start));
    else if (turn > 0 && isBeside(end) && isBeside(next.start))
      found.push(...roundJoin(corner, by, Math.atan2(end[1] - corner[1], end[0] - corner[0]), turn));
    else found.push(line(corner), line(next.start));
  });
  return { start: runs[0]!.start, sides: found };
}

/** A piece grown by so many mm all round, corners rounded. Straight sides stay straight and curves curves. */
export const grownPiece = (piece: Piece, by: number, { resolve }: Booleans): Piece[] =>
  resolve(
    piece.map((ring) => banded(ring, by)),
    'nonzero',
  );
