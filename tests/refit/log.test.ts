import { expect, test } from 'vitest';
import { emptyLog, entryOf, readLog, writeLog } from '../../src/refit/log.ts';
import { refit } from '../../src/refit/refit.ts';
import { rowsOf } from '../../src/refit/rows.ts';
import { sayRefit } from '../../src/refit/says.ts';
import { makeJob, metric } from '../marks/job.ts';
import { makeLayout } from '../support/layout.ts';

const job = makeJob(metric);
const rows = rowsOf(makeLayout({ repeats: { across: 4, along: 10 }, pitch: { across: 100, along: 100 / 3 } }), job);
const write = (mm: number) => `${Math.round(mm)} mm`;

const made = (row: number, left: number, right = left, over?: number) => {
  const found = refit(rows, { row, left, right }, { limit: 0.015, over });
  if (!found.ok) throw new Error(found.issues[0]!.says);
  return found.value;
};

test('a log reads back as it was written, one re-fit after the other', () => {
  const log = { ...emptyLog(rows), refits: [entryOf(1, made(3, 98)), entryOf(2, made(5, 168, 166, 2))] };
  const read = readLog(writeLog(log), rows, 'a log');
  if (!read.ok) throw new Error(read.issues[0]!.says);
  expect(
    read.value.refits.map(({ number, row, left, right, over, shows }) => [number, row, left, right, over, shows]),
  ).toEqual([
    [1, 3, 98, 98, 7, false],
    [2, 5, 168, 166, 2, true],
  ]);
  // 168 is 1.33 mm beyond row 5, 2 % of the two rows that take it up.
  expect(writeLog(read.value)).toBe(writeLog(log));
});

test.each([
  ['', 'refit/log'],
  ['null', 'refit/log'],
  ['{"ends": [1], "refits": [{}]}', 'refit/log'],
  ['{"ends": "all", "refits": []}', 'refit/log'],
  ['{"ends": [100, 200], "refits": []}', 'refit/other-floor'],
])('%j is refused, with what to do', (text, code) => {
  const read = readLog(text, rows, 'refit.log.json');
  expect(read).toMatchObject({ ok: false, issues: [{ code, hint: expect.stringContaining('move it away') }] });
});

test('what is said: how far off, by the layout and by the re-fit before, and whether it shows', () => {
  const first = made(3, 96);
  expect(sayRefit(first, rows, 1, write)).toEqual([
    'Row 3 ends 4 mm short of its place by the layout.',
    'Each of the 7 rows that are left comes out 1.71 % longer; row 10 ends 333 mm from the near threshold, where it always did.',
    'An eye would see that: the limit is 1.50 %. Even all the rows that are left are too few to hide it: paint back to an earlier row, or let it show where it is looked at least.',
  ]);
  // By the first re-fit row 5 ends at 96 + 2 × 33.905 = 163.8 mm; by the layout at 166.7.
  const second = sayRefit(made(5, 166, 164), rows, 1, write, { entry: entryOf(1, first), refit: first });
  expect(second[1]).toBe(
    'Row 5 ends, by re-fit 1, 2 mm beyond its place at the left edge and in its place at the right edge.',
  );
  expect(second[2]).toContain('The row has turned: it lies 2 mm farther out at the left edge, over 400 mm.');
  expect(second[3]).toContain('comes out 0.40 % longer at the left edge and 1.60 % longer at the right edge');
  const back = sayRefit(made(2, 67), rows, 1, write, { entry: entryOf(1, first), refit: first });
  expect(back[1]).toBe('It lies before row 3 of re-fit 1, which no longer holds.');
  expect(sayRefit(made(3, 100), rows, 1, write)).toEqual([
    'Row 3 ends in its place by the layout.',
    'Nothing needs to change: the marks stay as they are.',
  ]);
});
