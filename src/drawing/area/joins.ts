import type { Point } from '../../geometry/path.ts';
import type { Cap, Join } from '../marks/mark.ts';
import { apart, type Corner, turnAt } from './track.ts';

/** Chords of a full turn of a round join or end. */
export const ROUND_STEPS = 240;

/** Points on a circle from one angle on, over a turn of either sense, radians. */
function arc([x, y]: Point, radius: number, from: number, turn: number): Point[] {
  const count = Math.max(1, Math.ceil((Math.abs(turn) / (2 * Math.PI)) * ROUND_STEPS));
  return Array.from({ length: count + 1 }, (_, i): Point => {
    const angle = from + (turn * i) / count;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}

const heading = (from: Point, to: Point): number => Math.atan2(to[1] - from[1], to[0] - from[0]);

/**
 * What the join at a corner paints beside the two sides; nothing where they go straight on.
 * @param half half the width of the line
 * @param limit longest mitre, in widths; beyond it the join is a bevel
 */
export function joinAt(corner: Corner, at: Point, half: number, join: Join, limit: number): Point[] | undefined {
  const comes = heading(corner[0], at);
  const turn = turnAt(corner[0], at, corner[1]);
  if (Math.abs(turn) < 1e-9) return undefined;
  // The outer side lies to the left of a turn to the right.
  const from = comes - (Math.sign(turn) * Math.PI) / 2;
  if (join === 'round') return [at, ...arc(at, half, from, turn)];
  const [one, two] = [arc(at, half, from, 0)[0]!, arc(at, half, from + turn, 0)[0]!];
  // A mitre is as long as 1 / sin of half the angle between the sides, in widths.
  const sine = Math.cos(turn / 2);
  if (join === 'bevel' || sine * limit < 1) return [at, one, two];
  return [at, one, arc(at, half / sine, from + turn / 2, 0)[0]!, two];
}

/** What the end of a line paints beyond it; `from` is a point that the line comes from, and the end itself where it has no length. */
export function capAt(from: Point, at: Point, half: number, cap: Cap): Point[] | undefined {
  if (cap === 'butt') return undefined;
  const isDot = apart(from, at) === 0;
  const way = isDot ? 0 : heading(from, at);
  if (cap === 'round') return arc(at, half, way - Math.PI / 2, isDot ? 2 * Math.PI : Math.PI);
  const [ux, uy] = [Math.cos(way) * half, Math.sin(way) * half];
  const corner = (along: number, aside: number): Point => [
    at[0] + along * ux - aside * uy,
    at[1] + along * uy + aside * ux,
  ];
  const back = isDot ? -1 : 0;
  return [corner(back, -1), corner(1, -1), corner(1, 1), corner(back, 1)];
}
