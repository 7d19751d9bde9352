import { pointOnCurve } from '../../geometry/flatten.ts';
import type { Piece, Point, Ring, Side } from '../../geometry/path.ts';
import { stretchOf } from '../../geometry/split.ts';

/** A point this near to the edge of a strip lies on it, mm. */
const ON = 1e-3;
/** Share of a side that its two roundings may take together. */
const SHARE = 0.45;
/** Corners that turn by less than 20 degrees are left. */
const BLUNT = Math.cos((20 * Math.PI) / 180);
/** Reach of the handles of a rounding towards the corner; a quarter circle where the corner is square. */
const ROUND = 0.5522847498;

const between = (a: Point, b: Point, t: number): Point => [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
const apart = (a: Point, b: Point): number => Math.sqrt((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2);

/** The edges of a strip. */
function edgesOf([ring]: Piece): [Point, Point][] {
  const points = [ring!.start, ...ring!.sides.map(({ to }) => to)];
  return ring!.sides.map((_, at): [Point, Point] => [points[at]!, points[at + 1]!]);
}

const liesOn = ([a, b]: [Point, Point], [x, y]: Point): boolean => {
  const [ux, uy] = [b[0] - a[0], b[1] - a[1]];
  const long = Math.sqrt(ux * ux + uy * uy);
  const [px, py] = [x - a[0], y - a[1]];
  const along = (px * ux + py * uy) / long;
  return Math.abs(px * uy - py * ux) / long < ON && along > -ON && along < long + ON;
};

/** Where a side comes to lie a distance from one of its ends, as a share of it. */
function shareAt(from: Point, side: Side, distance: number, end: 'start' | 'end'): number {
  const corner = end === 'start' ? from : side.to;
  if (side.kind === 'line') {
    const share = distance / apart(from, side.to);
    return end === 'start' ? share : 1 - share;
  }
  let [near, far] = end === 'start' ? [0, 0.5] : [1, 0.5];
  for (let step = 0; step < 40; step++) {
    const t = (near + far) / 2;
    if (apart(pointOnCurve(from, side, t), corner) < distance) near = t;
    else far = t;
  }
  return (near + far) / 2;
}

const leaving = (side: Side): Point => (side.kind === 'line' ? side.to : side.out);
const arriving = (from: Point, side: Side): Point => (side.kind === 'line' ? from : side.into);

/** A ring closed by sides alone. */
function closed(ring: Ring): Ring {
  const last = ring.sides[ring.sides.length - 1]!.to;
  if (apart(last, ring.start) < 1e-9) return ring;
  return { start: ring.start, sides: [...ring.sides, { kind: 'line', to: ring.start }] };
}

function roundRing(given: Ring, edges: [Point, Point][], radius: number): Ring {
  const ring = closed(given);
  const n = ring.sides.length;
  const starts = [ring.start, ...ring.sides.slice(0, -1).map(({ to }) => to)];
  // What is taken from the end of each side and from its beginning, mm.
  const taken = starts.map((corner, at) => {
    const before = (at + n - 1) % n;
    const [a, b] = [ring.sides[before]!, ring.sides[at]!];
    const isCut = edges.some(
      (edge) =>
        liesOn(edge, corner) &&
        ((a.kind === 'line' && liesOn(edge, starts[before]!)) || (b.kind === 'line' && liesOn(edge, b.to))),
    );
    if (!isCut) return 0;
    const [p, q] = [arriving(starts[before]!, a), leaving(b)];
    const [dx, dy, ex, ey] = [corner[0] - p[0], corner[1] - p[1], q[0] - corner[0], q[1] - corner[1]];
    const cos = (dx * ex + dy * ey) / Math.sqrt((dx * dx + dy * dy) * (ex * ex + ey * ey));
    if (!(cos < BLUNT)) return 0;
    return Math.min(radius, SHARE * apart(starts[before]!, corner), SHARE * apart(corner, b.to));
  });
  if (taken.every((by) => by === 0)) return given;
  const sides: Side[] = [];
  let start = ring.start;
  ring.sides.forEach((side, at) => {
    const from = starts[at]!;
    const [first, last] = [taken[at]!, taken[(at + 1) % n]!];
    const end = last > 0 ? shareAt(from, side, last, 'end') : 1;
    const begin = first > 0 ? shareAt(from, side, first, 'start') : 0;
    const kept = stretchOf(from, side, begin, end);
    const previous = sides[sides.length - 1]?.to;
    if (!previous) start = kept.from;
    else if (first > 0) sides.push(arc(previous, from, kept.from));
    sides.push(kept.side);
  });
  if (taken[0]! > 0) sides.push(arc(sides[sides.length - 1]!.to, starts[0]!, start));
  return { start, sides };
}

const arc = (from: Point, corner: Point, to: Point): Side => ({
  kind: 'curve',
  out: between(from, corner, ROUND),
  into: between(to, corner, ROUND),
  to,
});

/**
 * Rounds the corners that strips have cut into windows, so that film does not tear from them. Only what lies on the edge of a strip is rounded, and windows
 * become a little smaller, bridges no thinner.
 * @param radius mm; less where a side is too short for it
 */
export const roundCorners = (windows: Piece[], strips: Piece[], radius: number): Piece[] => {
  const edges = strips.flatMap(edgesOf);
  return windows.map((piece) => piece.map((ring) => roundRing(ring, edges, radius)));
};
