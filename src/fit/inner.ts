import { type BorderRun, bestBorder, leastSideCost, type SideRun, sideIn, sideRuns } from './border.ts';
import type { FitProblem } from './problem.ts';

/** Distance from the inner edge of the border to the outer edge of the second one: what the reserve leaves, mm. */
export const innerOffset = ({ inner }: FitProblem, reserve: number): number =>
  inner ? reserve - inner.width - inner.gap : 0;

/** Length of a side of the second border that its repeats have, in work of this size, mm; 0 without a second border. */
export function innerSideIn(
  problem: FitProblem,
  direction: 'across' | 'along',
  border: number,
  work: number,
  reserve: number,
): number {
  const { inner } = problem;
  return inner ? sideIn(inner, direction, work - 2 * (border + innerOffset(problem, reserve)), inner.width) : 0;
}

/** The counts that a pair of sides of the second border may take, cheapest first; none without a second border. */
export const innerSideRuns = ({ inner }: FitProblem, side: number): SideRun[] =>
  inner ? sideRuns(inner, side, inner.width) : [];

/** The cost of the first of them; endless where a side takes none, nothing without a second border. */
export const leastInnerCost = ({ inner }: FitProblem, side: number): number =>
  inner ? leastSideCost(inner, side, inner.width) : 0;

const NO_INNER: BorderRun = { across: 0, along: 0, cost: 0 };

/** The cheapest counts of the second border; each list holds at least one where there is such a border. Without it: nothing, at no cost. */
export const bestInner = ({ inner }: FitProblem, across: SideRun[], along: SideRun[]): BorderRun =>
  inner ? bestBorder(across, along) : NO_INNER;
