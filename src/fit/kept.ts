import { keptIn, keyOf } from '../keep.ts';
import { Direction, type KnownRuns, noRuns } from './choices.ts';
import type { FitProblem } from './problem.ts';
import type { Directions } from './search.ts';
import { slackOf } from './slack.ts';

/** Both directions of a job and those of the one before it. */
const MOST_DIRECTIONS = 4;
/** Sizes of fields for which runs are kept before they are found anew. */
const MOST_SIZES = 4000;

const directions = new Map<string, Direction>();
const runs = new Map<string, KnownRuns>();

/** Runs for the same counts, pitches and landings, whatever the size of the work. */
function keptRuns(problem: FitProblem, name: 'across' | 'along'): KnownRuns {
  const { halves, pitch, pieces, ways, datum } = problem[name];
  const known = keptIn(runs, MOST_DIRECTIONS, keyOf(halves, pitch, pieces, ways, datum, problem.tape), noRuns);
  for (const all of [known.any, known.exact]) if (all.size > MOST_SIZES) all.clear();
  return known;
}

/** The directions of a search, made once as long as their numbers stay the same: a job is fitted anew with every letter typed. */
export function keptDirections(problem: FitProblem): Directions {
  const { tape, edging, inner } = problem;
  const kept = (name: 'across' | 'along', slack?: ReturnType<typeof slackOf>) =>
    keptIn(
      directions,
      MOST_DIRECTIONS,
      keyOf(name, slack, problem[name], tape, edging, inner),
      () => new Direction(problem, name, slack, keptRuns(problem, name)),
    );
  return { across: kept('across'), along: kept('along', slackOf(problem.along, problem.stretch)) };
}
