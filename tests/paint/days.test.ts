import { expect, test } from 'vitest';
import type { Job } from '../../src/job/job.ts';
import { planDays } from '../../src/paint/days.ts';
import { planPaint } from '../../src/paint/plan.ts';

const job = (paint: 'water-based' | 'oil', recoat: number) =>
  ({
    colours: { ground: 'cream', field: 'black', border: 'rust' },
    underfoot: { paint },
    paint: { covers: 10_000, colours: {}, clear: { coats: 2 }, time: { recoat } },
  }) as unknown as Job;

/** A floor of so many mm², with a little black and rust on it. */
function daysOf(one: Job, ground = 1e6) {
  const pattern = new Map([
    ['black', 1e5],
    ['rust', 1e5],
  ]);
  const placements = new Map([
    ['black', 5],
    ['rust', 5],
  ]);
  return planDays(planPaint(one, { ground, pattern }), one, { placements, tape: new Map() });
}

const dayOf = ({ stints }: ReturnType<typeof daysOf>, what: string): number[] =>
  stints.filter((stint) => stint.what.startsWith(what)).map(({ day }) => day);

// The label's wait goes between two coats of one paint, whatever the paint (common practice, no source: the label).
test.each(['water-based', 'oil'] as const)('two coats of one colour in %s paint keep a wait of 16 hours', (paint) => {
  const days = daysOf(job(paint, 16));
  for (const colour of ['black', 'rust']) {
    const [first, second] = dayOf(days, `pattern in ${colour}`);
    expect(second).toBeGreaterThan(first!);
  }
});

test('a second colour in water-based paint goes on the same day beside the first', () => {
  const days = daysOf(job('water-based', 16));
  expect(dayOf(days, 'pattern in rust')[0]).toBe(dayOf(days, 'pattern in black')[1]);
});

// 15 m² an hour and half an hour to set up, so 50 m² are 3 h 50 min: two of them do not go into the 6 hours of a day, even after a wait of 1 hour.
test('what is rolled is not left half done overnight', () => {
  const days = daysOf(job('water-based', 1), 50e6);
  for (const what of ['ground in cream, coat 1', 'ground in cream, coat 2', 'clear coat, coat 1', 'clear coat, coat 2'])
    expect(dayOf(days, what)).toHaveLength(1);
  expect(dayOf(days, 'ground in cream')).toEqual([1, 2]);
});

test('what takes longer than a day goes on the day after', () => {
  const days = daysOf(job('oil', 24), 150e6);
  expect(dayOf(days, 'ground in cream, coat 1')).toEqual([1, 2]);
});
