import { appendFileSync, cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { evenfield, folder, smallJob } from './support.ts';

/** The small job without pages to print, which take their time. */
function plainJob(dir: string, motif?: string): void {
  appendFileSync(join(dir, smallJob(dir, motif)), 'print: { tiles: none }\n');
}

let once: string | undefined;

/** A folder with a small job that has been made. Made once, then copied. */
function made(): { dir: string; out: string } {
  const dir = folder();
  if (once === undefined) {
    once = mkdtempSync(join(tmpdir(), 'evenfield-'));
    plainJob(once);
    expect(evenfield(once, ['make', 'mat.job.yaml'])).toMatchObject({ status: 0, err: '' });
  }
  cpSync(once, dir, { recursive: true });
  return { dir, out: join(dir, 'out', 'mat') };
}
afterAll(() => once !== undefined && rmSync(once, { recursive: true, force: true }));

const state = (dir: string) =>
  Object.fromEntries(readdirSync(dir).map((name) => [name, readFileSync(join(dir, name)).toString('latin1')]));

interface Row {
  line: string;
  number: string;
  mm: number;
  for: string;
}
/** Rows of a list whose fields hold no line ends. */
const rowsOf = (csv: string): Row[] =>
  csv
    .split('\r\n')
    .slice(1, -1)
    .map((row) => {
      const [line, , number, , mm, use] = [...row.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)].map(([, field]) =>
        field!.replace(/^"|"$/g, ''),
      );
      return { line: line!, number: number!, mm: Number(mm), for: use! };
    });

/** Where rows 1 and 2 of the mat end and where its field ends, mm. */
function placesOf(out: string): { row: number; second: number; ends: number } {
  const axis = rowsOf(readFileSync(join(out, 'marks.csv'), 'utf8')).filter(({ line }) => line === 'axis');
  const at = (words: RegExp) => axis.find((row) => words.test(row.for))!.mm;
  return { row: at(/between repeats 1 and 2/), second: at(/between repeats 2 and 3/), ends: at(/field ends/) };
}

