import { lineWords } from '../../marks/line-words.ts';
import { writeTape } from '../../units/index.ts';
import { look } from '../state/answer.ts';
import type { FloorLine, Stop } from './walk.ts';

/** A guide line as one says it. */
export const spoken = (line: Pick<FloorLine, 'name'>): string => lineWords(line.name);

/** A length as the tape of this job shows it; no line ends within it. */
export function tape(mm: number): string {
  const { job, schedule } = look.value!;
  return writeTape(mm, job.units, schedule.step).replaceAll(' ', '\u00a0');
}

/** What is done at a stop, as one reads it in passing. */
export function sayStop(stop: Stop): string {
  switch (stop.kind) {
    case 'line':
      return `hold the tape at ${stop.line.datum}`;
    case 'mark':
      return `${tape(stop.mark.reads)}, ${stop.mark.for}`;
    case 'task':
      return stop.title.charAt(0).toLowerCase() + stop.title.slice(1);
    case 'check':
      return `is it square? ${tape(stop.check.reads)}`;
  }
}
