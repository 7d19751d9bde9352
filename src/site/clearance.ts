import type { Box, Point } from '../geometry/path.ts';
import type { Corner, Wall } from '../job/job.ts';
import { casingNames, type PlacedOpening } from './openings.ts';
import { CORNERS, ENDS, type Room, WALLS } from './walls.ts';

/** Where the corners of a box lie. */
const boxCorners = ({ left, right, top, bottom }: Box): Record<Corner, Point> => ({
  'near-left': [left, bottom],
  'near-right': [right, bottom],
  'far-right': [right, top],
  'far-left': [left, top],
});

/** Shortest distance from a point to a stretch of line, mm. */
function toStretch([x, y]: Point, [x0, y0]: Point, [x1, y1]: Point): number {
  const [dx, dy] = [x1 - x0, y1 - y0];
  const share = Math.min(1, Math.max(0, ((x - x0) * dx + (y - y0) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x0 + share * dx - x, y0 + share * dy - y);
}

/** What is left between one side of the work and its wall, at the two ends of that side, mm; `narrows` is what the ends differ by. */
export interface Strip {
  wall: Wall;
  from: { corner: Corner; width: number };
  to: { corner: Corner; width: number };
  narrow: number;
  taper: number;
}

/** How far each corner of the work is from each of its two walls, as the strips beside the work. @param room in the frame of the work */
export function stripsBeside(work: Box, room: Room): Strip[] {
  const corners = boxCorners(work);
  return WALLS.map((wall) => {
    const [from, to] = ENDS[wall].map((corner) => ({
      corner,
      width: toStretch(corners[corner], room[ENDS[wall][0]], room[ENDS[wall][1]]),
    })) as [Strip['from'], Strip['to']];
    const narrow = Math.min(from.width, to.width);
    return { wall, from, to, narrow, taper: Math.abs(from.width - to.width) };
  });
}

/** How far an edge of a casing is from each corner of the work, mm, and from the work itself. */
export interface CasingClearance {
  wall: Wall;
  edge: string;
  corners: Record<Corner, number>;
  least: number;
}

/** Distances from the work to the edges of the casings. @param into takes a point of the room into the frame of the work */
export function toCasings(work: Box, openings: PlacedOpening[], into: (point: Point) => Point): CasingClearance[] {
  const corners = boxCorners(work);
  return openings.flatMap(({ wall, casing }) =>
    casing.map((point, at) => {
      const [x, y] = into(point);
      const beyond = (value: number, low: number, high: number) => Math.max(low - value, 0, value - high);
      return {
        wall,
        edge: casingNames(wall)[at]!,
        corners: Object.fromEntries(
          CORNERS.map((corner) => [corner, Math.hypot(x - corners[corner][0], y - corners[corner][1])]),
        ) as Record<Corner, number>,
        least: Math.hypot(beyond(x, work.left, work.right), beyond(y, work.top, work.bottom)),
      };
    }),
  );
}
