import type { RoomDoor } from '../job/job.ts';
import type { DoorRest, Stretch } from './layout.ts';

const HAIR = 1e-6;

/** A door that the border stops at, in places along its wall, mm. */
export type Stop = RoomDoor & { number: number };

const clearOf = (from: number, to: number, { starts, ends }: RoomDoor, clear: number): boolean =>
  to <= starts - clear + HAIR || from >= ends + clear - HAIR;

/** The repeats of a run that keep clear of every door, gathered where they lie side by side. */
export function paintedRepeats(
  run: { from: number; pitch: number; repeats: number },
  doors: readonly Stop[],
  clear: number,
): Stretch[] {
  const found: Stretch[] = [];
  for (let n = 0; n < run.repeats; n++) {
    const from = run.from + n * run.pitch;
    if (!doors.every((door) => clearOf(from, from + run.pitch, door, clear))) continue;
    const last = found.at(-1);
    if (last && last.first + last.count === n) last.count++;
    else found.push({ first: n, count: 1 });
  }
  return found;
}

/** Where a band of one piece is painted: all of its run but what lies before a door. */
export function paintedBands(from: number, to: number, doors: readonly Stop[], clear: number): [number, number][] {
  const found: [number, number][] = [];
  let at = from;
  for (const { starts, ends } of doors) {
    if (starts - clear > at + HAIR) found.push([at, Math.min(to, starts - clear)]);
    at = Math.max(at, ends + clear);
  }
  if (to > at + HAIR) found.push([at, to]);
  return found;
}

/** Whether a corner block between two places along a wall keeps clear of its doors. */
export const keepsClear = (from: number, to: number, doors: readonly Stop[], clear: number): boolean =>
  doors.every((door) => clearOf(from, to, door, clear));

/** The plain floor between each casing and the nearest paint on both sides, mm. `painted`: from where to where, corner blocks too. */
export function restsAt(painted: readonly (readonly [number, number])[], doors: readonly Stop[]): DoorRest[] {
  return doors.map(({ number, starts, ends }) => {
    const before = painted.filter(([, to]) => to <= starts + HAIR).map(([, to]) => starts - to);
    const after = painted.filter(([from]) => from >= ends - HAIR).map(([from]) => from - ends);
    return {
      door: number,
      ...(before.length > 0 ? { before: Math.min(...before) } : {}),
      ...(after.length > 0 ? { after: Math.min(...after) } : {}),
    };
  });
}
