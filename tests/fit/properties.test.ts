import fc from 'fast-check';
import { expect, test } from 'vitest';
import { buildLayout } from '../../src/fit/build.ts';
import type { AxisProblem, FitProblem } from '../../src/fit/problem.ts';
import { search } from '../../src/fit/search.ts';
import { axisOf, edgingOf, inches, problemOf } from './support.ts';

const only = (mm: number) => ({ from: mm, to: mm });
const sixteenths = (from: number, to: number) =>
  fc.integer({ min: from * 16, max: to * 16 }).map((n) => inches(n / 16));

const problems = fc
  .record({
    across: sixteenths(20, 60),
    along: sixteenths(40, 300),
    count: fc.integer({ min: 2, max: 8 }),
    gap: fc.integer({ min: 0, max: 8 }),
    border: fc.integer({ min: 24, max: 48 }),
    reserve: fc.integer({ min: 0, max: 2 }),
    sawtooth: fc.boolean(),
    square: fc.boolean(),
  })
  .map((one) =>
    problemOf({
      across: axisOf({
        datum: 'middle',
        overall: only(one.across),
        halves: { from: 2 * one.count, to: 2 * one.count + 4 },
        reserve: { from: 0, to: inches(one.reserve / 16) },
      }),
      along: axisOf({
        datum: 'end',
        overall: only(one.along),
        endGap: { from: 0, to: inches(one.gap / 4) },
        mayDiffer: true,
      }),
      border: { from: inches(one.border / 16), to: inches((one.border + 8) / 16), wish: inches(one.border / 16) },
      edging: edgingOf(one.sawtooth ? 0.8 : 'plain'),
      stretch: one.square ? only(1) : { from: 0.95, to: 1.05 },
    }),
  );

const layoutsOf = (problem: FitProblem) => search(problem, 10).map((one, at) => buildLayout(problem, one, at + 1));

test('every layout adds up, to a millionth of a millimetre, and lies within its limits', () => {
  let seen = 0;
  fc.assert(
    fc.property(problems, (problem) => {
      for (const one of layoutsOf(problem)) {
        seen++;
        expect(Math.abs(one.field.across - one.repeats.across * one.pitch.across)).toBeLessThan(1e-6);
        expect(Math.abs(one.field.along - one.repeats.along * one.pitch.along)).toBeLessThan(1e-6);
        expect(Math.abs(one.overall.across - one.field.across - 2 * (one.border + one.reserve.across))).toBeLessThan(
          1e-6,
        );
        expect(
          Math.abs(one.overall.along - one.field.along - 2 * (one.border + one.reserve.along) - 2 * one.endGap),
        ).toBeLessThan(1.5e-6);
        expect(Math.abs(one.stretch - one.pitch.along / one.pitch.across / problem.ratio)).toBeLessThan(1e-9);
        expect(one.stretch).toBeGreaterThan(problem.stretch.from - 1e-9);
        expect(one.stretch).toBeLessThan(problem.stretch.to + 1e-9);
        expect(one.border).toBeGreaterThanOrEqual(problem.border.from - 1e-9);
        expect(one.border).toBeLessThanOrEqual(problem.border.to + 1e-9);
        expect(one.gaps.near + one.gaps.far).toBeCloseTo(2 * one.endGap, 6);
        expect(one.landing.left).toBe(one.landing.right);
        expect(one.landing.near).toBe(one.landing.far);
        expect(Number.isInteger(2 * one.repeats.across) && Number.isInteger(2 * one.repeats.along)).toBe(true);
      }
    }),
    { numRuns: 60, seed: 7 },
  );
  expect(seen).toBeGreaterThan(100);
});

test('blind to scale: the same room measured in another unit has the same layouts', () => {
  const scaled = (problem: FitProblem, k: number): FitProblem => {
    const range = <R extends { from: number; to: number; wish?: number }>(one: R): R => ({
      ...one,
      from: one.from * k,
      to: one.to * k,
      ...(one.wish === undefined ? {} : { wish: one.wish * k }),
    });
    const axis = (one: AxisProblem): AxisProblem => ({
      ...one,
      endGap: range(one.endGap),
      reserve: range(one.reserve),
      pitch: range(one.pitch),
      ...(one.overall ? { overall: range(one.overall) } : {}),
    });
    const { tape } = problem;
    return {
      ...problem,
      tape: { ...tape, step: tape.step * k, unit: tape.unit * k, coarse: tape.coarse * k },
      across: axis(problem.across),
      along: axis(problem.along),
      border: range(problem.border),
    };
  };
  fc.assert(
    fc.property(problems, fc.constantFrom(0.5, 2, 4, 1000 / 25.4), (problem, k) => {
      const shape = (one: FitProblem, by: number) =>
        layoutsOf(one).map((layout) => [
          layout.repeats,
          layout.landing,
          layout.cost.toFixed(6),
          (layout.border / by).toFixed(6),
        ]);
      expect(shape(scaled(problem, k), k)).toEqual(shape(problem, 1));
    }),
    { numRuns: 30, seed: 11 },
  );
});

test('symmetric: a square room turned round has the same layouts, turned round', () => {
  fc.assert(
    fc.property(sixteenths(30, 60), sixteenths(30, 60), fc.integer({ min: 3, max: 6 }), (a, b, count) => {
      // Both directions measured from the middle: from the end, other marks fall on the tape.
      const halves = { from: 2 * count, to: 2 * count + 4 };
      const axis = (size: number) => axisOf({ datum: 'middle', overall: only(size), halves });
      const make = (x: number, y: number, stretch: { from: number; to: number }) =>
        problemOf({
          across: axis(x),
          along: axis(y),
          border: { from: inches(2), to: inches(3), wish: inches(2.5) },
          edging: edgingOf(0.8),
          stretch,
        });
      const one = layoutsOf(make(a, b, { from: 0.8, to: 1.25 }));
      const other = layoutsOf(make(b, a, { from: 0.8, to: 1.25 }));
      expect(other.map((layout) => layout.cost.toFixed(9))).toEqual(one.map((layout) => layout.cost.toFixed(9)));
      if (one[0] && one[1] && one[1].cost - one[0].cost > 1e-6) {
        expect(other[0]!.repeats).toEqual({ across: one[0].repeats.along, along: one[0].repeats.across });
        expect(other[0]!.border).toBeCloseTo(one[0].border, 9);
      }
    }),
    { numRuns: 30, seed: 3 },
  );
});
