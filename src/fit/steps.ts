import type { Range } from '../job/job.ts';

/**
 * Every value of a range that a tape shows, in mm, ascending. A range of one value is that value, on a step or not:
 * a measured length is what it is.
 */
export function onTape(range: Range, step: number): number[] {
  if (range.to - range.from < 1e-9) return [range.from];
  const first = Math.ceil(range.from / step - 1e-6);
  const last = Math.floor(range.to / step + 1e-6);
  const values: number[] = [];
  for (let n = first; n <= last; n++) values.push(n * step + 0);
  return values;
}

/** True when a tape with this step shows the length, to a millionth of a step. */
export function isOnTape(mm: number, step: number): boolean {
  const steps = mm / step;
  return Math.abs(steps - Math.round(steps)) < 1e-6;
}
