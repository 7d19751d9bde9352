import type { Point } from '../../geometry/path.ts';
import type { Wall } from '../../job/job.ts';
import { type FloorRoom, reachOf } from '../../site/floor-room.ts';

/** From the crossing of the centre lines to a wall. Distances in mm from the crossing. */
export interface Ray {
  wall: Wall;
  /** To the edge of the pattern, and to the wall. */
  pattern: number;
  end: number;
  /** What stands on the line, and from where to where. */
  obstacles: { name: string; from: number; to: number }[];
}

const WAYS: Record<Wall, Point> = { near: [0, 1], right: [1, 0], far: [0, -1], left: [-1, 0] };

/** Where a polygon covers the ray from (0, 0) that way: pairs of distances. */
function covered(outline: readonly Point[], [dx, dy]: Point): [number, number][] {
  const crossings: number[] = [];
  outline.forEach(([x0, y0], at) => {
    const [x1, y1] = outline[(at + 1) % outline.length]!;
    const [s0, s1] = [x0 * dy - y0 * dx, x1 * dy - y1 * dx];
    if (s0 < 0 === s1 < 0) return;
    const share = s0 / (s0 - s1);
    crossings.push((x0 + share * (x1 - x0)) * dx + (y0 + share * (y1 - y0)) * dy);
  });
  crossings.sort((a, b) => a - b);
  const found: [number, number][] = [];
  for (let at = 0; at + 1 < crossings.length; at += 2) found.push([crossings[at]!, crossings[at + 1]!]);
  return found;
}

export function rayTo(floor: FloorRoom, wall: Wall): Ray {
  const end = reachOf(floor.room, wall).centre;
  const obstacles = floor.obstacles
    .flatMap(({ name, outline }) =>
      covered(outline, WAYS[wall]).map(([from, to]) => ({ name, from: Math.max(0, from), to: Math.min(end, to) })),
    )
    .filter(({ from, to }) => to - from > 1e-6)
    .sort((a, b) => a.from - b.from);
  return { wall, pattern: reachOf(floor.painted, wall).centre, end, obstacles };
}

/** How far one can go from the crossing before something stands in the way, mm. */
export const clearRun = ({ end, obstacles }: Ray): number => Math.min(end, ...obstacles.map(({ from }) => from));
