import { cpSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { lookAt } from '../../src/page/engine/look.ts';
import { type RefitAsk, type Refitted, refitAt, rowsToRefit } from '../../src/page/engine/refit.ts';
import { refitFiles } from '../../src/page/engine/refit-files.ts';
import { afterRefits, changedBetween, lastRow } from '../../src/page/floor/refits.ts';
import { isMade, tick, untick } from '../../src/page/floor/ticks.ts';
import { walkOf } from '../../src/page/floor/walk.ts';
import { writeTape } from '../../src/units/index.ts';
import { evenfield, folder } from '../cli/support.ts';

/** Ten rows of 100 mm with nothing round them: what a re-fit comes to is worked out by hand. */
const STRIP = `
evenfield: 1
title: Strip
units: mm
surface: floor-cloth
overall: { across: 400, along: 1000 }
field: { motif: diamond, repeats: { across: 4, along: 10 } }
border: { motif: none }
reserve: 0
palette: { cream: '#efe6d2', red: '#8c2f26' }
colours: { ground: cream, field: red }
`;
const RUNNER = readFileSync('samples/passage-runner.job.yaml', 'utf8');

const asked = (row: number, left: string, more: Partial<RefitAsk> = {}): RefitAsk => ({
  row,
  left,
  right: '',
  before: [],
  ...more,
});

async function refitted(text: string, ask: RefitAsk): Promise<Refitted> {
  const found = await refitAt(text, 0, ask);
  if (!found.ok) throw new Error(JSON.stringify(found.issues));
  return found.value;
}

async function scheduleOf(text: string) {
  const look = await lookAt(text, 0);
  if (!look.ok) throw new Error(JSON.stringify(look.issues));
  return look.value.schedule;
}

const readsOf = (refit: Refitted, name: string) =>
  refit.lines.find((line) => line.name === name)!.marks.map(({ reads }) => reads);

describe('ten rows of 100 mm, by hand', () => {
  test('row 4 ends 6 mm short: the six rows that are left grow by 1 mm each, on all three lines', async () => {
    const found = await refitted(STRIP, asked(4, '394'));
    for (const name of ['axis', 'left-edge', 'right-edge'])
      expect(readsOf(found, name)).toEqual([394, 495, 596, 697, 798, 899, 1000]);
    expect([found.entry.over, found.remaining, found.entry.shows]).toEqual([6, 6, false]);
    expect(found.entry.change.left).toBeCloseTo(0.01, 12);
  });

  test('4 rows are the fewest that hide 6 mm at 1.5 %: 6 / 400 is 1.5 %, 6 / 300 is 2 %; the fifth row is where it was', async () => {
    const all = await refitted(STRIP, asked(4, '394'));
    expect(all.fewest).toBe(4);
    const few = await refitted(STRIP, asked(4, '394', { over: 4 }));
    expect(few.entry.shows).toBe(false);
    // 394 + 406 / 4 = 495.5, which a tape of whole millimetres reads as 496 or 495; 597; 698.5; 800.
    const axis = few.lines[0]!.marks.map((mark) => mark.true);
    for (const [at, mm] of [394, 495.5, 597, 698.5, 800, 900, 1000].entries()) expect(axis[at]).toBeCloseTo(mm, 9);
    const three = await refitted(STRIP, asked(4, '394', { over: 3 }));
    expect(three.entry.shows).toBe(true);
  });

  test('a row that has turned: 3 mm beyond at the left, 3 mm short at the right, straight by the end', async () => {
    const found = await refitted(STRIP, asked(4, '403', { right: '39.7 cm' }));
    expect(found.lines.map(({ name, marks }) => [name, marks[0]!.reads, marks.at(-1)!.reads])).toEqual([
      ['axis', 400, 1000],
      ['left-edge', 403, 1000],
      ['right-edge', 397, 1000],
    ]);
  });

  test('a second re-fit counts from its own row, and what lies before it stays as the first has it', async () => {
    const schedule = await scheduleOf(STRIP);
    const first = await refitted(STRIP, asked(4, '394'));
    // After the first, row 7 should end at 697; it ends at 694, and by the layout at 700.
    const second = await refitted(STRIP, asked(7, '694', { before: [first.entry] }));
    expect(second.entry.number).toBe(2);
    expect(second.says.join(' ')).toMatch(/6 mm short of its place by the layout.*3 mm short of its place by re-fit 1/);
    const axis = afterRefits(schedule, [first, second]).lines.find(({ name }) => name === 'axis')!;
    expect(axis.marks.map(({ reads }) => reads)).toEqual([0, 100, 200, 300, 394, 495, 596, 694, 796, 898, 1000]);
    expect(axis.marks.map(({ refit }) => refit)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      1,
      1,
      1,
      2,
      2,
      2,
      undefined,
    ]);
    expect(axis.marks[7]).toMatchObject({ before: 697 });
  });
});

