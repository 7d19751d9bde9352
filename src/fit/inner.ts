import { type BorderRun, bestBorder, type SideRun, sideIn, sideRuns } from './border.ts';
import type { FitProblem } from './problem.ts';

/** Distance from the inner edge of the border to the outer edge of the second one: what the reserve leaves, mm. */
export const innerOffset = ({ inner }: FitProblem, reserve: number): number =>
  inner ? reserve - inner.width - inner.gap : 0;

/** Half of what the second border lies inside the work: the border and the strip between the two. */
const inset = (problem: FitProblem, border: number, reserve: number): number =>
  2 * (border + innerOffset(problem, reserve));

/** The counts that a pair of sides of the second border may take in work of this size, cheapest first; none without a second border. */
export function innerRuns(
  problem: FitProblem,
  direction: 'across' | 'along',
  border: number,
  { work, reserve }: { work: number; reserve: number },
): SideRun[] {
  const { inner } = problem;
  if (!inner) return [];
  return sideRuns(inner, sideIn(inner, direction, work - inset(problem, border, reserve), inner.width), inner.width);
}

const NO_INNER: BorderRun = { across: 0, along: 0, cost: 0 };

/** The cheapest counts of the second border, or `undefined` when a side takes none. Without a second border: nothing, at no cost. */
export function bestInner({ inner }: FitProblem, across: SideRun[], along: SideRun[]): BorderRun | undefined {
  if (!inner) return NO_INNER;
  return across.length > 0 && along.length > 0 ? bestBorder(across, along) : undefined;
}
