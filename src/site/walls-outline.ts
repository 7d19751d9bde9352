import type { Box, Point } from '../geometry/path.ts';
import type { RoomWall } from '../job/job.ts';

/** Quarter turns clockwise from straight ahead, which is from the near end to the far one: 0 up the plan, 1 right, 2 down, 3 left. */
export type Heading = 0 | 1 | 2 | 3;

const STEPS: readonly Point[] = [
  [0, -1],
  [1, 0],
  [0, 1],
  [-1, 0],
];

/** One millimetre on, y down. */
export const stepOf = (heading: number): Point => STEPS[((heading % 4) + 4) % 4]!;

/** A wall where it stands, walked with it at one's left hand; the room lies to the right. Lengths in mm. */
export interface PlacedWall extends RoomWall {
  /** As it was measured; `length` is what closes the room. */
  measured: number;
  heading: Heading;
  start: Point;
}

/** A room of right angles about the centre of the box round it, y down, near end at the bottom. */
export interface RoomOutline {
  box: Box;
  walls: PlacedWall[];
}

/** The place so far along a wall from its beginning, and so far off it into the room, mm. */
export function besideWall(
  { start, heading }: Pick<PlacedWall, 'start' | 'heading'>,
  along: number,
  off: number,
): Point {
  const [ux, uy] = stepOf(heading);
  const [vx, vy] = stepOf(heading + 1);
  return [start[0] + ux * along + vx * off, start[1] + uy * along + vy * off];
}

/** The way each wall runs: up the left wall first, then a quarter turn at every corner. */
export function headingsOf(walls: readonly Pick<RoomWall, 'corner'>[]): Heading[] {
  let heading = 0;
  return walls.map(({ corner }) => {
    const here = heading;
    heading = (heading + (corner === 'inside' ? 1 : 3)) % 4;
    return here as Heading;
  });
}

/** The corners of the walls in turn, each where a wall begins, about the centre of the box round them. */
export function placeWalls(walls: readonly (RoomWall & { measured: number })[]): RoomOutline {
  const headings = headingsOf(walls);
  let [x, y] = [0, 0];
  const starts = walls.map(({ length }, at): Point => {
    const here: Point = [x, y];
    const [ux, uy] = stepOf(headings[at]!);
    x += ux * length;
    y += uy * length;
    return here;
  });
  const xs = starts.map((point) => point[0]);
  const ys = starts.map((point) => point[1]);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const [cx, cy] = [(left + right) / 2, (top + bottom) / 2];
  return {
    box: { left: left - cx, right: right - cx, top: top - cy, bottom: bottom - cy },
    walls: walls.map((wall, at) => ({
      ...wall,
      heading: headings[at]!,
      start: [starts[at]![0] - cx, starts[at]![1] - cy],
    })),
  };
}
