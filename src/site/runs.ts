import type { Runs } from '../job/job.ts';
import { readingDoubt, writeLength } from '../units/index.ts';
import type { Tape } from './corners.ts';

/** A run with square ends that fits between the thresholds: the least of the three readings, mm. */
export const leastRun = ({ left, centre, right }: Runs): number => Math.min(left, centre, right);

/** How the thresholds lie to each other, from the run at left, centre and right. */
export function sayRuns(runs: Runs, { units, step, system }: Tape): string[] {
  const write = (mm: number): string => writeLength(mm, units, step);
  const { left, centre, right } = runs;
  const least = leastRun(runs);
  const longest = Math.max(left, centre, right);
  if (longest - least < step / 2) return [];
  const said = [
    `The run is ${write(left)} at the left, ${write(centre)} at the centre and ${write(right)} at the right. The work has square ends, so it takes the least, ${write(least)}; up to ${write(longest - least)} of plain floor is left at a threshold.`,
  ];
  const bow = centre - (left + right) / 2;
  if (Math.abs(bow) > 2 * readingDoubt(longest, step, system))
    said.push(
      `The centre is ${write(Math.abs(bow))} ${bow > 0 ? 'longer' : 'shorter'} than midway between left and right: a threshold is bowed, or one of the three is misread. Measure them again.`,
    );
  return said;
}
