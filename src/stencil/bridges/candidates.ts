import { boxHeight, boxWidth } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/path.ts';
import type { Outline } from './outline.ts';
import { LAST, LENIENT, type Span, STRICT, type Strictness, sameSpan, spanFrom } from './span.ts';
import { AS_IS, type Turning, turnedAbout } from './symmetry.ts';

/** A span with what it costs; less is better. */
export interface Candidate extends Span {
  cost: number;
}

/** How many places along an island's edge are tried. */
const PLACES = 72;
/** What lying on a mirror line is worth. */
const ON_AXIS = 0.35;
/** What crossing a tip, a notch or the end of a curve costs: only the symmetry of the whole is worth it. */
const AT_CORNER = 3;
/** No more candidates than this are weighed against each other. */
const MOST = 160;

/** A cost, coarse enough that two places alike but for rounding cost the same. */
export const evened = (cost: number): number => Math.round(cost * 1e3) / 1e3;

/** A point of the edge and the way out of the island there. */
interface Place {
  from: Point;
  way: Point;
  axis: boolean;
}

/** Places set evenly along the edge, and the middles of its straight sides. */
function placesOn({ points, round, area }: Outline, width: number): Place[] {
  const step = Math.max(width / 4, round / PLACES);
  const outward = area < 0 ? 1 : -1;
  const found: Place[] = [];
  let past = step / 2;
  let [x0, y0] = points[points.length - 1]!;
  for (const [x, y] of points) {
    const [dx, dy] = [x - x0, y - y0];
    const long = Math.sqrt(dx * dx + dy * dy);
    if (long > 0) {
      const way: Point = [(-outward * dy) / long, (outward * dx) / long];
      const add = (t: number) => found.push({ from: [x0 + dx * t, y0 + dy * t], way, axis: false });
      if (long > width) add(0.5);
      for (; past < long; past += step) add(past / long);
      past -= long;
    }
    [x0, y0] = [x, y];
  }
  return found;
}

/** Places opposite the outer edge of the island's window: where a line square to that edge meets the island. */
function facing(outlines: Outline[], island: number, width: number): Place[] {
  const outer = outlines.find(({ piece, hole }) => piece === outlines[island]!.piece && !hole)!;
  const { points } = outlines[island]!;
  return placesOn(outer, width).flatMap(({ from: [px, py], way: [ux, uy] }): Place[] => {
    let first = Infinity;
    let [x0, y0] = points[points.length - 1]!;
    for (const [x, y] of points) {
      const o0 = (y0 - py) * ux - (x0 - px) * uy;
      const o1 = (y - py) * ux - (x - px) * uy;
      if (o0 < 0 !== o1 < 0) {
        const share = o0 / (o0 - o1);
        // The way leads out of the window, so the island lies behind.
        const back = -((x0 + share * (x - x0) - px) * ux + (y0 + share * (y - y0) - py) * uy);
        if (back > 0 && back < first) first = back;
      }
      [x0, y0] = [x, y];
    }
    return first === Infinity ? [] : [{ from: [px - ux * first, py - uy * first], way: [ux, uy], axis: false }];
  });
}

/** Where a line through the centre last leaves the island, both ways. */
function spokes({ points }: Outline, centre: Point, axis: number): Place[] {
  const [ux, uy] = [Math.cos(axis), Math.sin(axis)];
  const crossings: number[] = [];
  let [x0, y0] = points[points.length - 1]!;
  for (const [x, y] of points) {
    const o0 = (y0 - centre[1]) * ux - (x0 - centre[0]) * uy;
    const o1 = (y - centre[1]) * ux - (x - centre[0]) * uy;
    if (o0 < 0 !== o1 < 0) {
      const share = o0 / (o0 - o1);
      crossings.push((x0 + share * (x - x0) - centre[0]) * ux + (y0 + share * (y - y0) - centre[1]) * uy);
    }
    [x0, y0] = [x, y];
  }
  if (crossings.length === 0) return [];
  const at = (t: number, sign: 1 | -1): Place => ({
    from: [centre[0] + ux * t, centre[1] + uy * t],
    way: [sign * ux, sign * uy],
    axis: true,
  });
  return [at(Math.max(...crossings), 1), at(Math.min(...crossings), -1)];
}

/** An island so small that no bridge leaves it squarely is held by strips laid across its middle. */
function across(outline: Outline): Place[] {
  return Array.from({ length: 24 }, (_, n) => (n * Math.PI) / 24).flatMap((axis) =>
    spokes(outline, outline.centre, axis).map((place) => ({ ...place, axis: false })),
  );
}

/** The mirror lines of a group that pass through an island's own middle. */
const axesThrough = (group: Turning[], centre: Point, outline: Outline): number[] =>
  group.flatMap((op) => {
    if (op.mirror === undefined) return [];
    const [x, y] = turnedAbout(op, centre, outline.centre);
    return Math.abs(x - outline.centre[0]) + Math.abs(y - outline.centre[1]) < 0.05 ? [op.mirror] : [];
  });

function judged(outlines: Outline[], island: number, places: Place[], width: number, strict: Strictness): Candidate[] {
  const found = places.flatMap(({ from, way, axis }): Candidate[] => {
    const span = spanFrom(outlines, island, from, way, width, strict);
    return span ? [{ ...span, cost: span.fault + (span.corners > 0 ? AT_CORNER : 0) - (axis ? ON_AXIS : 0) }] : [];
  });
  const shortest = Math.max(width / 2, Math.min(...found.map(({ length }) => length)));
  return found
    .map((span) => ({ ...span, cost: evened(span.cost + Math.max(1, span.length / shortest)) }))
    .sort((p, q) => p.cost - q.cost)
    .slice(0, MOST)
    .filter((span, at, all) => all.findIndex((other) => sameSpan(span, other)) === at);
}

/** Spans from an island, best first: on mirror lines of the drawing, squarely from its edge, and for crumbs across their middle. */
export function candidatesFor(
  outlines: Outline[],
  island: number,
  width: number,
  group: Turning[] = [AS_IS],
  centre: Point = outlines[island]!.centre,
): Candidate[] {
  const outline = outlines[island]!;
  const axes = axesThrough(group, centre, outline);
  const places = [
    ...axes.flatMap((axis) => spokes(outline, centre, axis)),
    ...placesOn(outline, width),
    ...facing(outlines, island, width),
  ];
  const crumb = [...places, ...across(outline)];
  const tries: [Place[], Strictness][] = [
    [places, STRICT],
    [crumb, LENIENT],
    [crumb, LAST],
  ];
  for (const [tried, strict] of tries) {
    const found = judged(outlines, island, tried, width, strict);
    if (found.length > 0) return found;
  }
  return [];
}

/** How wide an island is: the longer side of its box, mm. */
export const widthOf = ({ box }: Outline): number => Math.max(boxWidth(box), boxHeight(box));
