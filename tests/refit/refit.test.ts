import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { scheduleMarks } from '../../src/marks/marks.ts';
import { newLines, turnOf } from '../../src/refit/lines.ts';
import { moved, type Refit, refit, UNSEEN } from '../../src/refit/refit.ts';
import { type Rows, rowsOf } from '../../src/refit/rows.ts';
import { writeTape } from '../../src/units/index.ts';
import { makeJob, metric } from '../marks/job.ts';
import { type LayoutWish, makeLayout } from '../support/layout.ts';
import { needMotif } from '../support/motifs.ts';

const IN = 25.4;
const job = makeJob(metric);
const field = needMotif('diamond');

const done = (rows: Rows, row: number, left: number, right = left, over?: number, limit = UNSEEN): Refit => {
  const found = refit(rows, { row, left, right }, { limit, over });
  if (!found.ok) throw new Error(JSON.stringify(found.issues));
  return found.value;
};
const issueOf = (rows: Rows, row: number, left: number, right = left, over?: number) => {
  const found = refit(rows, { row, left, right }, { limit: UNSEEN, over });
  return found.ok ? 'none' : found.issues[0]!.code;
};

describe('a field of 10 rows of 100 mm, 50 mm from the near limit, by hand', () => {
  const layout = makeLayout({ repeats: { across: 4, along: 10 }, border: 50 });
  const rows = rowsOf(layout, job, field);

  test('rows end where the layout has them', () => {
    expect(rows.begins).toBe(50);
    expect(rows.ends).toEqual([150, 250, 350, 450, 550, 650, 750, 850, 950, 1050]);
    expect(rows.across).toBe(500);
  });

  test('row 4 ends 6 mm short: the six rows that are left grow by 1 mm each', () => {
    const found = done(rows, 4, 444);
    expect([found.should, found.over, found.until]).toEqual([450, 6, 1050]);
    expect(found.change.left).toBeCloseTo(0.01, 12);
    expect(found.shows).toBe(false);
    const ends = rows.ends.slice(3).map((end) => moved(end, found, 'axis'));
    for (const [at, end] of [444, 545, 646, 747, 848, 949, 1050].entries()) expect(ends[at]).toBeCloseTo(end, 9);
  });

  test('4 rows are the fewest that hide 6 mm: 6 / 400 is 1.5 %, 6 / 300 is 2 %', () => {
    expect(done(rows, 4, 444).fewest).toBe(4);
    expect(done(rows, 4, 444, 444, 4).shows).toBe(false);
    expect(done(rows, 4, 444, 444, 3).shows).toBe(true);
    // Over four rows the fifth is where it always was.
    expect(moved(850, done(rows, 4, 444, 444, 4), 'axis')).toBe(850);
    expect(moved(949, done(rows, 4, 444, 444, 4), 'axis')).toBe(949);
  });

  test('too much for what is left: no number of rows hides it', () => {
    const found = done(rows, 8, 845);
    expect([found.shows, found.fewest]).toEqual([true, undefined]);
    // 5 / 200 is 2.5 %, which a limit of 3 % allows.
    expect(done(rows, 8, 845, 845, undefined, 0.03)).toMatchObject({ shows: false, fewest: 2 });
  });

  test('a row that has turned is turned back: 3 mm beyond at the left, 3 mm short at the right', () => {
    const found = done(rows, 4, 453, 447);
    expect(turnOf(found)).toBe(-6);
    expect(found.change.left).toBeCloseTo(-0.005, 12);
    expect(found.change.right).toBeCloseTo(0.005, 12);
    expect(moved(550, found, 'left')).toBeCloseTo(552.5, 9);
    expect(moved(550, found, 'right')).toBeCloseTo(547.5, 9);
    expect(moved(550, found, 'axis')).toBeCloseTo(550, 9);
  });

  test.each([
    ['no row 0', 0, 50, undefined, 'refit/row'],
    ['nothing after the last', 10, 1050, undefined, 'refit/row'],
    ['half a row', 1.5, 200, undefined, 'refit/row'],
    ['half a row away', 4, 500, undefined, 'refit/far'],
    ['a whole row away', 4, 550, undefined, 'refit/far'],
    ['more rows than are left', 4, 450, 7, 'refit/over'],
    ['no rows', 4, 450, 0, 'refit/over'],
  ])('%s is refused', (_, row, at, over, code) => expect(issueOf(rows, row, at, at, over)).toBe(code));

  test('a right edge that was read wrong is refused as well', () =>
    expect(issueOf(rows, 4, 450, 45)).toBe('refit/far'));

  test('a half row at the end is landed on, unless it is overrun by half', () => {
    const half = rowsOf(makeLayout({ repeats: { across: 4, along: 3.5 } }), job, field);
    expect(half.ends).toEqual([100, 200, 300, 350]);
    expect(done(half, 3, 320).change.left).toBeCloseTo(-0.4, 12);
    expect(issueOf(half, 3, 325)).toBe('refit/far');
  });
});

test('squares of a checkerboard are counted as the marks count them', () => {
  const rows = rowsOf(makeLayout({ repeats: { across: 4, along: 3 } }), job, needMotif('checkerboard'));
  expect(rows.ends).toEqual([50, 100, 150, 200, 250, 300]);
  expect([rows.each, rows.many]).toEqual(['square', 'squares']);
});

