import type { Frame, Run } from './axis.ts';
import type { BorderRun } from './border.ts';
import { borderCost, readingCost, stretchCost } from './cost.ts';
import type { FitProblem } from './problem.ts';
import type { Tape } from './tape.ts';

/** Everything a layout is made of, priced. */
export interface Candidate {
  width: number;
  across: { frame: Frame; run: Run };
  along: { frame: Frame; run: Run };
  stretch: number;
  border: BorderRun;
  /** Of the second border; no counts and no cost without one. */
  inner: BorderRun;
  cost: number;
}

/** What the border's width alone costs. */
export const widthCost = (problem: FitProblem, width: number): number =>
  borderCost(width, problem.border) + (width === 0 ? 0 : readingCost(width, problem.tape));

/** Adds the costs up, to a billionth of a point: two layouts alike but for rounding noise are equal, on any machine. */
export function price(problem: FitProblem, parts: Omit<Candidate, 'cost'>): Candidate {
  const { across, along } = parts;
  const cost =
    widthCost(problem, parts.width) +
    across.frame.cost +
    along.frame.cost +
    across.run.cost +
    along.run.cost +
    stretchCost(parts.stretch) +
    parts.border.cost +
    parts.inner.cost;
  return { ...parts, cost: Math.round(cost * 1e9) / 1e9 };
}

/** Cheapest first; equals in a fixed order, so that the same job always gives the same list. */
export function compareCandidates(a: Candidate, b: Candidate): number {
  return (
    a.cost - b.cost ||
    a.width - b.width ||
    a.across.frame.size - b.across.frame.size ||
    a.along.frame.size - b.along.frame.size ||
    a.across.run.halves - b.across.run.halves ||
    a.along.run.halves - b.along.run.halves ||
    a.across.frame.reserve - b.across.frame.reserve ||
    a.along.frame.reserve - b.along.frame.reserve ||
    a.along.frame.gap - b.along.frame.gap ||
    a.across.run.way.phase - b.across.run.way.phase ||
    a.along.run.way.phase - b.along.run.way.phase ||
    a.border.across - b.border.across ||
    a.border.along - b.border.along
  );
}

/** More than twice the counts of half-repeats there can be on one side. */
const KINDS = 2 ** 20;

/** The count and the landing of a run in one number. */
export const runKind = ({ halves, way }: Run): number => 2 * halves + (way.edge === 'whole' ? 0 : 1);

/**
 * Layouts that a person would call the same: equal counts and landings, and a border of the same width to half an inch (or a centimetre).
 * Only the cheapest of a kind is listed. Kinds are told apart by number.
 */
export const kindOf = ({ across, along, width }: Pick<Candidate, 'across' | 'along' | 'width'>, tape: Tape): number =>
  kindOfRuns(width, runKind(across.run), runKind(along.run), tape);

/** The same from the kinds of the two runs. */
export const kindOfRuns = (width: number, across: number, along: number, { coarse }: Tape): number =>
  (Math.round(width / coarse) * KINDS + across) * KINDS + along;
