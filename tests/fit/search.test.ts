import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countCombinations } from '../../src/fit/count.ts';
import type { FitProblem } from '../../src/fit/problem.ts';
import { search } from '../../src/fit/search.ts';
import { tapeOf } from '../../src/fit/tape.ts';
import { waysTable } from '../../src/fit/ways.ts';
import { enumerate } from './plain.ts';
import { axisOf, edgingOf, inches, problemOf } from './support.ts';

const SQUARES = { mirrors: [0.25, 0.75], whole: [0, 0.5], half: [0.25, 0.75] };
const only = (mm: number) => ({ from: mm, to: mm });

/** Small enough to go through one by one. */
const cases: Record<string, FitProblem> = {
  'rug, sawtooth border': problemOf({
    across: axisOf({ datum: 'middle', overall: only(inches(34.5)), halves: { from: 6, to: 12 } }),
    along: axisOf({ datum: 'end', overall: only(inches(61.25)), halves: { from: 10, to: 26 } }),
    border: { from: inches(2.5), to: inches(3), wish: inches(2.75) },
    edging: edgingOf(0.8),
  }),
  'runner, odd sixteenths, gaps': problemOf({
    across: axisOf({ datum: 'middle', field: only(inches(24)), halves: { from: 8, to: 8 } }),
    along: axisOf({
      datum: 'end',
      overall: only(inches(171 + 3 / 16)),
      endGap: { from: 0, to: inches(0.25) },
      mayDiffer: true,
    }),
    border: { from: inches(2), to: inches(3), wish: inches(2.5) },
  }),
  checkerboard: problemOf({
    across: axisOf({
      datum: 'middle',
      overall: { from: inches(29), to: inches(30) },
      halves: { from: 5, to: 11 },
      ways: waysTable(SQUARES),
    }),
    along: axisOf({ datum: 'end', overall: only(inches(47)), halves: { from: 9, to: 21 }, ways: waysTable(SQUARES) }),
    border: { from: inches(2), to: inches(2.25) },
  }),
  'metric, reserves': problemOf({
    tape: tapeOf('metric', 1),
    across: axisOf({
      datum: 'middle',
      overall: only(617),
      reserve: { from: 5, to: 12 },
      pitch: { from: 80, to: 120, wish: 100 },
    }),
    along: axisOf({
      datum: 'end',
      overall: only(913),
      reserve: { from: 5, to: 9 },
      pitch: { from: 80, to: 120, wish: 100 },
    }),
    border: { from: 60, to: 66, wish: 62 },
    edging: edgingOf(1.2),
    stretch: { from: 0.9, to: 1.1 },
  }),
  'one-way border, reversed at the centres': problemOf({
    across: axisOf({ datum: 'middle', overall: only(inches(33.25)), halves: { from: 6, to: 10 } }),
    along: axisOf({ datum: 'end', overall: only(inches(58.75)), halves: { from: 10, to: 20 } }),
    border: { from: inches(2.5), to: inches(3), wish: inches(2.75) },
    edging: edgingOf(0.7, true),
  }),
  'frames of few kinds beside frames of many': problemOf({
    tape: tapeOf('metric', 1),
    across: axisOf({
      datum: 'middle',
      overall: { from: 1218, to: 1320, wish: 1279 },
      pitch: { from: 79, to: 84 },
    }),
    along: axisOf({ datum: 'end', overall: { from: 1241, to: 1342, wish: 1241 } }),
    border: only(131),
    edging: edgingOf(1, true),
    stretch: { from: 1, to: 1.02 },
  }),
  'overall open one way': problemOf({
    across: axisOf({ datum: 'middle', overall: only(inches(30.5)), halves: { from: 6, to: 12 } }),
    along: axisOf({ datum: 'end', overall: { from: inches(44), to: inches(44.5) }, halves: { from: 8, to: 20 } }),
    border: { from: inches(2), to: inches(2.5), wish: inches(2.25) },
    edging: edgingOf(0.8),
    stretch: { from: 0.98, to: 1.02 },
  }),
  'no border, lozenge': problemOf({
    across: axisOf({
      datum: 'middle',
      overall: { from: inches(20), to: inches(22), wish: inches(21) },
      halves: { from: 4, to: 8 },
    }),
    along: axisOf({ datum: 'end', overall: { from: inches(40), to: inches(42) }, halves: { from: 4, to: 12 } }),
    border: only(0),
    edging: edgingOf('none'),
    ratio: Math.sqrt(3),
  }),
};

describe('the search is the plain enumeration, faster', () => {
  test.each(Object.entries(cases))('%s', (_, problem) => {
    const plain = enumerate(problem, 10);
    const found = search(problem, 10);
    expect(found.length).toBeGreaterThan(0);
    expect(found).toEqual(plain.best);
  });

  test.each(Object.entries(cases))('%s: the count is what the enumeration visits', (_, problem) => {
    expect(countCombinations(problem)).toBe(enumerate(problem, 1).visited);
  });

  test.each([20, 21, 22])('on rooms drawn at random, seed %i', (seed) => {
    const sixteenths = (from: number, to: number) =>
      fc.integer({ min: from * 16, max: to * 16 }).map((n) => inches(n / 16));
    fc.assert(
      fc.property(
        sixteenths(18, 40),
        sixteenths(30, 90),
        fc.integer({ min: 32, max: 56 }),
        fc.integer({ min: 0, max: 4 }),
        fc.constantFrom<FitProblem['edging']['ratio']>('none', 'plain', 0.75, 1.3),
        fc.boolean(),
        (across, along, border, spread, borderRatio, squares) => {
          const ways = squares ? { ways: waysTable(SQUARES) } : {};
          const problem = problemOf({
            across: axisOf({ datum: 'middle', overall: only(across), halves: { from: 4, to: 9 }, ...ways }),
            along: axisOf({
              datum: 'end',
              overall: only(along),
              endGap: { from: 0, to: inches(1 / 8) },
              mayDiffer: true,
              ...ways,
            }),
            border:
              borderRatio === 'none'
                ? only(0)
                : { from: inches(border / 16), to: inches((border + spread) / 16), wish: inches(3) },
            edging: edgingOf(borderRatio),
          });
          expect(search(problem, 10)).toEqual(enumerate(problem, 10).best);
        },
      ),
      { numRuns: 25, seed },
    );
  });
});
