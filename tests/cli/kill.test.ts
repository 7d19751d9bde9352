import { spawn } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, watch } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { running } from './signalled.ts';
import { BUILT, smallJob } from './support.ts';

type State = Record<string, string>;

const state = (): State =>
  Object.fromEntries(
    readdirSync(out)
      .filter((name) => !name.startsWith('.'))
      .sort()
      .map((name) => [name, readFileSync(join(out, name)).toString('latin1')]),
  );
const hidden = (): string[] => readdirSync(out).filter((name) => name.startsWith('.'));

/** The same numbers on every run (a linear congruence, Numerical Recipes, ranqd1). */
function chance(seed: number): () => number {
  let value = seed;
  return () => {
    value = (Math.imul(value, 1664525) + 1013904223) >>> 0;
    return value / 2 ** 32;
  };
}

/** A process that does nothing but write the files of a folder into another, as `make` does once they are made. */
const WRITER = `
const [, , folder, from, to] = process.argv;
const { readdirSync, readFileSync } = await import('node:fs');
const { writeFolder } = await import(folder);
const files = new Map(readdirSync(from).sort().map((name) => [name, new Uint8Array(readFileSync(from + '/' + name))]));
const wrote = await writeFolder(to, files);
if (!wrote.ok) { console.error(JSON.stringify(wrote.issues)); process.exitCode = 1; }
`;

interface Run {
  /** ms from the first sign of writing to the end of the process. */
  wrote: number;
  status: number | null;
  /** Whether the kill found it still at work. */
  cut: boolean;
}

/** Runs a program that writes into the folder; `after` ms from the first sign of a file of the name `sign` there, kills it. */
function written(words: string[], after?: number, sign = '.lock'): Promise<Run> {
  return new Promise((done) => {
    let [began, seen] = [0, false];
    const watcher = watch(out, (_, name) => {
      if (began === 0) began = performance.now();
      if (seen || name !== sign) return;
      seen = true;
      if (after !== undefined) setTimeout(() => child.kill('SIGKILL'), after);
    });
    const child = spawn(process.execPath, words, { cwd: dir, stdio: 'ignore' });
    child.on('exit', (status, ended) => {
      watcher.close();
      done({ wrote: performance.now() - began, status, cut: ended !== null });
    });
  });
}

const made = (which: number): string[] => [BUILT, 'make', jobs[which % 2]!];
const writer = (which: number): string[] => [
  '--input-type=module',
  '-e',
  WRITER,
  '-',
  folder,
  join(dir, `whole-${which % 2}`),
  out,
];

let dir: string;
let out: string;
/** Where the writing of folders is, built by itself. */
let folder: string;
let jobs: string[];
/** What the folder holds after each of the two jobs, and how long the second took to write it, ms. */
const wholes: State[] = [];
let wrote: number;

beforeAll(async () => {
  dir = mkdtempSync(join(tmpdir(), 'evenfield-'));
  out = join(dir, 'out', 'mat');
  jobs = [smallJob(dir, 'diamond', 'one.job.yaml'), smallJob(dir, 'lozenge', 'two.job.yaml')];
  mkdirSync(out, { recursive: true });
  for (const at of jobs.keys()) {
    const run = await written(made(at));
    expect(run.status).toBe(0);
    wrote = run.wrote;
    wholes.push(state());
    cpSync(out, join(dir, `whole-${at}`), { recursive: true, filter: (path) => !path.endsWith('.written.json') });
  }
  expect(wholes[0]!['layout.json']).not.toBe(wholes[1]!['layout.json']);
  await build({
    configFile: false,
    root: resolve(import.meta.dirname, '../..'),
    logLevel: 'error',
    build: { ssr: 'src/write/folder.ts', outDir: join(dir, 'built'), target: 'node20', minify: false },
  });
  folder = pathToFileURL(join(dir, 'built', readdirSync(join(dir, 'built'))[0]!)).href;
});
beforeEach(() => mkdirSync(out, { recursive: true }));
afterAll(() => rmSync(dir, { recursive: true, force: true }));

