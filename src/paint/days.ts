import type { Job } from '../job/job.ts';
import type { Paint } from './plan.ts';

/** One thing done, on one day. Hours. */
export interface Stint {
  day: number;
  what: string;
  hours: number;
  /** How often a sheet is laid. */
  sheets?: number;
}

export interface Days {
  stints: Stint[];
  /** The day on which light feet, furniture and rugs may come, counted like those of the stints. */
  walk: number;
  furniture: number;
  rugs: number;
  recoat: number;
  placement: number;
  /** Worked on one day at most. */
  working: number;
}

/** What there is to do for the pattern in each colour: sheets laid for one coat, and tape, mm. */
export interface PatternWork {
  placements: ReadonlyMap<string, number>;
  tape: ReadonlyMap<string, number>;
}

/* Common practice, no source; the label always wins. */
const RECOAT = { 'water-based': 16, oil: 24 };
const BETWEEN_COLOURS = 1;
const PLACEMENT = 4 / 60;
const DAY = 6;
const WALK = 24;
const FURNITURE = 7 * 24;
const RUGS = 30 * 24;
/** Rolled with its edges in an hour, mm²; taped in an hour, mm; painted between tape in an hour, mm². */
const ROLLED = 15e6;
const TAPED = 20_000;
const BETWEEN_TAPE = 5e6;
/** Ready to work from: something is always fetched, stirred and washed out. */
const SETTING_UP = 0.5;

/** Every coat in its order, as early as waits and working hours let it be. */
export function planDays(paints: readonly Paint[], job: Job, { placements, tape }: PatternWork): Days {
  const time = job.paint?.time ?? {};
  const recoat = time.recoat ?? RECOAT[job.underfoot?.paint ?? 'oil'];
  const placement = time.placement ?? PLACEMENT;
  const day = Math.min(time.day ?? DAY, 24);
  const stints: Stint[] = [];
  let clock = 0;
  const work = (what: string, hours: number, sheets = 0): void => {
    let [left, laid] = [hours, 0];
    while (left > 1e-9) {
      const into = clock % 24;
      // What is begun with little of the day left is begun the day after; and what is rolled or brushed in one go is not left half done, where a day is enough.
      if (day - into < Math.min(left, sheets > 0 ? 0.5 : day) - 1e-9) {
        clock = (Math.floor(clock / 24) + 1) * 24;
        continue;
      }
      const now = Math.min(left, day - into);
      left -= now;
      const done = left > 1e-9 ? Math.round((sheets * (hours - left)) / hours) : sheets;
      stints.push({
        day: Math.floor(clock / 24) + 1,
        what,
        hours: now,
        ...(sheets > 0 ? { sheets: done - laid } : {}),
      });
      laid = done;
      clock += now;
    }
  };
  const coatName = (name: string, at: number, coats: number) =>
    coats === 1 ? name : `${name}, coat ${at + 1} of ${coats}`;
  const covering = (one: Paint | undefined, name: string): void => {
    for (const use of one?.uses ?? []) {
      if (use.on !== 'ground') continue;
      for (let at = 0; at < use.coats; at++) {
        work(coatName(name, at, use.coats), SETTING_UP + use.area / ROLLED);
        clock += recoat;
      }
    }
  };
  covering(
    paints.find(({ kind }) => kind === 'primer'),
    'primer',
  );
  covering(
    paints.find(({ kind, uses }) => kind === 'colour' && uses[0]?.on === 'ground'),
    `ground in ${job.colours.ground}`,
  );
  const betweenColours = job.underfoot?.paint === 'water-based' ? Math.min(BETWEEN_COLOURS, recoat) : recoat;
  for (const one of paints) {
    for (const use of one.uses) {
      if (use.on !== 'pattern') continue;
      const sheets = placements.get(one.name) ?? 0;
      const tapeTime = (tape.get(one.name) ?? 0) / TAPED;
      for (let at = 0; at < use.coats; at++) {
        const between = tapeTime > 0 && sheets === 0 ? use.area / BETWEEN_TAPE : 0;
        work(
          coatName(`pattern in ${one.name}`, at, use.coats),
          SETTING_UP + sheets * placement + between + (at === 0 ? tapeTime : 0),
          sheets,
        );
        clock += at < use.coats - 1 ? recoat : betweenColours;
      }
    }
  }
  const clear = paints.find(({ kind }) => kind === 'clear');
  if (clear) clock += Math.max(0, recoat - betweenColours);
  covering(clear, 'clear coat');
  // The last wait was for a coat that does not come.
  const end = clock - (clear ? recoat : betweenColours);
  const dayOf = (hours: number): number => Math.floor((end + hours) / 24) + 1;
  return {
    stints,
    walk: dayOf(time.walk ?? WALK),
    furniture: dayOf(Math.max(FURNITURE, time.walk ?? 0)),
    rugs: dayOf(Math.max(RUGS, time.walk ?? 0)),
    recoat,
    placement,
    working: day,
  };
}
