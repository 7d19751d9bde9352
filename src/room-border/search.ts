import { buildRoomLayout } from './build.ts';
import { searchEachWall } from './each-wall.ts';
import { liesFree } from './footprint.ts';
import { searchOnePitch } from './one-pitch.ts';
import type { RoomProblem } from './problem.ts';

/** Every wall has its own pitch, or one piece. */
export const isEach = ({ pitch, ratio }: RoomProblem): boolean => pitch === 'each wall' || ratio === 'plain';

/** The best layouts that lie clear of themselves and of every wall, cheapest first. */
export function searchRoom(problem: RoomProblem, most: number) {
  const found = isEach(problem) ? searchEachWall(problem, most) : searchOnePitch(problem, most);
  return found
    .map((candidate, at) => buildRoomLayout(problem, candidate, at + 1))
    .filter((layout) => liesFree(problem.outline, layout))
    .map((layout, at) => ({ ...layout, rank: at + 1 }));
}
