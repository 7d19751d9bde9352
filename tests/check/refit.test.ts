import { beforeAll, expect, test } from 'vitest';
import type { Claims } from '../../src/check/claim.ts';
import { checkFiles } from '../../src/check/index.ts';
import { scheduleMarks } from '../../src/marks/marks.ts';
import { fitJob, makeFiles } from '../../src/pipeline.ts';
import { newLines } from '../../src/refit/lines.ts';
import { emptyLog, entryOf, writeLog } from '../../src/refit/log.ts';
import { refit } from '../../src/refit/refit.ts';
import { rowsOf } from '../../src/refit/rows.ts';
import { writeRefit } from '../../src/write/refit.ts';
import { jobText } from './support/make.ts';
import { recheck } from './support/recheck.ts';
import { expectRefuted } from './support/refuted.ts';
import { change, changeMark, type Files, without } from './support/tamper.ts';
import type { Tampering } from './support/tamperings.ts';

const TEXT = jobText([
  'overall: { across: 600, along: 1600 }',
  'field: { motif: diamond, repeats: { across: 3, along: 8 } }',
  'border: none',
  "palette: { bone: '#efe8d6', ink: '#2b2a33' }",
  'colours: { ground: bone, field: ink }',
  'print: { tiles: none }',
]);
const LOG = 'refit.log.json';

let files: Files;
let untouched: Claims;

/** Two re-fits: row 2 has crept 6 mm and turned, row 5 lies 1 mm short of where that one put it. */
beforeAll(async () => {
  const [made, fitted] = [await makeFiles(TEXT, 'small.job.yaml'), await fitJob(TEXT, 'small.job.yaml')];
  if (!made.ok || !fitted.ok) throw new Error('the small job cannot be made');
  const { job, motifs } = fitted.value;
  const layout = made.value.layout!;
  const rows = rowsOf(layout, job, motifs.field);
  const schedule = scheduleMarks(layout, job, motifs);
  let log = emptyLog(rows);
  files = new Map(made.value.files);
  for (const [number, row, left, right] of [
    [1, 2, 406, 404],
    [2, 5, 1002, 1002],
  ] as const) {
    const found = refit(rows, { row, left, right }, { limit: 0.015 });
    if (!found.ok) throw new Error(JSON.stringify(found.issues));
    for (const [name, text] of writeRefit(number, newLines(schedule, found.value), ['made up'], job))
      files.set(name, text);
    log = { ...log, refits: [...log.refits, entryOf(number, found.value)] };
  }
  files.set(LOG, writeLog(log));
  untouched = await checkFiles(files);
});

test('two re-fits, one after the other, hold', () => {
  expect(untouched.claims.filter((claim) => !claim.holds)).toEqual([]);
  expect(untouched.claims.filter(({ file }) => /^refit/.test(file)).length).toBeGreaterThan(40);
});

const inLog = (name: string, claim: RegExp, edit: (log: never) => void): Tampering => ({
  name: `the log: ${name}`,
  claim,
  file: LOG,
  tamper: (all) =>
    change(all, LOG, (text) => {
      const log = JSON.parse(text);
      edit(log as never);
      return JSON.stringify(log);
    }),
});
type Log = { refits: { [key: string]: unknown; change: { left: number } }[]; ends: number[] };
const inList = (name: string, claim: RegExp, row: RegExp, edit: (row: string) => string): Tampering => ({
  name: `the new marks: ${name}`,
  claim,
  file: 'refit-1.csv',
  tamper: (all) => change(all, 'refit-1.csv', (csv) => changeMark(csv, (text) => row.test(text), edit)),
});
const onwards = (by: number) => (row: string) =>
  row.replace(/,(\d+) mm,([\d.]+),/, (_, tape, mm) => `,${Number(tape) + by} mm,${Number(mm) + by},`);

