import type { Piece, Point } from '../../geometry/path.ts';
import type { Outline } from './outline.ts';
import { type Turning, turnedAbout, turnedWay } from './symmetry.ts';

/** A bridge that could be made: a straight strip from an island across one window. Lengths in mm. */
export interface Span {
  /** The middle of the strip where it leaves the island. */
  from: Point;
  /** Its direction, of length 1. */
  way: Point;
  /** From `from` along `way`: where the strip begins and ends, so that it cuts the window through. */
  begin: number;
  end: number;
  /** From edge to edge of the window, along the middle. */
  length: number;
  /** Index of the outline on which it lands. */
  lands: number;
  /** How many corners of either edge it comes near. */
  corners: number;
  /** How far it is from crossing both edges squarely and clear of corners; 0 is best. */
  fault: number;
}

/** Shares of a bridge's width at which a span is probed. */
const PROBES = [-0.4999, -0.25, 0, 0.25, 0.4999];

/** How strictly a span is judged, in widths of a bridge. */
export interface Strictness {
  /** Solid sheet wanted behind either end. */
  solid: number;
  /** How far either edge may slant across the strip. */
  slant: number;
  /** Whether every probe must leave the island; a crumb narrower than the bridge lets some miss. */
  every: boolean;
  /** Whether all probes must land on the same edge. */
  same: boolean;
}

export const STRICT: Strictness = { solid: 0.6, slant: 1.2, every: true, same: true };
export const LENIENT: Strictness = { solid: 0.02, slant: 3, every: false, same: true };
export const LAST: Strictness = { solid: 0, slant: 20, every: false, same: false };

interface Crossing {
  t: number;
  outline: number;
}

/** Where the lines of the probes cross the outlines, along each probe in order. */
function crossingsOf(outlines: Outline[], from: Point, way: Point, width: number, reach: number): Crossing[][] {
  const found: Crossing[][] = PROBES.map(() => []);
  const [ux, uy] = way;
  const [x, y] = from;
  const half = width / 2;
  outlines.forEach(({ points, box }, outline) => {
    const [ex, ey] = [Math.abs(ux) * reach + Math.abs(uy) * half, Math.abs(uy) * reach + Math.abs(ux) * half];
    if (box.left > x + ex || box.right < x - ex || box.top > y + ey || box.bottom < y - ey) return;
    const last = points[points.length - 1]!;
    let t0 = (last[0] - x) * ux + (last[1] - y) * uy;
    let o0 = (last[1] - y) * ux - (last[0] - x) * uy;
    for (const [px, py] of points) {
      const t1 = (px - x) * ux + (py - y) * uy;
      const o1 = (py - y) * ux - (px - x) * uy;
      if ((o0 < half || o1 < half) && (o0 > -half || o1 > -half)) {
        PROBES.forEach((share, at) => {
          const o = share * width;
          if (o0 < o !== o1 < o) found[at]!.push({ t: t0 + ((o - o0) / (o1 - o0)) * (t1 - t0), outline });
        });
      }
      t0 = t1;
      o0 = o1;
    }
  });
  for (const one of found) one.sort((p, q) => p.t - q.t);
  return found;
}

/** How many corners of the two edges a strip comes near. */
function cornersNear(outlines: Outline[], span: Span, width: number): number {
  const [ux, uy] = span.way;
  const [x, y] = span.from;
  return outlines.reduce(
    (sum, { corners }) =>
      sum +
      corners.filter(([px, py]) => {
        const t = (px - x) * ux + (py - y) * uy;
        const o = (py - y) * ux - (px - x) * uy;
        return Math.abs(o) < 1.2 * width && t > span.begin - 0.5 * width && t < span.end + 0.5 * width;
      }).length,
    0,
  );
}

/**
 * The span from a point on the edge of an island along a direction; nothing where no clean bridge lies there.
 * Every probe across its width must leave the island, cross one window and land on one and the same edge, with sheet behind.
 * @param island index of the island's outline
 */
