import { keptIn, keyOf } from '../keep.ts';
import { bareFrames, fieldIn, halvesIn, type Slack, workIn } from './axis.ts';
import { countsOn, sideIn } from './border.ts';
import { fieldBounds } from './pitches.ts';
import type { AxisProblem, FitProblem } from './problem.ts';
import { slackOf } from './slack.ts';
import { onTape } from './steps.ts';

/** How many pairs there are of a count below a bound and a way for it to land. */
function waysBelow({ ways }: AxisProblem): (bound: number) => number {
  const before = [0];
  for (const [at, list] of ways.entries()) before.push(before[at]! + list.length);
  return (bound) => Math.floor(bound / 4) * before[4]! + before[bound % 4]!;
}

/** Lists of both directions of a job and of the one before it. */
const MOST_LISTS = 4;

const kept = new Map<string, number[]>();

/** `choicesBy`, counted once as long as its numbers stay the same: jobs are fitted anew with every letter typed. */
function keptChoices(
  problem: FitProblem,
  name: 'across' | 'along',
  widths: readonly number[],
  slack?: Slack,
): number[] {
  const { border, tape, edging } = problem;
  const key = keyOf(name, slack, problem[name], border, tape.step, edging);
  return keptIn(kept, MOST_LISTS, key, () => choicesBy(problem, name, widths, slack));
}

/** The choices in one direction, by the width of the border. */
function choicesBy(problem: FitProblem, name: 'across' | 'along', widths: readonly number[], slack?: Slack): number[] {
  const axis = problem[name];
  const { border, edging } = problem;
  const frames = bareFrames(axis, problem.tape, slack);
  const below = waysBelow(axis);
  const waysIn = (least: number, most: number): number => {
    if (most <= 0) return 0;
    const from = Math.max(1, halvesIn(axis, least).from);
    const { to } = halvesIn(axis, most);
    return to < from ? 0 : below(to + 1) - below(from);
  };
  if (slack) {
    const { least, most } = fieldBounds(axis, border);
    const all = frames.length * waysIn(least, most);
    return widths.map(() => all);
  }
  return widths.map((width) => {
    let sum = 0;
    for (const frame of frames) {
      const size = fieldIn(axis, frame, width);
      const ways = waysIn(size, size);
      if (ways === 0) continue;
      const { from, to, by } = countsOn(edging, sideIn(edging, name, workIn(axis, frame, width), width), width);
      sum += ways * Math.max(0, Math.floor((to - from) / by) + 1);
    }
    return sum;
  });
}

/**
 * How many combinations the search covers: for every border width on the tape, every frame, every count with a way to land and every count of
 * border repeats, across times along. Counted, not visited: this is what a plain enumeration would have to go through.
 */
export function countCombinations(problem: FitProblem): number {
  const widths = onTape(problem.border, problem.tape.step);
  const across = keptChoices(problem, 'across', widths);
  const along = keptChoices(problem, 'along', widths, slackOf(problem.along, problem.stretch));
  return widths.reduce((sum, _, at) => sum + across[at]! * along[at]!, 0);
}
