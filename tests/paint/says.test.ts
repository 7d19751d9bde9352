import { expect, test } from 'vitest';
import type { Job } from '../../src/job/job.ts';
import { planDays } from '../../src/paint/days.ts';
import { planPaint } from '../../src/paint/plan.ts';
import { sayOnHand } from '../../src/paint/says.ts';
import { fromSquareFeet } from '../../src/paint/spreading.ts';
import { ML_PER_FLUID_OUNCE, ML_PER_PINT } from '../../src/units/volume.ts';

/** Black on cream; foam leaves 85 % on the floor, and 1 fl oz a coat is needed for so much area. */
const cover = fromSquareFeet(400);
const ounceACoat = cover * ML_PER_FLUID_OUNCE * 0.85;
const job = (onHand: number, reserve = 0.1) =>
  ({
    colours: { ground: 'cream', field: 'black' },
    underfoot: { paint: 'water-based' },
    paint: { covers: cover, reserve, onHand: { black: onHand }, colours: {}, clear: { coats: 1 }, time: { recoat: 4 } },
  }) as unknown as Job;
const black = (onHand: number, ounces: number) =>
  planPaint(job(onHand), { ground: 1e6, pattern: new Map([['black', ounceACoat * ounces]]) }).find(
    ({ name }) => name === 'black',
  )!;

test.each([
  // Half a pint is 8 fl oz; two coats take twice the ounces of one.
  [2.6, 'Your 1/2 pint of black is enough for two coats with a third left.'],
  [1, 'Your 1/2 pint of black is enough for two coats with three quarters left.'],
  [3.8, 'Your 1/2 pint of black is enough for two coats, but leaves too little for touching up; 1 fl oz more to buy.'],
  [6, 'Your 1/2 pint of black is enough for one coat only; 6 fl oz more to buy.'],
  [9, 'Your 1/2 pint of black is not enough for one coat; 1 1/2 cups more to buy.'],
])('%s fl oz a coat: %s', (ounces, says) => {
  expect(sayOnHand(black(ML_PER_PINT / 2, ounces), 'inch')).toBe(says);
});

test('nothing is said of what is not there', () => expect(sayOnHand(black(0, 1), 'inch')).toBeUndefined());

test('days keep the wait of the label between coats, work 6 hours at most, and lay every sheet for every coat', () => {
  const paints = planPaint(job(0), { ground: 1e6, pattern: new Map([['black', 1e5]]) });
  const { stints, walk } = planDays(paints, job(0), { placements: new Map([['black', 120]]), tape: new Map() });
  const byDay = new Map<number, number>();
  for (const { day, hours } of stints) byDay.set(day, (byDay.get(day) ?? 0) + hours);
  expect(Math.max(...byDay.values())).toBeLessThanOrEqual(6 + 1e-9);
  expect(stints.reduce((sum, { sheets = 0 }) => sum + sheets, 0)).toBe(240);
  expect(stints.slice(0, 2).map(({ day }) => day)).toEqual([1, 1]);
  expect(walk).toBe(stints.at(-1)!.day + 1);
});
