import { describe, expect, test } from 'vitest';
import { buildLayout } from '../../src/fit/build.ts';
import type { FitProblem } from '../../src/fit/problem.ts';
import { search } from '../../src/fit/search.ts';
import { axisOf, edgingOf, inches, problemOf } from './support.ts';

const only = (mm: number) => ({ from: mm, to: mm });
const layouts = (problem: FitProblem, most = 10) =>
  search(problem, most).map((one, at) => buildLayout(problem, one, at + 1));
const inInches = (mm: number) => mm / 25.4;

/** Only the length matters in these cases: a field across of whole pitches, and any repeats. */
const across = (pitch: number) => axisOf({ datum: 'middle', field: only(inches(pitch)), halves: { from: 2, to: 2 } });

describe('even borders and balanced cuts as published', () => {
  // fcimag.com, article 95138: a 24 in tile would leave a sliver of 1 1/2 in; one tile less, and (24 + 1 1/2) / 2 = 12 3/4 in at each side.
  test('24 in repeats with 1 1/2 in over: 12 3/4 in at each end', () => {
    const problem = problemOf({
      across: across(24),
      along: axisOf({
        datum: 'end',
        overall: only(inches(24 * 6 + 1.5)),
        endGap: { from: inches(12), to: inches(24) },
        mayDiffer: true,
      }),
      stretch: only(1),
      border: only(0),
      edging: edgingOf('none'),
    });
    const [best] = layouts(problem, 1);
    expect(best!.repeats.along).toBe(5);
    expect(inInches(best!.endGap)).toBeCloseTo(12.75, 6);
    expect(inInches(best!.gaps.near)).toBeCloseTo(12.75, 6);
    expect(inInches(best!.gaps.far)).toBeCloseTo(12.75, 6);
  });

  // floortrendsmag.com, article 111279: 1 3/4 + 1 1/4 + 11 3/4 = 14 3/4 in, halved: 7 3/8 in at each side.
  test('11 3/4 in repeats with 1 3/4 + 1 1/4 in over: 7 3/8 in at each end', () => {
    const problem = problemOf({
      across: across(11.75),
      along: axisOf({
        datum: 'end',
        overall: only(inches(11.75 * 8 + 1.75 + 1.25)),
        endGap: { from: inches(11.75 / 2), to: inches(11.75) },
      }),
      stretch: only(1),
      border: only(0),
      edging: edgingOf('none'),
    });
    const [best] = layouts(problem, 1);
    expect(best!.repeats.along).toBe(7);
    expect(inInches(best!.endGap)).toBeCloseTo(7.375, 6);
  });

  // Exact division: 151 3/8 in with a border of 6 in leaves 139 3/8 in; 11 repeats of 12.67045 in (+5.59 %), 12 of 11.61458 in (-3.21 %).
  test('wall of 151 3/8 in, border 6 in, repeats of about 12 in', () => {
    const problem = problemOf({
      across: across(12),
      along: axisOf({
        datum: 'end',
        overall: only(inches(151.375)),
        pitch: { from: inches(11), to: inches(13), wish: inches(12) },
      }),
      stretch: { from: 0.9, to: 1.1 },
      border: only(inches(6)),
    });
    const whole = layouts(problem).filter((one) => one.landing.near === 'whole' && one.landing.left === 'whole');
    expect(whole.map((one) => one.repeats.along)).toEqual([12, 11]);
    expect(inInches(whole[0]!.pitch.along)).toBeCloseTo(11.61458, 5);
    expect(inInches(whole[1]!.pitch.along)).toBeCloseTo(12.67045, 5);
    expect(whole.map((one) => Number((100 * (one.stretch - 1)).toFixed(2)))).toEqual([-3.21, 5.59]);
  });

  // The same wall with the pitch held at 12 in: the border gives, 11 repeats with 9 11/16 in each side or 12 with 3 11/16 in, exactly.
  test('wall of 151 3/8 in, repeats of exactly 12 in', () => {
    const problem = problemOf({
      across: across(12),
      along: axisOf({ datum: 'end', overall: only(inches(151.375)), pitch: only(inches(12)) }),
      stretch: { from: 0.9, to: 1.1 },
      border: { from: inches(3), to: inches(10) },
    });
    const found = layouts(problem)
      .filter((one) => one.landing.near === 'whole' && one.landing.left === 'whole')
      .map((one) => [one.repeats.along, inInches(one.border), one.marks.along]);
    expect(found).toContainEqual([11, 9.6875, 'exact']);
    expect(found).toContainEqual([12, 3.6875, 'exact']);
    expect(found).toHaveLength(2);
  });
});

describe('squares on point stay square when stretch 1 is demanded', () => {
  const problem = problemOf({
    across: axisOf({ datum: 'middle', field: only(inches(34)), halves: { from: 10, to: 10 } }),
    along: axisOf({ datum: 'end', overall: only(inches(235.375)), endGap: { from: 0, to: inches(6) } }),
    stretch: only(1),
    border: { from: inches(2.5), to: inches(3.5), wish: inches(3) },
  });

  test('both pitches are one, and the ends take up the difference evenly', () => {
    for (const one of layouts(problem)) {
      expect(one.pitch.along).toBeCloseTo(one.pitch.across, 9);
      expect(one.stretch).toBe(1);
      expect(one.gaps.near).toBeCloseTo(one.gaps.far, 6);
      expect(one.overall.along).toBeCloseTo(inches(235.375), 6);
      expect(one.field.along).toBeCloseTo(one.repeats.along * one.pitch.along, 6);
    }
  });

  test('by hand: 6 4/5 in diamonds, border 3 in, 33 of them leave 2 39/80 in at each end', () => {
    const best = layouts({ ...problem, border: only(inches(3)) }, 1)[0]!;
    expect(best.repeats.along).toBe(33);
    expect(inInches(best.endGap)).toBeCloseTo((235.375 - 6 - 33 * 6.8) / 2, 6);
  });
});

describe('odd sixteenths', () => {
  // Parity: a run of an odd count of steps, less twice anything on the tape, stays odd; 12 repeats of whole steps are even.
  test('no exact layout with even gaps: the margins differ by one step, and the layout says so', () => {
    const problem = problemOf({
      across: axisOf({ datum: 'middle', field: only(inches(24)), halves: { from: 8, to: 8 } }),
      along: axisOf({
        datum: 'end',
        overall: only(inches(78 + 1 / 16)),
        halves: { from: 24, to: 24 },
        mayDiffer: true,
      }),
      border: only(inches(3)),
      stretch: { from: 0.99, to: 1.01 },
    });
    const best = layouts(problem, 1)[0]!;
    expect(best.marks.along).toBe('uneven');
    expect(inInches(best.gaps.far - best.gaps.near)).toBeCloseTo(1 / 16, 9);
    expect(inInches(best.pitch.along)).toBeCloseTo(6, 9);
    expect(best.overall.along).toBeCloseTo(
      best.field.along + 2 * (best.border + best.reserve.along) + 2 * best.endGap,
      6,
    );
  });
});
