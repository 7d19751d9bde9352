import type { Point } from '../geometry/path.ts';
import type { Wall } from '../job/job.ts';
import { ENDS, type Room, WALLS } from './walls.ts';

/** The two directions of a room: across from the left wall to the right one, along from the near wall to the far one. */
interface Both<T> {
  across: T;
  along: T;
}

/**
 * A floor that is painted from wall to wall, in the coordinates of the work: mm, y down, the near end at the bottom, the origin where the
 * two centre lines cross.
 */
export interface FloorRoom {
  /** The corners of the room. */
  room: Room;
  /** The corners of what is patterned: the room less the plain strip at the walls. */
  painted: Room;
  /** The plain strip: `across` at the left and right walls, `along` at the near and far ones. */
  strip: Both<number>;
  openings: { wall: Wall; casing: readonly [Point, Point] }[];
  obstacles: { name: string; outline: Point[] }[];
  /** Whether a centre line lies midway between the walls on its two sides; one that goes through an opening need not. */
  centred: Both<boolean>;
}

/** How far a wall lies from the centre line it faces, mm: where the other centre line meets it, and at its two ends. */
export interface Reach {
  centre: number;
  ends: [number, number];
  least: number;
  most: number;
}

const OUTWARD: Record<Wall, Point> = { near: [0, 1], right: [1, 0], far: [0, -1], left: [-1, 0] };

/** @param room corners about the crossing of the centre lines */
export function reachOf(room: Room, wall: Wall): Reach {
  const [ox, oy] = OUTWARD[wall];
  const [from, to] = ENDS[wall].map((corner) => room[corner]) as [Point, Point];
  const away = ([x, y]: Point): number => x * ox + y * oy;
  const beside = ([x, y]: Point): number => x * oy - y * ox;
  const ends: [number, number] = [away(from), away(to)];
  const share = beside(from) / (beside(from) - beside(to));
  return {
    centre: ends[0] + share * (ends[1] - ends[0]),
    ends,
    least: Math.min(...ends),
    most: Math.max(...ends),
  };
}

export const reachesOf = (room: Room): Record<Wall, Reach> =>
  Object.fromEntries(WALLS.map((wall) => [wall, reachOf(room, wall)])) as Record<Wall, Reach>;

/** The corners of a room with its walls moved inwards: the side walls by `across`, the others by `along`, mm, each square to itself. */
export function insetRoom(room: Room, { across, along }: Both<number>): Room {
  const line = (wall: Wall): { at: Point; way: Point } => {
    const [from, to] = ENDS[wall].map((corner) => room[corner]) as [Point, Point];
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const way: Point = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
    const by = wall === 'left' || wall === 'right' ? across : along;
    const [ox, oy] = OUTWARD[wall];
    // Square to the wall, on the side that looks into the room.
    const inward: Point = way[1] * ox - way[0] * oy < 0 ? [way[1], -way[0]] : [-way[1], way[0]];
    return { at: [from[0] + by * inward[0], from[1] + by * inward[1]], way };
  };
  const meet = (one: Wall, other: Wall): Point => {
    const [a, b] = [line(one), line(other)];
    const cross = a.way[0] * b.way[1] - a.way[1] * b.way[0];
    const run = ((b.at[0] - a.at[0]) * b.way[1] - (b.at[1] - a.at[1]) * b.way[0]) / cross;
    return [a.at[0] + run * a.way[0], a.at[1] + run * a.way[1]];
  };
  return {
    'near-left': meet('near', 'left'),
    'near-right': meet('near', 'right'),
    'far-right': meet('far', 'right'),
    'far-left': meet('far', 'left'),
  };
}

/**
 * Where the two centre lines cross: each midway between the two walls it runs between, where the other one meets them.
 * @param middle where the upright one lies instead, mm, if that is told
 */
export function crossingOf(room: Room, middle?: number): Point {
  // Side walls as x = at + slope · y, the others as y = at + slope · x; midway lies the mean of two such lines.
  const mean = (one: Wall, other: Wall, axis: 0 | 1): { at: number; slope: number } => {
    const lines = [one, other].map((wall) => {
      const [from, to] = ENDS[wall].map((corner) => room[corner]) as [Point, Point];
      const slope = (to[axis] - from[axis]) / (to[1 - axis]! - from[1 - axis]!);
      return { at: from[axis] - slope * from[1 - axis]!, slope };
    });
    return { at: (lines[0]!.at + lines[1]!.at) / 2, slope: (lines[0]!.slope + lines[1]!.slope) / 2 };
  };
  const [sides, ends] = [mean('left', 'right', 0), mean('near', 'far', 1)];
  const x = middle ?? (sides.at + sides.slope * ends.at) / (1 - sides.slope * ends.slope);
  return [x, ends.at + ends.slope * x];
}
