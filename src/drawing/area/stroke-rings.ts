import type { Point, Ring, Side } from '../../geometry/path.ts';
import { reversedRing } from '../../geometry/transform.ts';
import type { Cap, Stroke } from '../marks/mark.ts';
import type { Outline } from '../syntax/outline.ts';
import { beside, headingOf, offsetSide } from './offset.ts';
import { arcSides } from './round.ts';
import { apart, SAME, STRAIGHT } from './track.ts';

const line = (to: Point): Side => ({ kind: 'line', to });

const angleOf = ([x, y]: Point): number => Math.atan2(y, x);

/** Sides that have length, each with where it begins. */
function legsOf({ start, sides }: Outline): { from: Point; side: Side }[] {
  let from = start;
  return sides.flatMap((side) => {
    const leg = { from, side };
    from = side.to;
    const points = side.kind === 'line' ? [side.to] : [side.out, side.into, side.to];
    return points.some((point) => apart(leg.from, point) > SAME) ? [leg] : [];
  });
}

/** What leads round a corner on the side of the line that is followed: straight to the corner and on within a turn, the join outside it. */
function join(at: Point, comes: Point, goes: Point, half: number, { join: kind, limit }: Stroke): Side[] {
  const from = angleOf(comes);
  const turn = Math.atan2(Math.sin(angleOf(goes) - from), Math.cos(angleOf(goes) - from));
  const next = line(beside(at, goes, half));
  if (Math.abs(turn) < STRAIGHT) return [];
  // Followed on its right, with y down: a turn to the right is within.
  if (turn > 0) return [line(at), next];
  if (kind === 'round') return arcSides(at, half, from + Math.PI / 2, turn);
  const sine = Math.cos(turn / 2);
  if (kind === 'bevel' || sine * limit < 1) return [next];
  const way = from + Math.PI / 2 + turn / 2;
  return [line([at[0] + (half / sine) * Math.cos(way), at[1] + (half / sine) * Math.sin(way)]), next];
}

/** Round the end of a line, from its right side to its left. */
function cap(at: Point, heading: Point, half: number, kind: Cap): Side[] {
  const way = angleOf(heading);
  const other = line(beside(at, heading, -half));
  if (kind === 'round') return arcSides(at, half, way + Math.PI / 2, -Math.PI);
  if (kind === 'butt') return [other];
  const out = (aside: number): Side => {
    const [x, y] = beside(at, heading, aside);
    return line([x + Math.cos(way) * half, y + Math.sin(way) * half]);
  };
  return [out(half), out(-half), other];
}

interface Chain {
  start: Point;
  sides: Side[];
}

/** The line on the right of an outline, joins included, round to where it began when the outline is closed. */
function chain(outline: Outline, half: number, stroke: Stroke): Chain | undefined {
  const legs = legsOf(outline);
  const sides: Side[] = [];
  for (const [i, { from, side }] of legs.entries()) {
    const offset = offsetSide(from, side, half);
    if (offset === undefined) return undefined;
    for (const one of offset) sides.push(one);
    const next = legs[i + 1] ?? (outline.closed ? legs[0] : undefined);
    if (next === undefined) continue;
    for (const one of join(side.to, headingOf(from, side, 1), headingOf(next.from, next.side, 0), half, stroke))
      sides.push(one);
  }
  const first = legs[0]!;
  return { start: beside(first.from, headingOf(first.from, first.side, 0), half), sides };
}

const turnedRound = (outline: Outline): Outline => ({ ...reversedRing(outline), closed: outline.closed });

/** A line without length: its ends alone, level. */
function dot(at: Point, half: number, kind: Cap): Ring[] {
  if (kind === 'butt') return [];
  const level: Point = [1, 0];
  return [{ start: beside(at, level, half), sides: [...cap(at, level, half, kind), ...cap(at, [-1, 0], half, kind)] }];
}

/**
 * The outline of a line along an outline, on curves of its own: one ring, or one on each side of a closed one. Rings may cross themselves;
 * they paint what is not wound 0 times. Nothing where a curve bends more tightly than half the width.
 */
export function strokeRings(outline: Outline, stroke: Stroke): Ring[] | undefined {
  const half = stroke.width / 2;
  const legs = legsOf(outline);
  if (legs.length === 0) return dot(outline.start, half, stroke.cap);
  const back = turnedRound(outline);
  const [there, again] = [chain(outline, half, stroke), chain(back, half, stroke)];
  if (there === undefined || again === undefined) return undefined;
  if (outline.closed) return [there, again];
  const [last, first] = [legs.at(-1)!, legs[0]!];
  const [end, begin] = [headingOf(last.from, last.side, 1), headingOf(first.from, first.side, 0)];
  const sides = [
    ...there.sides,
    ...cap(last.side.to, end, half, stroke.cap),
    ...again.sides,
    ...cap(first.from, [-begin[0], -begin[1]], half, stroke.cap),
  ];
  return [{ start: there.start, sides }];
}
