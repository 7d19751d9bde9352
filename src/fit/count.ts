import { fieldIn, framesOf, halvesIn, workIn } from './axis.ts';
import { countsOn, sideIn } from './border.ts';
import { fieldBounds } from './pitches.ts';
import type { AxisProblem, FitProblem } from './problem.ts';
import { slackOf } from './slack.ts';
import { onTape } from './steps.ts';

/** Pairs of a count between two bounds and a way for it to land. */
function countWays(axis: AxisProblem, from: number, to: number): number {
  let ways = 0;
  for (let rest = 0; rest < 4; rest++) {
    const first = from + ((((rest - from) % 4) + 4) % 4);
    if (first <= to) ways += (Math.floor((to - first) / 4) + 1) * axis.ways[rest]!.length;
  }
  return ways;
}

/**
 * How many combinations the search covers: for every border width on the tape, every frame, every count with a way to land and every count of
 * border repeats, across times along. Counted, not visited: this is what a plain enumeration would have to go through.
 */
export function countCombinations(problem: FitProblem): number {
  const slack = slackOf(problem.along, problem.stretch);
  const acrossFrames = framesOf(problem.across, problem.tape);
  const alongFrames = framesOf(problem.along, problem.tape, slack);
  let total = 0;
  for (const width of onTape(problem.border, problem.tape.step)) {
    const choices = (axis: AxisProblem, frames: typeof acrossFrames, open: boolean): number =>
      frames.reduce((sum, frame) => {
        const size = fieldIn(axis, frame, width);
        const bounds = open ? fieldBounds(axis, problem.border) : { least: size, most: size };
        if (bounds.most <= 0) return sum;
        const from = halvesIn(axis, bounds.least).from;
        const to = halvesIn(axis, bounds.most).to;
        const direction = axis === problem.across ? 'across' : 'along';
        const side = sideIn(problem.edging, direction, workIn(axis, frame, width), width);
        const { from: least, to: most, by } = countsOn(problem.edging, side, width);
        const borders = open ? 1 : Math.max(0, Math.floor((most - least) / by) + 1);
        return sum + countWays(axis, Math.max(1, from), to) * borders;
      }, 0);
    total += choices(problem.across, acrossFrames, false) * choices(problem.along, alongFrames, slack !== undefined);
  }
  return total;
}
