import fc from 'fast-check';
import { expect, test } from 'vitest';
import { scheduleMarks } from '../../src/marks/marks.ts';
import { LONGEST_SPAN, sayBounds, spansOf } from '../../src/marks/spans.ts';
import { makeLayout } from '../support/layout.ts';
import { makeJob, metric } from './job.ts';

const marksAt = (places: number[]) =>
  places.map((at, index) => ({ number: index + 1, true: at, reads: at, for: 'a mark' }));

test('a line of 20 ft with a mark at every foot: three spans of 80 in, by hand', () => {
  // 240 in needs three spans of at most 96 in; the evenest three that end on marks are 84 in or less.
  const spans = spansOf(marksAt(Array.from({ length: 21 }, (_, foot) => foot * 304.8)), LONGEST_SPAN.inch);
  expect(spans.map(({ total }) => Math.round(total / 25.4))).toEqual([84, 84, 72]);
  expect(spans.map(sayBounds)).toEqual([
    'from the datum to mark 8',
    'from mark 8 to mark 15',
    'from mark 15 to mark 21',
  ]);
});

test('8 ft or 2.5 m and less is one reach of the tape, and has no spans', () => {
  expect(spansOf(marksAt([600, 1200, 2438.4]), LONGEST_SPAN.inch)).toEqual([]);
  expect(spansOf(marksAt([600, 1200, 2500]), LONGEST_SPAN.metric)).toEqual([]);
  expect(spansOf(marksAt([600, 1200, 2501]), LONGEST_SPAN.metric)).toHaveLength(2);
});

test('a gap between two marks that is longer than a span stands alone', () => {
  expect(spansOf(marksAt([100, 200, 3200, 3300]), 1000).map(({ from, to, total }) => [from, to, total])).toEqual([
    [0, 2, 200],
    [2, 3, 3000],
    [3, 4, 100],
  ]);
});

test('spans go from mark to mark without a gap, none too long, none too many, and add up to the last reading', () => {
  const gaps = fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 2, maxLength: 60 });
  fc.assert(
    fc.property(gaps, fc.integer({ min: 400, max: 1500 }), (steps, most) => {
      let at = 0;
      const marks = marksAt(steps.map((step) => (at += step)));
      const spans = spansOf(marks, most);
      if (at <= most) {
        expect(spans).toEqual([]);
        return;
      }
      expect(spans.map(({ from }) => from)).toEqual([0, ...spans.slice(0, -1).map(({ to }) => to)]);
      expect(spans.reduce((sum, { total }) => sum + total, 0)).toBe(at);
      expect(Math.max(...spans.map(({ total }) => total))).toBeLessThanOrEqual(most);
      // Two neighbours of the fewest never fit into one span together.
      expect(spans.length).toBeLessThanOrEqual(2 * Math.ceil(at / most));
    }),
  );
});

test('the schedule has them on its long lines, from the readings as they are marked', () => {
  const layout = makeLayout({ repeats: { across: 4, along: 41 }, pitch: { across: 100, along: 100.37 } });
  const { lines } = scheduleMarks(layout, makeJob(metric));
  const axis = lines.find(({ name }) => name === 'axis')!;
  // 41 × 100.37 is 4115.17 mm, read as 4115.
  expect(axis.spans!.reduce((sum, { total }) => sum + total, 0)).toBe(4115);
  expect(lines.find(({ name }) => name === 'across-left')!.spans).toBeUndefined();
});
