import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import { MM_PER_INCH, roundToStep, writeLength, writeTape } from '../units/index.ts';
import type { SquareCheck } from './schedule.ts';

const diagonal = (across: number, along: number): number => Math.sqrt(across * across + along * along);

/**
 * How far the far end leans to one side when the two diagonals of a four-sided figure with equal opposite sides differ, mm.
 * From d1² − d2² = 4 × across × lean.
 */
export const leanFor = (difference: number, across: number, along: number): number =>
  (difference * diagonal(across, along)) / (2 * across);

/**
 * What squares up a figure whose opposite sides are equal: both far corners move by so much to one side.
 * The identity behind it, exact: d1² − d2² = 4 × across × lean.
 * @param first  diagonal from the near left corner to the far right one, mm
 * @param second the other, mm
 */
export function squaringMove(first: number, second: number, across: number): { way: 'left' | 'right'; by: number } {
  const lean = ((first - second) * (first + second)) / (4 * across);
  return { way: lean > 0 ? 'left' : 'right', by: Math.abs(lean) };
}

/** How far the mid-run mark of a long edge lies outwards when the distance to it from the opposite near corner is off by so much, mm. */
export const bowFor = (off: number, across: number, along: number): number =>
  (off * diagonal(across, along / 2)) / across;

/** The largest 3-4-5 triangle whose two legs fit beside each other in the rectangle, in whole units, mm. */
export function rightTriangle(across: number, along: number, unit: number) {
  const fits = (wide: number, long: number) => Math.floor(Math.min(across / wide, along / long) / unit + 1e-9) * unit;
  const [upright, lying] = [fits(3, 4), fits(4, 3)];
  return upright >= lying
    ? { across: 3 * upright, along: 4 * upright, slant: 5 * upright }
    : { across: 4 * lying, along: 3 * lying, slant: 5 * lying };
}

/** How far an edge strays over a length when the slanted side of its corner's triangle is off by so much, mm. */
export const strayFor = (
  off: number,
  triangle: { across: number; along: number; slant: number },
  over: number,
): number => (off * triangle.slant * over) / (triangle.across * triangle.along);

/** Makes checks for a tape of this step, mm: what is measured, how long it truly is, and what to do when it is off. */
export const squareCheck =
  (step: number) =>
  (says: string, mm: number, otherwise: string): SquareCheck => ({
    says,
    true: mm,
    reads: roundToStep(mm, step),
    otherwise,
  });

/** The distances that prove the corners square, each with what to do when it is off. */
export function squareChecks(layout: Layout, job: Job): SquareCheck[] {
  const { work, field, border, reserve } = layout;
  const { step } = job;
  const length = (mm: number) => writeLength(mm, job.units, step);
  const tape = (mm: number) => writeTape(mm, job.units, step);
  const check = squareCheck(step);
  const notable = 2 * step;
  const rate = (mm: number) => `${length(Math.max(step, mm))} for every ${length(notable)}`;
  const lean = (size: { across: number; along: number }) => rate(leanFor(notable, size.across, size.along));
  /** Which corners to move, which way and how far, when two diagonals differ. */
  const whenApart = (corners: string, size: { across: number; along: number }) =>
    `Up to ${length(step)} between the two is only the reading. When near left to far right is the longer, move ${corners} to the left; when near right to far left is the longer, to the right: ${lean(size)} between them.`;

  const whole = job.system === 'inch' ? MM_PER_INCH : 10;
  const large = rightTriangle(work.across, work.along, whole);
  const triangle = large.slant > 0 ? large : rightTriangle(work.across, work.along, step);
  const checks: SquareCheck[] = [];
  if (triangle.slant > 0) {
    checks.push(
      check(
        `3-4-5 at the near left corner of the work: ${tape(triangle.across)} along the near edge, ${tape(triangle.along)} up the left edge, this much between the two points`,
        triangle.slant,
        `Too long: move the far end of the left edge to the right, ${rate(strayFor(notable, triangle, work.along))}; too short: to the left, as much. Then try the near right corner the same way, left and right changed over.`,
      ),
    );
  }
  checks.push(
    check(
      'Work, corner to corner, both diagonals',
      diagonal(work.across, work.along),
      `${whenApart('both far corners', work)} Equal to each other but not to this: pull the width and length marks again.`,
    ),
    check(
      'From each near corner of the work to the mid-run mark on the opposite edge',
      diagonal(work.across, work.along / 2),
      `When the corner diagonals agree and one of these does not, the edge it runs to bows. Too long: move that edge’s mid-run mark towards the axis, ${rate(bowFor(notable, work.across, work.along))}; too short: away from it. Then snap the edge in two halves.`,
    ),
  );
  if (border > 0 || reserve.across > 0 || reserve.along > 0) {
    checks.push(
      check(
        'Field, corner to corner, both diagonals',
        diagonal(field.across, field.along),
        `${whenApart('both far corners of the field', field)} Do it before any paint goes on.`,
      ),
    );
  }
  return checks;
}
