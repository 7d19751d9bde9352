import { type BorderRun, bestBorder, sideIn, sideRuns } from './border.ts';
import type { FitProblem } from './problem.ts';

/** Distance from the inner edge of the border to the outer edge of the second one: what the reserve leaves, mm. */
export const innerOffset = ({ inner }: FitProblem, reserve: number): number =>
  inner ? reserve - inner.width - inner.gap : 0;

/** Half of what the second border lies inside the work: the border and the strip between the two. */
const inset = (problem: FitProblem, border: number, reserve: number): number =>
  2 * (border + innerOffset(problem, reserve));

/**
 * The counts of the second border for work of this size, or `undefined` when a side takes none.
 * Without a second border: nothing, at no cost.
 */
export function bestInner(
  problem: FitProblem,
  border: number,
  across: { work: number; reserve: number },
  along: { work: number; reserve: number },
): BorderRun | undefined {
  const { inner } = problem;
  if (!inner) return { across: 0, along: 0, cost: 0 };
  const runs = (direction: 'across' | 'along', { work, reserve }: { work: number; reserve: number }) =>
    sideRuns(inner, sideIn(inner, direction, work - inset(problem, border, reserve), inner.width), inner.width);
  const [onAcross, onAlong] = [runs('across', across), runs('along', along)];
  return onAcross.length > 0 && onAlong.length > 0 ? bestBorder(onAcross, onAlong) : undefined;
}