test.each(
  [
    inLog('another place for the row', /^re-fit 1 divides/, (log: Log) => {
      log.refits[0]!.left = 407;
    }),
    inLog('the row of another place', /^re-fit 2 divides/, (log: Log) => {
      log.refits[1]!.row = 4;
    }),
    inLog('over fewer rows', /^re-fit 1 divides/, (log: Log) => {
      log.refits[0]!.over = 5;
    }),
    inLog('another change', /^re-fit 1 divides/, (log: Log) => {
      log.refits[0]!.change.left = -0.004;
    }),
    inLog('that it shows', /^re-fit 1 says whether/, (log: Log) => {
      log.refits[0]!.shows = true;
    }),
    inLog('under another limit', /^re-fit 1 says whether/, (log: Log) => {
      log.refits[0]!.limit = 0.001;
    }),
    inLog('the rows of another floor', /^the rows are those of the marks$/, (log: Log) => {
      log.ends[3]! += 0.1;
    }),
    inLog('a row too few', /^the rows are those of the marks$/, (log: Log) => {
      log.ends.pop();
    }),
    inLog('a re-fit left out', /^every re-fit that lies there/, (log: Log) => {
      log.refits.pop();
    }),
    inLog('in another order', /^the re-fits are told in their order$/, (log: Log) => {
      log.refits.reverse();
    }),
    inList('one moved', /^the new marks of axis change by as much/, /^axis,.*between repeats 4 and 5/, onwards(1)),
    inList(
      'one before the last',
      /^the new marks of left-edge go onward$/,
      /^left-edge,.*between repeats 4 and 5/,
      onwards(250),
    ),
    inList('the last moved', /^the new marks of right-edge end where/, /^right-edge,.*work ends/, onwards(1)),
    inList('one left out', /^every mark of axis that is left/, /^axis,.*between repeats 4 and 5/, () => ''),
    inList('another reading', /^the new marks of axis read within/, /^axis,.*between repeats 4 and 5/, (row) =>
      row.replace(/,(\d+) mm,/, (_, tape) => `,${Number(tape) + 1} mm,`),
    ),
    inList('another reading before', /^the new marks of axis say what/, /^axis,.*between repeats 4 and 5/, (row) =>
      row.replace(/,(\d+) mm\r/, ',$11 mm\r'),
    ),
    inList('from another datum', /^the new marks of axis keep/, /^axis,/, (row) => row.replace('the near', 'the far')),
    inList('for something else', /^the new marks of axis keep/, /^axis,.*between repeats 4 and 5/, (row) =>
      row.replace('4 and 5', '5 and 6'),
    ),
    inList('a line across', /^only lines that run along/, /^axis,/, (row) => row.replace('axis', 'across-left')),
    {
      name: 'the page: another reading',
      claim: /^the page shows every new mark$/,
      file: 'refit-1.html',
      tamper: (all: Files) =>
        change(all, 'refit-1.html', (html) => html.replace(/(<td class="read">[^0-9]*)(\d)/, '$19$2')),
    },
    {
      name: 'the page is missing',
      claim: /^the page shows every new mark$/,
      file: 'refit-2.html',
      tamper: (all: Files) => without(all, 'refit-2.html'),
    },
  ].map((one) => [one.name, one] as const),
)('%s is refuted', async (_, tampering) => {
  await expectRefuted(files, untouched, tampering);
});

test.each([
  [LOG, /^the history of re-fits can be read$/],
  ['refit-1.csv', /^the new marks can be read$/],
])('without %s that is said', async (name, claim) => {
  const { claims } = await recheck(files, without(files, name));
  expect(claims.filter((one) => !one.holds && one.file === name).map((one) => one.claim)).toEqual([
    expect.stringMatching(claim),
  ]);
});

test('re-fits of a layout that lay there before stay proven by their own history', async () => {
  const other = await makeFiles(
    TEXT.replace('600, along: 1600', '630, along: 1470').replace('along: 8', 'along: 7'),
    'small.job.yaml',
  );
  if (!other.ok) throw new Error('the other layout cannot be made');
  const refits = [...files].filter(([name]) => name.startsWith('refit'));
  const all = new Map([...other.value.files, ...refits]);
  expect((await checkFiles(all)).claims.filter(({ holds }) => !holds)).toEqual([]);
  const touched = change(all, 'refit-1.csv', (csv) =>
    changeMark(csv, (row) => /^axis,.*between repeats 4 and 5/.test(row), onwards(1)),
  );
  expect((await recheck(files, touched)).claims.filter(({ holds }) => !holds).map(({ claim }) => claim)).toContain(
    'the rows of axis begin where one was measured and end where the last always did',
  );
});