test('new marks stand beside the old ones, land where the field ends, and survive another make', () => {
  const { dir, out } = made();
  const before = state(out);
  const { row, second, ends } = placesOf(out);
  const told = evenfield(dir, ['refit', 'mat.job.yaml', '--row', '1', '--at', `${(row - 2).toFixed(2)} mm`]);
  expect([told.status, told.err]).toEqual([0, '']);
  expect(told.out).toMatch(/^Mat: re-fit 1\nRow 1 ends 1\/16" short of its place by the layout\.\n/);
  const after = state(out);
  const added = ['refit-1.csv', 'refit-1.html', 'refit.log.json'];
  expect(
    Object.keys(after)
      .filter((name) => !(name in before))
      .sort(),
  ).toEqual(added);
  for (const [name, bytes] of Object.entries(before)) expect(after[name]).toBe(bytes);
  for (const name of added) expect(told.out).toContain(join('out', 'mat', name));

  const axis = rowsOf(after['refit-1.csv']!).filter(({ line }) => line === 'axis');
  expect(axis[0]).toMatchObject({ for: 'end of row 1, as measured', mm: expect.closeTo(row - 2, 2) });
  expect(axis.find((mark) => mark.for.includes('field ends'))!.mm).toBeCloseTo(ends, 3);
  expect(after['refit-1.html']).toMatch(/^<!doctype html>[\s\S]*<\/html>\n$/);

  // A second one has a number of its own, knows the first, and leaves it as it was.
  const again = evenfield(dir, [
    'refit',
    'mat.job.yaml',
    '--row',
    '2',
    '--at',
    `${second} mm`,
    '--right',
    `${second + 3} mm`,
    '--json',
  ]);
  expect([again.status, again.err]).toEqual([0, '']);
  const result = JSON.parse(again.out);
  expect(result.files).toEqual(['refit-2.csv', 'refit-2.html', 'refit.log.json']);
  expect(result.says.join(' ')).toMatch(/by re-fit 1.*The row has turned/);
  const log = JSON.parse(readFileSync(join(out, 'refit.log.json'), 'utf8'));
  expect(log.refits.map((one: { number: number; row: number }) => [one.number, one.row])).toEqual([
    [1, 1],
    [2, 2],
  ]);
  expect(state(out)['refit-1.csv']).toBe(after['refit-1.csv']);

  // Another layout made into the same folder takes away what it no longer makes, and leaves these.
  const kept = state(out);
  rmSync(join(dir, 'mat.job.yaml'));
  plainJob(dir, 'lozenge');
  expect(evenfield(dir, ['make', 'mat.job.yaml'])).toMatchObject({ status: 0, err: '' });
  const left = state(out);
  expect(left['layout.json']).not.toBe(kept['layout.json']);
  for (const name of Object.keys(kept).filter((one) => one.startsWith('refit'))) expect(left[name]).toBe(kept[name]);
  expect(evenfield(dir, ['check', 'out/mat']).status).toBe(0);
});

test('what cannot be re-fitted is refused in a line, and nothing is written', () => {
  const { dir, out } = made();
  const before = state(out);
  const { row } = placesOf(out);
  const right = ['--row', '1', '--at', `${row} mm`];
  for (const [words, says] of [
    [
      ['--row', '400', '--at', '3 in'],
      /^evenfield: there is nothing to re-fit after row 400; the field has \d+ rows of repeats \(--row with a number from 1 to \d+\)\n$/,
    ],
    [['--row', '1', '--at', '2 elephants'], /^evenfield: --at: .*elephants/],
    [
      [...right, '--right', '4 m'],
      /^evenfield: row 1 should end .*is half a repeat or more away from that \(did you mean row/,
    ],
    [[...right, '--over', '900'], /^evenfield: the difference cannot be spread over 900 rows/],
    [
      [...right, '--choose', '2'],
      /^evenfield: layout 2 of mat\.job\.yaml is not the one in out\/mat \(the folder has layout 1: leave --choose away\)\n$/,
    ],
    [
      [...right, '--out', 'elsewhere'],
      /^evenfield: there is no layout\.json in elsewhere\/mat \(evenfield make mat\.job\.yaml writes it/,
    ],
  ] as const) {
    const told = evenfield(dir, ['refit', 'mat.job.yaml', ...words]);
    expect([told.status, told.out]).toEqual([1, '']);
    expect(told.err).toMatch(says);
  }
  expect(state(out)).toEqual(before);

  writeFileSync(join(out, 'refit.log.json'), 'my own notes');
  const told = evenfield(dir, ['refit', 'mat.job.yaml', ...right]);
  expect([told.status, told.err]).toEqual([1, expect.stringContaining('is not a history of re-fits that can be read')]);
  expect(state(out)).toEqual({ ...before, 'refit.log.json': 'my own notes' });
});

test('a job that has changed since the floor was marked is refused', () => {
  const { dir } = made();
  rmSync(join(dir, 'mat.job.yaml'));
  smallJob(dir, 'lozenge');
  const job = readFileSync(join(dir, 'mat.job.yaml'), 'utf8').replace('23 5/16', '25 5/16');
  writeFileSync(join(dir, 'mat.job.yaml'), job);
  const told = evenfield(dir, ['refit', 'mat.job.yaml', '--row', '1', '--at', '3 in']);
  expect([told.status, told.err]).toEqual([1, expect.stringContaining('the job has changed since')]);
});

test.each([
  [['--at', '3 in'], "required option '--row <number>' not specified"],
  [['--row', '1'], "required option '--at <length>' not specified"],
  [['--row', 'two', '--at', '3 in'], 'a whole number from 1'],
  [['--row', '1', '--at', '3 in', '--limit', '0'], 'a percentage above 0'],
])('%j is wrong usage', (words, says) => {
  const { status, err } = evenfield(folder(), ['refit', 'mat.job.yaml', ...words]);
  expect(status).toBe(2);
  expect(err).toContain(says);
});

test('--help ends with an example of itself', () => {
  const { status, out } = evenfield(folder(), ['refit', '--help']);
  expect(status).toBe(0);
  expect(out).toMatch(/Example:\n {2}evenfield refit [^\n]*\n$/);
});