describe('new marks', () => {
  // The 151 3/8 in wall with a 6 in border and 12 repeats of 11.61458 in, as in the test of the marks.
  const layout = makeLayout({
    repeats: { across: 3, along: 12 },
    pitch: { across: 11.625 * IN, along: (139.375 / 12) * IN },
    border: 6 * IN,
  });
  const inch = makeJob();
  const schedule = scheduleMarks(layout, inch, { field });
  const found = done(rowsOf(layout, inch, field), 6, 75.25 * IN, 75.5 * IN);
  const lines = newLines(schedule, found);

  test('the axis and both edges, from the measured row on, under their old numbers', () => {
    expect(lines.map(({ name }) => name)).toEqual(['axis', 'left-edge', 'right-edge']);
    for (const { marks } of lines) {
      expect(marks.map(({ number }) => number)).toEqual([8, 9, 10, 11, 12, 13, 14, 15]);
      expect(marks[0]!.for).toBe('end of row 6, as measured');
      // Half of 151 3/8 is 75 11/16.
      expect(marks[0]!.before / IN).toBeCloseTo(75.6875, 9);
      expect(marks.slice(-2).map(({ reads }) => writeTape(reads, 'in', IN / 16))).toEqual(['145 3/8"', '151 3/8"']);
      for (const { reads, true: at } of marks) expect(Math.abs(reads - at)).toBeLessThanOrEqual(IN / 32 + 1e-9);
    }
    expect(lines.map(({ marks }) => writeTape(marks[0]!.reads, 'in', IN / 16))).toEqual([
      '75 3/8"',
      '75 1/4"',
      '75 1/2"',
    ]);
    // Six rows from 75 1/4 to 145 3/8 are 11.6875 in each.
    expect(lines[1]!.marks.slice(0, 3).map(({ true: at }) => at / IN)).toEqual(
      [75.25, 86.9375, 98.625].map((inches) => expect.closeTo(inches, 9)),
    );
  });

  test('with nothing crept nothing changes', () => {
    const still = newLines(schedule, done(rowsOf(layout, inch, field), 6, 75.6875 * IN));
    for (const { marks } of still) for (const { reads, before } of marks) expect(reads).toBe(before);
  });
});

const wishes: fc.Arbitrary<Partial<LayoutWish>> = fc.record({
  repeats: fc.record({ across: fc.constant(3), along: fc.integer({ min: 6, max: 80 }).map((halves) => halves / 2) }),
  pitch: fc.record({ along: fc.double({ min: 40, max: 400, noNaN: true }) }),
  phase: fc.record({ along: fc.constantFrom(0, 0.5) }),
  border: fc.constantFrom(0, 75),
  endGap: fc.constantFrom(0, 12),
});
const share = fc.double({ min: 0, max: 1, noNaN: true });
const off = fc.double({ min: -0.3, max: 0.3, noNaN: true });

describe('every floor', () => {
  test('a re-fit after a re-fit still lands: the last row ends with the field, rows stay in order and alike', () => {
    fc.assert(
      fc.property(wishes, fc.array(fc.tuple(share, off, off, share), { minLength: 1, maxLength: 5 }), (wish, tries) => {
        const rows = rowsOf(makeLayout(wish), job, field);
        const end = rows.ends.at(-1)!;
        let first = 1;
        for (const [where, leftOff, rightOff, spread] of tries) {
          // Each time a later row, or the same one again, measured somewhere near its place.
          const row = Math.min(rows.ends.length - 1, first + Math.floor(where * (rows.ends.length - 1 - first)));
          first = row;
          const should = rows.ends[row - 1]!;
          const pitch = Math.min(rows.ends[row]! - should, should - (rows.ends[row - 2] ?? rows.begins));
          const remaining = rows.ends.length - row;
          const over = 1 + Math.floor(spread * (remaining - 1));
          const found = done(rows, row, should + leftOff * pitch, should + rightOff * pitch, over);
          for (const side of ['left', 'axis', 'right'] as const) {
            const ends = rows.ends.slice(row - 1).map((at) => moved(at, found, side));
            expect(ends.at(-1)).toBeCloseTo(end, 6);
            expect(moved(end, found, side)).toBe(end);
            // Old and new lengths of every row that takes part are in one proportion, and none is lost.
            const lengths = ends.slice(1).map((at, index) => at - ends[index]!);
            const old = rows.ends.slice(row).map((at, index) => at - rows.ends[row - 1 + index]!);
            expect(Math.min(...lengths)).toBeGreaterThan(0);
            const ratios = lengths.map((length, index) => length / old[index]!);
            for (const ratio of ratios.slice(0, over)) expect(ratio).toBeCloseTo(ratios[0]!, 6);
            for (const ratio of ratios.slice(over)) expect(ratio).toBeCloseTo(1, 6);
            if (side !== 'axis') expect(ratios[0]! - 1).toBeCloseTo(found.change[side], 6);
          }
        }
      }),
    );
  });

  test('the fewest rows hide it, and one fewer does not', () => {
    fc.assert(
      fc.property(wishes, share, off, fc.double({ min: 0.002, max: 0.05, noNaN: true }), (wish, where, out, limit) => {
        const rows = rowsOf(makeLayout(wish), job, field);
        const row = 1 + Math.floor(where * (rows.ends.length - 2));
        const should = rows.ends[row - 1]!;
        const at = should + out * Math.min(rows.ends[row]! - should, should - (rows.ends[row - 2] ?? rows.begins));
        const { fewest, shows, remaining } = done(rows, row, at, at, undefined, limit);
        expect(fewest === undefined).toBe(shows);
        if (fewest !== undefined) expect(done(rows, row, at, at, fewest, limit).shows).toBe(false);
        const fewer = (fewest ?? remaining + 1) - 1;
        if (fewer > 0) expect(done(rows, row, at, at, fewer, limit).shows).toBe(true);
      }),
    );
  });
});
