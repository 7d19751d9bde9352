import type { Refitted } from '../engine/refit.ts';
import type { Ticks } from './ticks.ts';

/** What was typed for a re-fit that is not taken yet. */
export interface Draft {
  row: number;
  left: string;
  right: string;
}

/** How far someone has come with the marks of one job. */
export interface Progress {
  title: string;
  ticks: Ticks;
  /** The stop that is shown; nothing at the start. */
  at?: string;
  refits: Refitted[];
  draft?: Draft;
}

/** Where things outlive the page: what of the browser's own store is needed. */
export type Shelf = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

export interface Recent {
  name: string;
  title: string;
  made: number;
}

const LIST = 'evenfield-floor';
const KEY = 'evenfield-floor:';
/** So many jobs are kept, those that were worked on last. */
const MOST = 12;

export const begun = (title: string): Progress => ({ title, ticks: [], refits: [] });

function read(shelf: Shelf, key: string): unknown {
  try {
    return JSON.parse(shelf.getItem(key) ?? 'null');
  } catch {
    return null;
  }
}

const isTick = (one: unknown): one is [string, number] =>
  Array.isArray(one) && typeof one[0] === 'string' && Number.isFinite(one[1]);

const isRefit = (one: unknown): one is Refitted => {
  const { entry, lines, says } = (one ?? {}) as Partial<Refitted>;
  const isMark = (mark: unknown) => Number.isFinite((mark as { reads?: number } | null)?.reads);
  return (
    Number.isInteger(entry?.number) &&
    Array.isArray(says) &&
    Array.isArray(lines) &&
    lines.every((line) => typeof line?.name === 'string' && Array.isArray(line.marks) && line.marks.every(isMark))
  );
};

/** What is kept for a job by the name of its numbers; nothing where there is none that can be read. */
export function readProgress(shelf: Shelf, name: string): Progress | undefined {
  const { title, ticks, at, refits, draft } = (read(shelf, KEY + name) ?? {}) as Partial<Progress>;
  if (typeof title !== 'string' || !Array.isArray(ticks) || !ticks.every(isTick)) return undefined;
  const kept: Progress = { title, ticks, refits: Array.isArray(refits) && refits.every(isRefit) ? refits : [] };
  if (typeof at === 'string') kept.at = at;
  if (draft && Number.isInteger(draft.row))
    kept.draft = { row: draft.row, left: `${draft.left}`, right: `${draft.right}` };
  return kept;
}

/** The jobs that were worked on, the last one first. */
export function readRecent(shelf: Shelf): Recent[] {
  const list = read(shelf, LIST);
  return Array.isArray(list)
    ? list.filter((one) => typeof one?.name === 'string' && typeof one.title === 'string')
    : [];
}

/** Keeps the progress of a job; those that were not touched for longest make room. Throws what the store throws. */
export function writeProgress(shelf: Shelf, name: string, progress: Progress): void {
  const rest = readRecent(shelf).filter((one) => one.name !== name);
  for (const old of rest.slice(MOST - 1)) shelf.removeItem(KEY + old.name);
  shelf.setItem(KEY + name, JSON.stringify(progress));
  const first: Recent = { name, title: progress.title, made: progress.ticks.length };
  shelf.setItem(LIST, JSON.stringify([first, ...rest.slice(0, MOST - 1)]));
}

/** What to tell someone who comes to the floor with other numbers than the last time; nothing where they are the same, or nothing was ticked. */
export function tellChanged(recent: readonly Recent[], name: string, title: string): string | undefined {
  const [last] = recent;
  if (!last || last.name === name || last.title !== title || last.made === 0) return undefined;
  const ticks = last.made === 1 ? 'The tick' : `The ${last.made} ticks`;
  const back = recent.some((one) => one.name === name)
    ? 'These are numbers that you have marked by once before, with the ticks of that time: look whether those marks are still there.'
    : 'They are kept, and count again if the job goes back to what it was.';
  return `The marks of this job have changed since you were last on the floor. ${ticks} of the marks before ${last.made === 1 ? 'does' : 'do'} not count for these. ${back} Rub out the old marks before you make new ones.`;
}
