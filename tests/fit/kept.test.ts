import { expect, test } from 'vitest';
import { keptDirections } from '../../src/fit/kept.ts';
import type { FitProblem } from '../../src/fit/problem.ts';
import { search } from '../../src/fit/search.ts';
import { tapeOf } from '../../src/fit/tape.ts';
import { randomOf } from '../fuzz/random.ts';
import { cases, problemFor } from './programme.ts';
import { axisOf, edgingOf, inches, problemOf } from './support.ts';

/** Rooms as one types them: each differs from the one before in one number, now and then in what is painted. */
function typed(): FitProblem[] {
  const random = randomOf('letters typed');
  const found: FitProblem[] = [];
  for (const one of cases.slice(0, 6)) {
    let [across, along, from] = [one.across, one.along, one.border[0]];
    for (let n = 0; n < 12; n++) {
      if (random.chance(0.4)) across += random.below(5) - 2;
      else if (random.chance(0.7)) along += random.below(5) - 2;
      else from = Math.max(16, from + random.below(3) - 1);
      const change = random.chance(0.25) ? { sawtooth: 0.8 } : {};
      found.push(problemFor({ ...one, across, along, border: [from, one.border[1], one.border[2]], ...change }));
    }
  }
  const only = (mm: number) => ({ from: mm, to: mm });
  // The same numbers of the room with another tape, another landing and something slack.
  const across = axisOf({ datum: 'middle', overall: only(inches(36)), halves: { from: 8, to: 12 } });
  for (const tape of [tapeOf('inch', inches(1 / 16)), tapeOf('inch', inches(1 / 8)), tapeOf('metric', 1)])
    for (const length of [91, 91.25])
      for (const mayDiffer of [true, false])
        for (const edging of [edgingOf('plain'), edgingOf(0.7)]) {
          const along = axisOf({
            datum: 'end',
            overall: only(inches(length)),
            endGap: { from: 0, to: inches(1) },
            mayDiffer,
          });
          const border = { from: inches(2), to: inches(3), wish: inches(2.5) };
          found.push(problemOf({ tape, across, along, border, edging, stretch: { from: 0.95, to: 1.05 } }));
          found.push(problemOf({ tape, across, along, border, edging, stretch: only(1) }));
        }
  return found;
}

test('a fit finds the same whatever was fitted before it, in any order', () => {
  const problems = typed();
  const afresh = problems.map((problem) => search(problem, 10));
  expect(afresh.filter((list) => list.length > 3).length).toBeGreaterThan(problems.length / 2);
  const random = randomOf('order');
  for (let round = 0; round < 2; round++) {
    const order = problems.map((_, at) => at);
    if (round === 1) order.sort(() => random.number() - 0.5);
    for (const at of order)
      expect(search(problems[at]!, 10, keptDirections(problems[at]!)), `${round} ${at}`).toEqual(afresh[at]);
  }
});
