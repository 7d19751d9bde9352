import { fail, good, type Result } from '../issue.ts';
import type { Refit } from './refit.ts';
import type { Rows } from './rows.ts';

/** One re-fit of a floor as the log keeps it. Lengths in mm. */
export interface Entry {
  number: number;
  row: number;
  left: number;
  right: number;
  /** Where the row should have ended by the layout. */
  should: number;
  over: number;
  until: number;
  change: { left: number; right: number };
  limit: number;
  shows: boolean;
}

export interface Log {
  /** Where the rows of the layout end, mm: by these a log knows its floor. */
  ends: number[];
  refits: Entry[];
}

const rounded = (value: number): number => Math.round(value * 1e9) / 1e9 + 0;

export function entryOf(number: number, refit: Refit): Entry {
  const { row, left, right, should, over, until, change, limit, shows } = refit;
  return { number, row, left, right, should, over, until, change, limit, shows };
}

export const emptyLog = ({ ends }: Rows): Log => ({ ends, refits: [] });

/** JSON text; the oldest first. */
export const writeLog = ({ ends, refits }: Log): string =>
  `${JSON.stringify({ evenfield: 1, refits, ends }, (_, value) => (typeof value === 'number' ? rounded(value) : value), 2)}\n`;

const NUMBERS = ['number', 'row', 'left', 'right', 'should', 'over', 'until', 'limit'] as const;

function isEntry(value: unknown): value is Entry {
  const entry = value as Partial<Entry> | null;
  if (typeof entry !== 'object' || entry === null || typeof entry.shows !== 'boolean') return false;
  const change = entry.change as Partial<Entry['change']> | undefined;
  return [...NUMBERS.map((name) => entry[name]), change?.left, change?.right].every(Number.isFinite);
}

/**
 * Reads a log back. Issues: `refit/log` (not a log), `refit/other-floor` (the rows of another layout).
 * @param name of the file, for what is said
 */
export function readLog(text: string, rows: Rows, name: string): Result<Log> {
  let read: { ends?: unknown; refits?: unknown };
  try {
    read = JSON.parse(text) ?? {};
  } catch {
    read = {};
  }
  const { ends, refits } = read;
  const hint = 'move it away together with the refit files beside it, and a new history begins';
  if (!Array.isArray(ends) || !ends.every(Number.isFinite) || !Array.isArray(refits) || !refits.every(isEntry))
    return fail('refit/log', [], `${name} is not a history of re-fits that can be read`, hint);
  const same = ends.length === rows.ends.length && rows.ends.every((end, at) => Math.abs(end - ends[at]) < 1e-4);
  if (!same) return fail('refit/other-floor', [], `${name} is the history of another layout`, hint);
  return good({ ends, refits });
}
