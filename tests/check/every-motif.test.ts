import { describe, expect, test } from 'vitest';
import { fieldJob, motifsOf } from './support/every.ts';
import { failing, make } from './support/make.ts';

const named = (kind: Parameters<typeof motifsOf>[0]) => motifsOf(kind).map((motif) => [motif.name, motif] as const);

async function expectHolds(job: string): Promise<void> {
  const made = await make(job);
  expect(made.refused).toBeUndefined();
  expect(await failing(made)).toEqual([]);
}

describe('every claim holds of a small work', () => {
  test.each(named('field'))('with a field of %s', (_, motif) => expectHolds(fieldJob(motif, { across: 2, along: 3 })));

  // Where the motif may be met elsewhere, by halves: a landing that not every motif has.
  const halved = named('field').filter(
    ([, { lines }]) => lines.across.half.length > 0 && lines.along.half.length > 0 && lines.across.whole.length > 0,
  );
  test.each(halved)('with %s cut in half at its edges', (_, motif) =>
    expectHolds(fieldJob(motif, { across: 2, along: 2 }, [], ', landing: half')),
  );

  const [field] = motifsOf('field').filter(({ name }) => name === 'diamond');
  test.each(named('medallion'))('with %s in the middle of the field', (name) =>
    expectHolds(fieldJob(field!, { across: 3, along: 3 }, [`medallion: { motif: ${name}, repeats: 1 }`])),
  );

  const hosts = named('field').filter(([, { rooms }]) => rooms);
  // A fan stands one way up; its own symmetry is less than that of any room.
  test.each(hosts)('with a fan inside every %s', (_, motif) =>
    expectHolds(fieldJob(motif, { across: 2, along: 3 }, [], ', inset: fan')),
  );
});