describe('what was ticked before a re-fit', async () => {
  const schedule = await scheduleOf(STRIP);
  const refit = await refitted(STRIP, asked(4, '394'));
  const before = walkOf(schedule, 'floor-cloth');
  const after = walkOf(afterRefits(schedule, [refit]), 'floor-cloth');
  const ticks = before.reduce((all, stop) => tick(all, stop), [] as ReturnType<typeof tick>);
  const moved = changedBetween(schedule, afterRefits(schedule, [refit]));

  test('marks that moved, and the tape of their lines, are to be done again; all others stay made', () => {
    // Rows 4 to 9 on three lines: the last row lands where it did.
    expect(moved).toHaveLength(18);
    const open = after.filter((stop) => !isMade(ticks, stop)).map(({ id }) => id);
    expect(open.filter((id) => / \d+$/.test(id))).toEqual(moved);
    expect(open.filter((id) => !/ \d+$/.test(id))).toEqual(['axis', 'left-edge', 'right-edge']);
  });

  test('taken back at once, all is made as it was; a mark that was made anew, or rubbed out, is to be made again', () => {
    expect(before.every((stop) => isMade(ticks, stop))).toBe(true);
    const one = after.find(({ id }) => id === moved[2])!;
    const anew = tick(ticks, one);
    expect(before.filter((stop) => !isMade(anew, stop)).map(({ id }) => id)).toEqual([moved[2]]);
    expect(before.filter((stop) => !isMade(untick(ticks, moved), stop)).map(({ id }) => id)).toEqual(moved);
  });

  test('the row that was marked last is the one that is asked for first', async () => {
    const rows = await rowsToRefit(STRIP, 0);
    if (!rows.ok) throw new Error('no rows');
    const { ends } = rows.value;
    expect(ends).toEqual([100, 200, 300, 400, 500, 600, 700, 800, 900, 1000]);
    const upTo = (id: string) => ticks.slice(0, ticks.findIndex(([one]) => one === id) + 1);
    // Mark 1 of the axis is where the work begins, so that row 3 ends at mark 4.
    expect(lastRow(schedule, upTo('axis 4'), ends)).toBe(3);
    expect(lastRow(schedule, [], ends)).toBe(1);
    // After the last row nothing is left.
    expect(lastRow(schedule, ticks, ends)).toBe(9);
  });
});

test('the parts of a long line close on its new marks', async () => {
  const schedule = await scheduleOf(RUNNER);
  const refit = await refitted(RUNNER, asked(10, '82 1/4'));
  const line = afterRefits(schedule, [refit]).lines.find(({ name }) => name === 'axis')!;
  const reads = (number: number) => (number === 0 ? 0 : line.marks.find((mark) => mark.number === number)!.reads);
  expect(line.spans!.length).toBeGreaterThan(1);
  for (const { from, to, total } of line.spans!) expect(total).toBeCloseTo(reads(to) - reads(from), 9);
  // All parts together are the last reading, which does not move.
  expect(line.spans!.reduce((sum, { total }) => sum + total, 0)).toBeCloseTo(
    schedule.lines.find(({ name }) => name === 'axis')!.marks.at(-1)!.reads,
    9,
  );
});

