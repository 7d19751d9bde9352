import type { Box, Point } from '../geometry/path.ts';
import type { Corner, Wall } from '../job/job.ts';
import type { Placing } from './placing.ts';
import { CORNERS, ENDS, type Room } from './walls.ts';

/** A room as it is seen from the centre of the work: that is (0, 0), the axis runs straight up through it. Lengths in mm, y down. */
export interface RoomView {
  corners: Room;
  openings: { wall: Wall; casing: readonly [Point, Point] }[];
  obstacles: { name: string; outline: Point[] }[];
  /** What the work lies under, such as a table. */
  over: { name: string; outline: Point[] }[];
  /** Where the axis meets the near and the far wall. */
  axis: { near: Point; far: Point };
}

/** Where the axis, upright through x = 0, meets a wall. */
function meets(corners: Room, wall: 'near' | 'far'): Point {
  const [[x0, y0], [x1, y1]] = ENDS[wall].map((corner) => corners[corner]) as [Point, Point];
  return [0, y0 + ((0 - x0) * (y1 - y0)) / (x1 - x0)];
}

/** @param centre of the work, in the frame of the placing */
export function viewFrom(placing: Placing, [cx, cy]: Point): RoomView {
  const shift = ([x, y]: Point): Point => [x - cx, y - cy];
  const seen = (point: Point): Point => shift(placing.into(point));
  const corners = Object.fromEntries(CORNERS.map((corner) => [corner, shift(placing.room[corner])])) as Record<
    Corner,
    Point
  >;
  return {
    corners,
    openings: placing.openings.map(({ wall, casing }) => ({ wall, casing: [seen(casing[0]), seen(casing[1])] })),
    obstacles: placing.obstacles.map(({ name, outline }) => ({ name, outline: outline.map(seen) })),
    over: [],
    axis: { near: meets(corners, 'near'), far: meets(corners, 'far') },
  };
}

/** A room told by its width and length alone, with the work so far from its walls. */
export function plainView(
  work: { across: number; along: number },
  gaps: { near: number; far: number; left: number; right: number },
): RoomView {
  const { left, right, top, bottom }: Box = {
    left: -work.across / 2 - gaps.left,
    right: work.across / 2 + gaps.right,
    top: -work.along / 2 - gaps.far,
    bottom: work.along / 2 + gaps.near,
  };
  return {
    corners: {
      'near-left': [left, bottom],
      'near-right': [right, bottom],
      'far-right': [right, top],
      'far-left': [left, top],
    },
    openings: [],
    obstacles: [],
    over: [],
    axis: { near: [0, bottom], far: [0, top] },
  };
}
