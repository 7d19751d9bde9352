import type { Job } from '../../job/job.ts';
import { writeLength, writeTape } from '../../units/index.ts';
import { escapeText } from '../svg.ts';

/** `6 3/8"` with its fraction set as one; the text stays as typed, so that it can be searched and read aloud. */
export const setFractions = (text: string): string =>
  escapeText(text)
    .replaceAll('&quot;', '″')
    .replaceAll('&#39;', '′')
    .replace(/(^|[^\d/])(\d+\/\d+″?)(?![\d/])/g, '$1<span class="f">$2</span>');

/** The two ways of writing a length in this job, as HTML. */
export interface Readings {
  /** As a person says it. */
  length(mm: number): string;
  /** As the tape shows it. */
  tape(mm: number): string;
}

export function readingsOf({ units, step }: Pick<Job, 'units' | 'step'>): Readings {
  const set = (text: string) => `<span class="n">${setFractions(text)}</span>`;
  return { length: (mm) => set(writeLength(mm, units, step)), tape: (mm) => set(writeTape(mm, units, step)) };
}

/** `a`, `a and b`, `a, b and c`. */
export const listed = (items: string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;

/** `1 window`, `12 windows`. */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;