describe('what cannot be fitted again is said at its field', () => {
  const issuesOf = async (ask: RefitAsk, text = STRIP) => {
    const found = await refitAt(text, 0, ask);
    return found.ok ? [] : found.issues.map(({ code, path, says, hint }) => ({ code, path, words: `${says} ${hint}` }));
  };

  test.each([
    ['nothing', asked(4, ''), ['left'], /is empty|length/],
    ['no length', asked(4, 'about 40'), ['left'], /about 40/],
    ['another row', asked(4, '502'), ['left'], /did you mean row 5, which ends at 500 mm/],
    ['no length at the right', asked(4, '394', { right: 'x' }), ['right'], /x/],
    ['another row at the right', asked(4, '394', { right: '600' }), ['right'], /did you mean row 6/],
  ])('%s', async (_, ask, path, words) => {
    const [issue] = await issuesOf(ask);
    expect(issue!.path).toEqual(path);
    expect(issue!.words).toMatch(words);
    expect(issue!.words).not.toMatch(/--/);
  });

  test.each([
    ['scullery-floor', 'refit/floor'],
    ['morning-room-border', 'refit/room-border'],
    ['back-stairs', 'refit/row'],
  ])('%s has no rows that creep', async (sample, code) => {
    const text = readFileSync(`samples/${sample}.job.yaml`, 'utf8');
    const rows = await rowsToRefit(text, 0);
    expect(rows.ok ? '' : rows.issues[0]).toMatchObject({ code, hint: expect.stringMatching(/pull the marks/) });
    expect((await issuesOf(asked(1, '10'), text))[0]!.code).toBe(code);
  });
});

test('the command line writes the same marks, and says the same but for its own options', {
  timeout: 240_000,
}, async () => {
  const dir = folder();
  cpSync('samples/passage-runner.job.yaml', join(dir, 'passage.job.yaml'));
  expect(evenfield(dir, ['make', 'passage.job.yaml'])).toMatchObject({ status: 0 });
  const at = ['--row', '10', '--at', '82 1/4"', '--right', '82 5/8"', '--over', '12'];
  const told = evenfield(dir, ['refit', 'passage.job.yaml', ...at, '--json']);
  expect(told).toMatchObject({ status: 0, err: '' });
  const csv = readFileSync(join(dir, 'out/back-passage/refit-1.csv'), 'utf8');
  const written = csv
    .trim()
    .split('\r\n')
    .slice(1)
    .map((row) =>
      [...row.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)].map(([, one]) =>
        one!.replace(/^"|"$/g, '').replaceAll('""', '"'),
      ),
    )
    .map(([line, , number, tape, , use, before]) => [line, number, tape, use, before]);

  const found = await refitted(RUNNER, asked(10, '82 1/4"', { right: '82 5/8"', over: 12 }));
  const tape = (mm: number) => writeTape(mm, 'in', 25.4 / 16);
  const shown = found.lines.flatMap(({ name, marks }) =>
    marks.map((mark) => [name, `${mark.number}`, tape(mark.reads), mark.for, tape(mark.before)]),
  );
  expect(shown.length).toBeGreaterThan(40);
  expect(shown).toEqual(written);
  const { says, refit } = JSON.parse(told.out);
  expect(found.says).toEqual(says.map((line: string) => line.replace(/ \(--over \d+\)/, '')));
  expect(refit).toMatchObject({ row: 10, over: 12, shows: found.entry.shows, remaining: found.remaining });

  const again = ['--row', '14', '--at', '114 1/2"'];
  expect(evenfield(dir, ['refit', 'passage.job.yaml', ...again])).toMatchObject({ status: 0, err: '' });
  const second = await refitted(RUNNER, asked(14, '114 1/2"', { before: [found.entry] }));
  // Entries are kept as JSON in between.
  const kept = JSON.parse(JSON.stringify([found.entry, second.entry]));
  const files = await refitFiles(RUNNER, 0, kept);
  if (!files.ok) throw new Error(JSON.stringify(files.issues));
  expect([...files.value.keys()].sort()).toEqual([
    'refit-1.csv',
    'refit-1.html',
    'refit-2.csv',
    'refit-2.html',
    'refit.log.json',
  ]);
  for (const [name, content] of files.value)
    expect(content === readFileSync(join(dir, 'out/back-passage', name), 'utf8'), name).toBe(true);
});
