import { readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { type Command, InvalidArgumentError } from 'commander';
import type { Layout } from '../fit/layout.ts';
import { fail, good, type Issue, type Result } from '../issue.ts';
import type { Fitted } from '../pipeline.ts';
import type { Log } from '../refit/log.ts';
import { type Refit, UNSEEN } from '../refit/refit.ts';
import type { Rows } from '../refit/rows.ts';
import type { Kept } from '../refit/same-layout.ts';
import { trouble, troubleCode } from '../write/folder-trouble.ts';
import { wholeNumber } from './options.ts';
import { withProgress } from './progress.ts';
import { assetReader } from './read-asset.ts';
import { readJobFile } from './read-job-file.ts';
import { ending } from './run.ts';
import { DONE, type Ending, refuse, refuseAll, shownPath, tell, tellJson, tidy } from './talk.ts';
import { writeNewFile } from './write-new-file.ts';

interface Options {
  row: number;
  at: string;
  right?: string;
  over?: number;
  limit: number;
  choose?: number;
  out: string;
  json?: boolean;
}

const LOG = 'refit.log.json';
const MOST_ROWS = 100_000;
/** What `make` fits at the least; a layout further down the list is fitted for. */
const USUAL = 10;

/** Text of a file, nothing where there is none. */
async function readIfThere(path: string): Promise<Result<string | undefined>> {
  try {
    return good(await readFile(path, 'utf8'));
  } catch (error) {
    if (troubleCode(error) === 'ENOENT') return good(undefined);
    if (troubleCode(error) === undefined) throw error;
    return fail('file/unreadable', [], `cannot read ${shownPath(path)}: ${trouble(error)}`);
  }
}

/** The layout that the folder was made from, as the job fits it again. */
async function layoutOf(
  dir: string,
  path: string,
  kept: Kept,
  fitted: Fitted,
  choose?: number,
): Promise<Result<Layout>> {
  const { sameLayout } = await import('../refit/same-layout.ts');
  const rank = choose ?? kept.layout.rank;
  const { layouts } = fitted.fit;
  const layout = layouts[rank - 1];
  if (layout !== undefined && sameLayout(layout, kept.layout)) return good(layout);
  const made = layouts.find((one) => sameLayout(one, kept.layout));
  const hint =
    made === undefined
      ? `the job has changed since; give the one that the floor was marked from, or mark it anew after evenfield make ${shownPath(path)}`
      : `the folder has layout ${made.rank}: leave --choose away`;
  return fail('refit/other-layout', [], `layout ${rank} of ${shownPath(path)} is not the one in ${dir}`, hint);
}

async function fitAgain(
  path: string,
  out: string,
  choose?: number,
): Promise<Result<Fitted & { dir: string; kept: Kept; layout: Layout }>> {
  const text = await readJobFile(path);
  if (!text.ok) return text;
  const { fitJob } = await import('../pipeline.ts');
  const { readKept } = await import('../refit/same-layout.ts');
  const fitBest = (most: number) =>
    withProgress('fitting the job again', () => fitJob(text.value, path, most, assetReader(path)));
  const fitted = await fitBest(Math.max(USUAL, choose ?? 1));
  if (!fitted.ok) return fitted;
  const dir = join(out, fitted.value.job.name);
  const written = await readIfThere(join(dir, 'layout.json'));
  if (!written.ok) return written;
  const kept = written.value === undefined ? undefined : readKept(written.value);
  if (kept === undefined) {
    const says =
      written.value === undefined ? `there is no layout.json in ${dir}` : `${join(dir, 'layout.json')} cannot be read`;
    return fail(
      'file/no-layout',
      [],
      says,
      `evenfield make ${shownPath(path)} writes it; with --out if it is elsewhere`,
    );
  }
  const { rank } = kept.layout;
  const far = choose === undefined && rank > USUAL && rank <= 100 ? await fitBest(rank) : fitted;
  if (!far.ok) return far;
  const layout = await layoutOf(dir, path, kept, far.value, choose);
  return layout.ok ? good({ ...far.value, dir, kept, layout: layout.value }) : layout;
}

/** The number of the next re-fit: after all that the log knows and all whose files lie there. */
async function nextNumber(dir: string, { refits }: Log): Promise<number> {
  const names = await readdir(dir);
  const lying = names.map((name) => Number(/^refit-(\d{1,6})\./.exec(name)?.[1] ?? 0));
  return Math.max(0, ...lying, ...refits.map(({ number }) => number)) + 1;
}

/** Writes new files beside the old ones, over none of them; then the log. If one cannot be written, none of them stays. */
async function writeBeside(dir: string, files: Map<string, string>, log: string): Promise<Result<string[]>> {
  const placed: string[] = [];
  const undo = () => Promise.all(placed.map((path) => rm(path, { force: true })));
  for (const [name, text] of [...files, [LOG, log] as const]) {
    const path = join(dir, name);
    const written = await writeNewFile(path, text, name === LOG);
    if (!written.ok) {
      await undo();
      return written;
    }
    if (name !== LOG) placed.push(path);
  }
  return good([...files.keys(), LOG]);
}

/** Everything worked out, nothing written. */
interface Found {
  refit: Refit;
  rows: Rows;
  log: Log;
  number: number;
  says: string[];
  files: Map<string, string>;
}

async function workOut(
  fitted: Fitted & { dir: string; kept: Kept; layout: Layout },
  options: Options,
): Promise<Result<Found>> {
  const { job, motifs, layout, kept, dir } = fitted;
  if (job.surface === 'floor')
    return fail(
      'refit/floor',
      [],
      'a floor from wall to wall is marked from its middle, so nothing creeps from row to row; there is no first row to count from',
      'pull the marks that are out again from the crossing of the centre lines',
    );
  const { parseLength, writeTape } = await import('../units/index.ts');
  const { scheduleMarks } = await import('../marks/marks.ts');
  const { newLines } = await import('../refit/lines.ts');
  const { emptyLog, readLog } = await import('../refit/log.ts');
  const { refit } = await import('../refit/refit.ts');
  const { rowsOf } = await import('../refit/rows.ts');
  const { sayRefit } = await import('../refit/says.ts');
  const { writeRefit } = await import('../write/refit.ts');
  const write = (mm: number) => writeTape(mm, job.units, job.step);

  const read = (option: 'at' | 'right') => {
    const length = parseLength(options[option] ?? options.at, job.units);
    return length.ok
      ? length
      : {
          ok: false as const,
          issue: {
            code: 'refit/length',
            path: [],
            says: `--${option}: ${length.says}`,
            ...(length.hint ? { hint: length.hint } : {}),
          } satisfies Issue,
        };
  };
  const [left, right] = [read('at'), read('right')];
  if (!left.ok) return { ok: false, issues: [left.issue] };
  if (!right.ok) return { ok: false, issues: [right.issue] };

  const rows = rowsOf(layout, job, motifs.field);
  const text = await readIfThere(join(dir, LOG));
  if (!text.ok) return text;
  const log = text.value === undefined ? good(emptyLog(rows)) : readLog(text.value, rows, join(dir, LOG));
  if (!log.ok) return log;
  const wish = { limit: options.limit / 100, over: options.over };
  const found = refit(rows, { row: options.row, left: left.mm, right: right.mm }, wish, write);
  if (!found.ok) return found;
  const last = log.value.refits.at(-1);
  const earlier = last && refit(rows, last, last);
  const before = last && earlier?.ok ? { entry: last, refit: earlier.value } : undefined;
  const says = sayRefit(found.value, rows, job.step, write, before);
  const lines = newLines(scheduleMarks(layout, job, motifs, kept.lettering), found.value);
  const number = await nextNumber(dir, log.value);
  return good({ refit: found.value, rows, log: log.value, number, says, files: writeRefit(number, lines, says, job) });
}

/** Troubles of a re-fit take one line each; those inside a job have their place in it. */
function refuseRefit(issues: Issue[], path: string): Ending {
  const own = issues.filter(({ code }) => code.startsWith('refit/'));
  for (const { says, hint } of own) refuse(says, hint);
  return refuseAll(
    issues.filter((issue) => !own.includes(issue)),
    path,
  );
}

async function refitJob(path: string, options: Options): Promise<Ending> {
  const fitted = await fitAgain(path, options.out, options.choose);
  if (!fitted.ok) return refuseRefit(fitted.issues, path);
  const found = await workOut(fitted.value, options);
  if (!found.ok) return refuseRefit(found.issues, path);
  const { entryOf, writeLog } = await import('../refit/log.ts');
  const { refit, log, number, says, files } = found.value;
  const { dir, job } = fitted.value;
  const entry = entryOf(number, refit);
  const written = await writeBeside(dir, files, writeLog({ ...log, refits: [...log.refits, entry] }));
  if (!written.ok) return refuseRefit(written.issues, dir);
  if (options.json === true) {
    tellJson(
      {
        out: dir,
        files: written.value,
        refit: { ...entry, fewest: refit.fewest ?? null, remaining: refit.remaining },
        says,
      },
      tidy,
    );
    return DONE;
  }
  const { roomOf, wrap } = await import('./table.ts');
  const room = roomOf(process.stdout);
  const names = written.value.map((name) => `  ${join(dir, name)}`);
  tell([`${job.title}: re-fit ${number}`, ...says.flatMap((line) => wrap(line, room, 0)), '', ...names].join('\n'));
  return DONE;
}

function percentage(text: string): number {
  const value = /^\d{1,2}(\.\d{1,4})?$/.test(text) ? Number(text) : 0;
  if (value <= 0 || value > 20) throw new InvalidArgumentError('Give a percentage above 0 and up to 20, such as 1.5.');
  return value;
}

export function addRefit(program: Command): void {
  program
    .command('refit')
    .summary('new marks for what is left when the work has crept')
    .description(
      'For work that has crept: from where the row you are at truly ends, divides what is left evenly, so that the last row lands where it should. Writes the new marks beside the old ones, and over nothing.',
    )
    .argument('<job>', 'the job file, *.job.yaml, that make has written a folder for')
    .requiredOption('--row <number>', 'the last row that is painted, counted from the near end', wholeNumber(MOST_ROWS))
    .requiredOption('--at <length>', 'where that row ends, measured from the point that the marks are measured from')
    .option('--right <length>', 'the same at the right edge, when the row has turned; --at is then the left edge')
    .option(
      '--over <rows>',
      'how many rows take up the difference; all that are left, without it',
      wholeNumber(MOST_ROWS),
    )
    .option('--limit <percent>', 'change of a row that an eye does not see', percentage, 100 * UNSEEN)
    .option('--choose <rank>', 'which layout was made; without it, the one in the folder', wholeNumber(100))
    .option('--out <folder>', 'where the folder of the job is', 'out')
    .option('--json', 'print what was found as JSON, lengths in mm')
    .addHelpText('after', `\nExample:\n  evenfield refit hall.job.yaml --row 9 --at "84 3/8\\""`)
    .action(ending(refitJob));
}
