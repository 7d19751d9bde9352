import { good, type Result } from '../../issue.ts';
import type { Job } from '../../job/job.ts';
import type { FloorRoom } from '../../site/floor-room.ts';
import type { Fit } from '../layout.ts';
import type { Motifs } from '../problem.ts';
import { buildFloor } from './build.ts';
import { noFloor } from './none.ts';
import { poseFloor } from './problem.ts';
import { explainFloor } from './says.ts';
import { searchFloor } from './search.ts';

/**
 * The best layouts for a floor from wall to wall, cheapest first, one of each kind: opposite cuts equal, none under half a repeat.
 * Issues: `fit/none` (nothing lands so within the limits; says what would).
 */
export function fitFloor(job: Job, floor: FloorRoom, motifs: Motifs, most: number): Result<Fit> {
  const problem = poseFloor(job, floor, motifs);
  const { candidates, searched } = searchFloor(problem, most);
  if (candidates.length === 0) return noFloor(job, floor, problem);
  const layouts = candidates.map((candidate, at) => {
    const layout = buildFloor(candidate, at + 1);
    return { ...layout, says: explainFloor(layout, floor, job, motifs) };
  });
  return good({ searched, proof: 'exhaustive', layouts });
}