export function spanFrom(
  outlines: Outline[],
  island: number,
  from: Point,
  way: Point,
  width: number,
  strict: Strictness,
): Span | undefined {
  const { box, piece } = outlines[island]!;
  const whole = outlines.filter((one) => one.piece === piece && !one.hole)[0]!.box;
  const reach =
    Math.max(whole.right - whole.left, whole.bottom - whole.top) + Math.max(box.right - box.left, box.bottom - box.top);
  const solid = strict.solid * width;
  const exits: number[] = [];
  const landings: number[] = [];
  let lands = -1;
  let length = Number.NaN;
  const crossings = crossingsOf(outlines, from, way, width, reach);
  const middle = crossings[2]!;
  const leaves = (line: Crossing[]) => {
    let best = -1;
    line.forEach(({ t, outline }, at) => {
      if (outline === island && Math.abs(t) < strict.slant * width && at % 2 === 0) {
        if (best < 0 || Math.abs(t) < Math.abs(line[best]!.t)) best = at;
      }
    });
    return best;
  };
  for (const line of crossings) {
    const at = leaves(line);
    if (at < 0) {
      if (strict.every || line === middle) return undefined;
      const next = line.findIndex(({ t }) => t > 0);
      if (next % 2 !== 1 || line[next]!.outline === island) return undefined;
      landings.push(line[next]!.t);
      continue;
    }
    const [exit, landing] = [line[at]!, line[at + 1]];
    if (!landing || (strict.same && lands >= 0 && landing.outline !== lands) || landing.outline === island)
      return undefined;
    const [before, after] = [line[at - 1], line[at + 2]];
    if (before && exit.t - before.t < solid) return undefined;
    if (after && after.t - landing.t < solid) return undefined;
    if (lands < 0 || line === middle) lands = landing.outline;
    exits.push(exit.t);
    landings.push(landing.t);
    if (line === middle) length = landing.t - exit.t;
  }
  const spread = (values: number[]) => Math.max(...values) - Math.min(...values);
  if (spread(exits) > strict.slant * width || spread(landings) > strict.slant * width) return undefined;
  const lean = (values: number[]) => {
    const tangent = Math.abs(values[values.length - 1]! - values[0]!) / width;
    return 1 - 1 / Math.sqrt(1 + tangent * tangent);
  };
  const margin = Math.min(0.3, 0.5 * strict.solid + 0.005) * width;
  const span: Span = {
    from,
    way,
    begin: (strict.every ? Math.min(...exits) : Math.min(...exits, -width)) - margin,
    end: Math.max(...landings) + margin,
    length,
    lands,
    corners: 0,
    fault: 0,
  };
  const bent = (spread(exits) + spread(landings)) / width;
  span.corners = cornersNear([outlines[island]!, outlines[lands]!], span, width);
  span.fault = 2 * (lean(exits) + lean(landings)) + 0.5 * bent + 1.5 * Math.min(2, span.corners);
  return span;
}

/** The strip itself. */
export function stripOf({ from, way, begin, end }: Span, width: number): Piece {
  const [ux, uy] = way;
  const at = (t: number, o: number): Point => [from[0] + ux * t - uy * o, from[1] + uy * t + ux * o];
  const h = width / 2;
  const start = at(begin, -h);
  return [
    {
      start,
      sides: [at(end, -h), at(end, h), at(begin, h), start].map((to) => ({ kind: 'line', to }) as const),
    },
  ];
}

/** The middle of a span, between the edges it joins. */
export const middleOfSpan = ({ from, way, length }: Span): Point => [
  from[0] + (way[0] * length) / 2,
  from[1] + (way[1] * length) / 2,
];

export const turnedSpan = (span: Span, op: Turning, centre: Point): Span => ({
  ...span,
  from: turnedAbout(op, centre, span.from),
  way: turnedWay(op, span.way),
});

export const shiftedSpan = (span: Span, dx: number, dy: number): Span => ({
  ...span,
  from: [span.from[0] + dx, span.from[1] + dy],
});

/** Whether two spans are one and the same strip. */
export function sameSpan(one: Span, other: Span): boolean {
  const [p, q] = [middleOfSpan(one), middleOfSpan(other)];
  const along = Math.abs(one.way[0] * other.way[0] + one.way[1] * other.way[1]);
  return Math.abs(p[0] - q[0]) + Math.abs(p[1] - q[1]) < 0.02 && along > 0.9999;
}

/** The least distance between the middle lines of two spans, mm. */
export function spansApart(one: Span, other: Span): number {
  const ends = ({ from, way, length }: Span): [Point, Point] => [
    from,
    [from[0] + way[0] * length, from[1] + way[1] * length],
  ];
  const [[a, b], [c, d]] = [ends(one), ends(other)];
  const off = ([px, py]: Point, [ax, ay]: Point, [bx, by]: Point) => {
    const [ux, uy] = [bx - ax, by - ay];
    const t = Math.min(1, Math.max(0, ((px - ax) * ux + (py - ay) * uy) / (ux * ux + uy * uy)));
    return Math.sqrt((ax + t * ux - px) ** 2 + (ay + t * uy - py) ** 2);
  };
  const turn = (p: Point, q: Point, r: Point) => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  if (turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0) return 0;
  return Math.min(off(a, c, d), off(b, c, d), off(c, a, b), off(d, a, b));
}