/** Kills as many runs as asked, and looks at the folder after each. */
async function killed(kills: number, seed: number, words: (which: number) => string[]): Promise<void> {
  const random = chance(seed);
  let [cut, halfway] = [0, 0];
  for (let round = 1; cut < kills && round < 4 * kills + 4; round++) {
    // Half of them anywhere in the writing, half where the files are about to change places, which is over in a moment.
    const run =
      random() < 0.5
        ? await written(words(round), random() * wrote)
        : await written(words(round), random() * random() * 6, '.stage-.written.json');
    if (run.cut) cut++;
    if (existsSync(join(out, '.lock'))) halfway++;
    for (const [name, bytes] of Object.entries(state()))
      expect(
        wholes.some((whole) => whole[name] === bytes),
        `${name} after kill ${cut}`,
      ).toBe(true);
  }
  expect(cut).toBe(kills);
  expect(halfway).toBeGreaterThanOrEqual(Math.ceil(kills / 5));
  expect((await written(writer(0))).status).toBe(0);
  expect(state()).toEqual(wholes[0]);
  expect(hidden()).toEqual(['.written.json']);
}

/** Of the whole command, more of them on wish: `EVENFIELD_KILLS=200 npx vitest run tests/cli/kill.test.ts`. */
const KILLS = Number(process.env.EVENFIELD_KILLS ?? 2);
/** Of the writing alone, which is quicker. */
const WRITES = Math.max(30, KILLS);

test(
  `${WRITES} runs killed in the middle of writing leave only whole files, and the next run needs no leave`,
  () => killed(WRITES, 20, writer),
  WRITES * 10_000,
);

test(
  `${KILLS} runs of make killed in the middle of writing leave only whole files, and the next run needs no leave`,
  () => killed(KILLS, 7, made),
  KILLS * 15_000 + 60_000,
);

// A shell sees 130 and 143 (POSIX, Shell Command Language, 2.8.2: 128 and the number of the signal; signal.h: SIGINT is 2, SIGTERM 15).
test.each([
  ['SIGINT', 130],
  ['SIGTERM', 143],
] as const)('%s while the files are made: one line, and nothing is written', async (signal, status) => {
  const { out: said, ...ended } = await running(dir, ['make', jobs[0]!, '--out', 'fresh'], async (child, time) => {
    if (time > 1) return;
    await pause(300);
    child.kill(signal);
  });
  expect(ended).toEqual({ status, err: 'evenfield: stopped before anything was written\n' });
  expect(said).toBe('');
  expect(existsSync(join(dir, 'fresh'))).toBe(false);
});

test('SIGTERM while the files are written: one whole set or the other, and nothing lying about', async () => {
  await written(writer(0));
  const ended = await running(dir, ['make', jobs[1]!], async (child, time) => {
    if (time < 2) return;
    await pause(5);
    child.kill('SIGTERM');
  });
  // Heard in time, it leaves the old set, and says so; too late, the new one.
  const stopped = ended.err !== '';
  if (stopped) expect(ended).toEqual({ status: 143, out: '', err: 'evenfield: stopped before anything was changed\n' });
  else expect([0, 143]).toContain(ended.status);
  expect(state()).toEqual(wholes[stopped ? 0 : 1]);
  expect(hidden()).toEqual(['.written.json']);
});

test('Ctrl-C before anything is written takes the folders away that were made for it', async () => {
  const ended = await running(dir, ['make', jobs[0]!, '--out', join('new', 'place')], (child, time) => {
    if (time === 2) child.kill('SIGINT');
  });
  expect(ended).toEqual({ status: 130, out: '', err: 'evenfield: stopped before anything was changed\n' });
  expect(existsSync(join(dir, 'new'))).toBe(false);
});

test('four runs at once on one folder: all end well, and the folder holds one whole set', async () => {
  const runs = await Promise.all([0, 1, 0, 1].map((which) => written(writer(which))));
  expect(runs.map(({ status }) => status)).toEqual([0, 0, 0, 0]);
  expect(wholes).toContainEqual(state());
  expect(hidden()).toEqual(['.written.json']);
});
