import type { Job } from '../../job/job.ts';
import { writeLength, writeTape } from '../../units/index.ts';
import { escapeText } from '../svg.ts';

/** `6 3/8"` with its fraction set as one; the text stays as typed, so that it can be searched and read aloud. */
export const setFractions = (text: string): string =>
  escapeText(text)
    .replace(/(\d)&quot;/g, '$1″')
    .replace(/(\d)&#39;/g, '$1′')
    .replace(/(^|[^\d/])(\d+\/\d+″?)(?![\d/])/g, '$1<span class="f">$2</span>');

/** The ways of writing a length in this job. */
export interface Readings {
  /** As a person says it. */
  length(mm: number): string;
  /** As the tape shows it. */
  tape(mm: number): string;
  /** A place along a line, from where the line begins: `3 3/8" before it` where the tape would have to read less than nothing. */
  place(mm: number): string;
}

const writingOf = (set: (text: string) => string, { units, step }: Pick<Job, 'units' | 'step'>): Readings => ({
  length: (mm) => set(writeLength(mm, units, step)),
  tape: (mm) => set(writeTape(mm, units, step)),
  place(mm) {
    const reads = writeTape(mm, units, step);
    return reads.startsWith('-') ? `${set(reads.slice(1))} before it` : set(reads);
  },
});

/** As HTML. */
export const readingsOf = (job: Pick<Job, 'units' | 'step'>): Readings =>
  writingOf((text) => `<span class="n">${setFractions(text)}</span>`, job);

/** As text that no line ends within. */
export const plainReadings = (job: Pick<Job, 'units' | 'step'>): Readings =>
  writingOf((text) => text.replaceAll(' ', '\u00a0'), job);
