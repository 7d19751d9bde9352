import { nothingLands } from '../fit/nearest.ts';
import type { Motifs } from '../fit/problem.ts';
import { good, type Result } from '../issue.ts';
import type { Job } from '../job/job.ts';
import type { RoomOutline } from '../site/walls-outline.ts';
import { countEachWall } from './each-wall.ts';
import type { RoomFit } from './layout.ts';
import { nearestRoom } from './nearest.ts';
import { countOnePitch } from './one-pitch.ts';
import { poseRoom } from './problem.ts';
import { explainRoom } from './says.ts';
import { isEach, searchRoom } from './search.ts';

/**
 * The best ways to lay a border along the walls, cheapest first, one for every choice of counts.
 * @param why whether it is worked out what would land where nothing does
 * Issues: `fit/none` (whole repeats land on every wall nowhere within the limits; says what would).
 */
export function fitRoomBorder(
  job: Job,
  outline: RoomOutline,
  motifs: Partial<Motifs>,
  most = 10,
  why = true,
): Result<RoomFit> {
  const problem = poseRoom(job, outline, motifs);
  const layouts = searchRoom(problem, most).map((layout) => ({ ...layout, says: explainRoom(layout, job, motifs) }));
  if (layouts.length === 0) return why ? nearestRoom(problem, job, motifs) : nothingLands();
  const searched = isEach(problem) ? countEachWall(problem) : countOnePitch(problem);
  return good({ searched, proof: 'exhaustive', layouts });
}
