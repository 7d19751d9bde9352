import type { Motifs } from '../fit/problem.ts';
import { good, type Result } from '../issue.ts';
import type { Job } from '../job/job.ts';
import type { RoomOutline } from '../site/walls-outline.ts';
import { buildRoomLayout } from './build.ts';
import { countEachWall, searchEachWall } from './each-wall.ts';
import { liesFree } from './footprint.ts';
import type { RoomFit } from './layout.ts';
import { nearestRoom } from './nearest.ts';
import { countOnePitch, searchOnePitch } from './one-pitch.ts';
import { poseRoom, type RoomProblem } from './problem.ts';
import { explainRoom } from './says.ts';

/** Every wall has its own pitch, or one piece. */
const isEach = ({ pitch, ratio }: RoomProblem): boolean => pitch === 'each wall' || ratio === 'plain';

export function searchRoom(problem: RoomProblem, most: number) {
  const found = isEach(problem) ? searchEachWall(problem, most) : searchOnePitch(problem, most);
  return found
    .map((candidate, at) => buildRoomLayout(problem, candidate, at + 1))
    .filter((layout) => liesFree(problem.outline, layout))
    .map((layout, at) => ({ ...layout, rank: at + 1 }));
}

/**
 * The best ways to lay a border along the walls, cheapest first, one for every choice of counts.
 * Issues: `fit/none` (whole repeats land on every wall nowhere within the limits; says what would).
 */
export function fitRoomBorder(job: Job, outline: RoomOutline, motifs: Partial<Motifs>, most = 10): Result<RoomFit> {
  const problem = poseRoom(job, outline, motifs);
  const layouts = searchRoom(problem, most).map((layout) => ({ ...layout, says: explainRoom(layout, job, motifs) }));
  if (layouts.length === 0) return nearestRoom(problem, job, motifs);
  const searched = isEach(problem) ? countEachWall(problem) : countOnePitch(problem);
  return good({ searched, proof: 'exhaustive', layouts });
}
