import type { Stop } from './walk.ts';

/** What stands on the floor: for each stop what was made there, in the order it was done. */
export type Ticks = readonly (readonly [id: string, made: number])[];

/** A check that is off; one that is right is as good as ticked. */
const OFF = -1;

/** What a stop counts as made by: a mark by its reading, so that one that is moved has to be made again. */
function madeBy(stop: Stop): number {
  if (stop.kind === 'mark') return stop.mark.reads;
  return stop.kind === 'line' ? (stop.line.refits ?? 0) : 1;
}

const madeOf = (ticks: Ticks, id: string): number | undefined => ticks.find(([one]) => one === id)?.[1];

export const isMade = (ticks: Ticks, stop: Stop): boolean => {
  const made = madeOf(ticks, stop.id);
  return made !== undefined && Math.abs(made - madeBy(stop)) < 1e-6;
};

export const isOff = (ticks: Ticks, stop: Stop): boolean => madeOf(ticks, stop.id) === OFF;

export const untick = (ticks: Ticks, ids: readonly string[]): Ticks => ticks.filter(([id]) => !ids.includes(id));

export const tick = (ticks: Ticks, stop: Stop): Ticks => [...untick(ticks, [stop.id]), [stop.id, madeBy(stop)]];

/** Says of a check that it is off, still to be put right. */
export const tickOff = (ticks: Ticks, stop: Stop): Ticks => [...untick(ticks, [stop.id]), [stop.id, OFF]];

/** Where to go on after a stop: the next that is not made, then any that was passed over; nothing once all are made. */
export function nextOpen(walk: readonly Stop[], ticks: Ticks, after: string): Stop | undefined {
  const at = walk.findIndex(({ id }) => id === after);
  const isOpen = (stop: Stop) => !isMade(ticks, stop) && !isOff(ticks, stop);
  return walk.slice(at + 1).find(isOpen) ?? walk.slice(0, at + 1).find(isOpen);
}

export interface Counts {
  made: number;
  of: number;
  checksRight: number;
  checksOff: number;
  checks: number;
}

/** How far the work has come, in marks and in checks. */
export function countsOf(walk: readonly Stop[], ticks: Ticks): Counts {
  const marks = walk.filter(({ kind }) => kind === 'mark');
  const checks = walk.filter(({ kind }) => kind === 'check');
  return {
    made: marks.filter((stop) => isMade(ticks, stop)).length,
    of: marks.length,
    checksRight: checks.filter((stop) => isMade(ticks, stop)).length,
    checksOff: checks.filter((stop) => isOff(ticks, stop)).length,
    checks: checks.length,
  };
}
