import type { Job, Range } from '../../../job/job.ts';
import { isBranch, type Tree } from '../../../job/tree.ts';
import { writeLength } from '../../../units/index.ts';

/** How a limit of the job is written: each end rounded outwards, so that what lies in the range stays in it. */
export interface Scale {
  write(value: number): string;
  /** The finest step it is written in. */
  step: number;
}

/** Of such a range, written to that step: never inwards. */
function outward({ from, to }: Range, step: number): Range {
  return { from: Math.floor(from / step + 1e-6) * step, to: Math.ceil(to / step - 1e-6) * step };
}

/** Lengths as the job writes them. */
export const lengths = ({ units, step }: Job): Scale => ({ write: (mm) => writeLength(mm, units, step), step });

/** Plain numbers, such as stretch and counts. */
export const numbers = (step: number): Scale => ({
  write: (value) => String(Math.round(value * 1000) / 1000),
  step,
});

/** `2 1/2" to 4"`, or one value. */
export function writeRange(range: Range, { write, step }: Scale): string {
  const { from, to } = outward(range, step);
  const ends = [write(from), write(to)];
  return ends[0] === ends[1] ? ends[0]! : `${ends[0]} to ${ends[1]}`;
}

/** The range, with a wish that was typed kept as it was typed where it still lies inside. */
export function rangeTree(range: Range, scale: Scale, said: Tree | undefined): Tree {
  const wish = isBranch(said) ? said.wish : undefined;
  if (typeof wish !== 'string') return writeRange(range, scale);
  const { from, to } = outward(range, scale.step);
  return { from: scale.write(from), to: scale.write(to), wish };
}

/** The range with its nearer end moved just so far that it holds the value. */
export const reaching = ({ from, to }: Range, value: number): Range => ({
  from: Math.min(from, value),
  to: Math.max(to, value),
});
