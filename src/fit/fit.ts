import { fail, good, type Result } from '../issue.ts';
import type { Job } from '../job/job.ts';
import type { Site } from '../site/site.ts';
import { writeLength } from '../units/index.ts';
import { buildLayout } from './build.ts';
import { countCombinations } from './count.ts';
import { fitFloor } from './floor/fit.ts';
import { keptDirections } from './kept.ts';
import type { Fit } from './layout.ts';
import { nearestThatFits, nothingLands } from './nearest.ts';
import { fieldBounds } from './pitches.ts';
import { poseProblem } from './pose.ts';
import type { Motifs } from './problem.ts';
import { explain } from './says.ts';
import { search } from './search.ts';

/**
 * The best layouts for a job, cheapest first, one of each kind.
 * @param most how many to list
 * @param why whether it is worked out what would land where nothing does, which takes several times as long
 * Issues: `fit/room` (border and reserves leave no field), `fit/none` (nothing lands within the limits; says what would).
 */
export function fitLayouts(job: Job, site: Site, motifs: Motifs, most = 10, why = true): Result<Fit> {
  if (site.floor) return fitFloor(job, site.floor, motifs, most);
  const problem = poseProblem(job, site, motifs);
  for (const direction of ['across', 'along'] as const) {
    const { overall } = problem[direction];
    if (overall && fieldBounds(problem[direction], problem.border).most <= 0) {
      const length = (mm: number) => writeLength(mm, job.units, job.step);
      return fail(
        'fit/room',
        ['border', 'width'],
        `${length(overall.to)} ${direction} leaves no field inside a border of ${length(problem.border.from)} on both sides, its reserves and gaps`,
        `a border width under ${length(overall.to / 4)}`,
      );
    }
  }
  const candidates = search(problem, most, keptDirections(problem));
  if (candidates.length === 0) return why ? nearestThatFits(job, site, motifs) : nothingLands();
  const layouts = candidates.map((candidate, at) => {
    const layout = buildLayout(problem, candidate, at + 1);
    return { ...layout, says: explain(layout, job, motifs) };
  });
  return good({ searched: countCombinations(problem), proof: 'exhaustive', layouts });
}
