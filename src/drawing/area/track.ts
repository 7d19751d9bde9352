import { pointOnCurve } from '../../geometry/flatten.ts';
import type { Point, Side } from '../../geometry/path.ts';
import type { Outline } from '../syntax/outline.ts';
import { chordsOf } from './chords.ts';

/** Two sides of a line that meet: a point that the first comes from, and one that the second goes to. */
export type Corner = [before: Point, after: Point];

/** A line to draw as the points of its chords. */
export interface Track {
  points: Point[];
  closed: boolean;
  /** One for each point: the corner there, or nothing where the line runs smoothly or ends. */
  corners: (Corner | undefined)[];
}

/** Points closer than this are one, and a handle shorter than this shows no direction. */
export const SAME = 1e-5;
/** Turns of less than this run straight on, radians. */
export const STRAIGHT = 1e-4;
/** Share of a curve after which, and before whose end, it is followed once more: so that its end chords show its true direction. */
const FOOT = 0.002;
/** Shorter chords show no direction in whole steps. */
const LEAST_FOOT = 0.02;

export const apart = (a: Point, b: Point): number => Math.sqrt((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2);

/** The points of one side's chords, with one more near each end of a curve. */
function pointsAlong(from: Point, side: Side): Point[] {
  const chords = chordsOf(from, side);
  if (side.kind === 'line' || chords.length < 2) return chords;
  const [first, last] = [pointOnCurve(from, side, FOOT), pointOnCurve(from, side, 1 - FOOT)];
  const fits = (end: Point, foot: Point, next: Point) =>
    apart(end, foot) > LEAST_FOOT && apart(end, foot) < apart(end, next) / 2;
  if (fits(side.to, last, chords.at(-2)!)) chords.splice(-1, 0, last);
  if (fits(from, first, chords[0]!)) chords.unshift(first);
  return chords;
}

/** By how much a line turns at a point, radians, to the right above 0. */
export function turnAt(before: Point, at: Point, after: Point): number {
  const [ux, uy, vx, vy] = [at[0] - before[0], at[1] - before[1], after[0] - at[0], after[1] - at[1]];
  return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
}

const cornerOf = (before: Point, at: Point, after: Point): Corner | undefined =>
  Math.abs(turnAt(before, at, after)) < STRAIGHT ? undefined : [before, after];

/** The outline as chords, points that lie on each other left out. Where two sides meet, the directions in which they do so are kept. */
export function trackOf({ start, sides, closed }: Outline): Track {
  const track: Track = { points: [start], closed, corners: [undefined] };
  const { points, corners } = track;
  let from = start;
  let before: Point | undefined;
  let first: Point | undefined;
  for (const side of sides) {
    const way = side.kind === 'line' ? [from, side.to] : [from, side.out, side.into, side.to];
    const after = way.find((point) => apart(point, from) > SAME);
    if (after === undefined) continue;
    if (before !== undefined) corners[corners.length - 1] = cornerOf(before, from, after);
    first ??= after;
    before = way.reverse().find((point) => apart(point, side.to) > SAME) ?? from;
    for (const point of pointsAlong(from, side)) {
      if (apart(points.at(-1)!, point) < SAME) continue;
      points.push(point);
      corners.push(undefined);
    }
    from = side.to;
  }
  if (closed && points.length > 1 && apart(start, points.at(-1)!) < SAME) {
    points.pop();
    corners.pop();
    corners[0] = cornerOf(before!, start, first!);
  }
  return track;
}

/** The smooth stretches between a track's corners. A closed track without corners ends where it begins. */
export function stretchesOf({ points, closed, corners }: Track): Point[][] {
  const stretches: Point[][] = [[points[0]!]];
  for (let i = 1; i < points.length; i++) {
    stretches.at(-1)!.push(points[i]!);
    if (corners[i] && (closed || i < points.length - 1)) stretches.push([points[i]!]);
  }
  if (closed) stretches.at(-1)!.push(points[0]!);
  return stretches;
}
