import { MM_PER_INCH, readingDoubt, type System, tapeTolerance, type Unit, writeLength } from '../units/index.ts';

/** What is said of the tape on a job: over its longest mark, the tape's own tolerance, and the most a careful reading may be out. Lengths in mm. */
export interface TapeNote {
  system: System;
  over: number;
  tolerance: number;
  doubt: number;
}

export const tapeNote = (over: number, step: number, system: System): TapeNote => ({
  system,
  over,
  tolerance: tapeTolerance(over, system),
  doubt: readingDoubt(over, step, system),
});

/** Fine enough for every tolerance and half a step of any tape, mm. */
const FINE: Record<System, number> = { inch: MM_PER_INCH / 64, metric: 0.05 };

/** The tape's own tolerance in a sentence, with where it is published. */
export function sayTape({ system, over, tolerance, doubt }: TapeNote, units: Unit, step: number): string {
  const fine = (mm: number) => writeLength(mm, units, FINE[system]);
  const far = writeLength(over, units, step);
  const kind =
    system === 'inch'
      ? `A tape in good order may itself be off by ${fine(tolerance)} over ${far} (NIST Handbook 44)`
      : `A class II tape may itself be off by ${fine(tolerance)} over ${far}, its hook included (UK SI 2016/1153, after the EU rule)`;
  return `${kind}; with half a mark of reading, ${fine(doubt)}. Use the same tape for everything.`;
}
