import type { JobTree } from '../engine/ask.ts';

/** One state of the work. Never changed, only followed by another. */
export interface Step {
  /** The text of the job file that the job began as; its notes are kept. */
  base: string;
  /** What that file is called; `''` where there was none. */
  file: string;
  tree: JobTree;
  /** Which layout is chosen, counted from 0. */
  chosen: number;
  /** The field that was typed in to come here, so that letters typed one after the other are one step. */
  by: string;
  /** What was changed to come here, in words that stand after `Undo:`. */
  did: string;
}

/** Everything that was done, and where we are in it, counted from 0. */
export interface Line {
  steps: readonly Step[];
  at: number;
}

/** Nothing was done yet. */
export const NOTHING: Step = { base: '', file: '', tree: {}, chosen: 0, by: '', did: '' };

const isNothing = ({ steps }: Line): boolean => steps.length === 1 && steps[0] === NOTHING;

/**
 * The line with one step more after where we are; what had been undone is left behind. A step by the field that is still being typed in takes the
 * place of the one before it.
 * @param typing the field that is being typed in, or `''`
 */
export function followed(line: Line, step: Step, typing = ''): Line {
  if (isNothing(line)) return { steps: [step], at: 0 };
  const before = line.steps.slice(0, line.at + 1);
  const goesOn = step.by !== '' && step.by === typing && before.length > 1 && before.at(-1)!.by === step.by;
  const steps = [...(goesOn ? before.slice(0, -1) : before), step];
  return { steps, at: steps.length - 1 };
}
