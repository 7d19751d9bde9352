import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, watch } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { BUILT, evenfield, smallJob } from './support.ts';

type State = Record<string, string>;

const state = (): State =>
  Object.fromEntries(
    readdirSync(out)
      .filter((name) => !name.startsWith('.'))
      .sort()
      .map((name) => [name, readFileSync(join(out, name)).toString('latin1')]),
  );

/** The same numbers on every run (a linear congruence, Numerical Recipes, ranqd1). */
function chance(seed: number): () => number {
  let value = seed;
  return () => {
    value = (Math.imul(value, 1664525) + 1013904223) >>> 0;
    return value / 2 ** 32;
  };
}

interface Run {
  /** ms from the first sign of writing to the end of the process. */
  wrote: number;
  /** Whether the signal found it still at work. */
  cut: boolean;
}

/** Makes a job; `after` ms from the moment it begins to write, sends the signal. */
function make(job: string, signal?: NodeJS.Signals, after = 0): Promise<Run> {
  return new Promise((resolve) => {
    let began = 0;
    const child = spawn(process.execPath, [BUILT, 'make', job], { cwd: dir, stdio: 'ignore' });
    const watcher = watch(out, (_, name) => {
      if (began > 0 || name !== '.lock') return;
      began = performance.now();
      if (signal !== undefined) setTimeout(() => child.kill(signal), after);
    });
    child.on('exit', (_, ended) => {
      watcher.close();
      resolve({ wrote: performance.now() - began, cut: ended !== null });
    });
  });
}

let dir: string;
let out: string;
let jobs: string[];
/** What the folder holds after each of the two jobs, and how long the second took to write it, ms. */
const wholes: State[] = [];
let wrote: number;

beforeAll(async () => {
  dir = mkdtempSync(join(tmpdir(), 'evenfield-'));
  out = join(dir, 'out', 'mat');
  jobs = [smallJob(dir, 'diamond', 'one.job.yaml'), smallJob(dir, 'lozenge', 'two.job.yaml')];
  mkdirSync(out, { recursive: true });
  for (const job of jobs) {
    ({ wrote } = await make(job));
    wholes.push(state());
  }
  expect(wholes[0]!['layout.json']).not.toBe(wholes[1]!['layout.json']);
});
afterAll(() => rmSync(dir, { recursive: true, force: true }));

/** More of them on wish: `EVENFIELD_KILLS=200 npx vitest run tests/cli/kill.test.ts`. */
const KILLS = Number(process.env.EVENFIELD_KILLS ?? 20);

test(
  `${KILLS} runs killed in the middle of writing leave only whole files, and the next run needs no leave`,
  async () => {
    const random = chance(20);
    let cut = 0;
    let halfway = 0;
    for (let round = 0; cut < KILLS && round < 4 * KILLS; round++) {
      const run = await make(jobs[round % 2]!, 'SIGKILL', random() * wrote);
      if (run.cut) cut++;
      if (existsSync(join(out, '.lock'))) halfway++;
      for (const [name, bytes] of Object.entries(state()))
        expect(
          wholes.some((whole) => whole[name] === bytes),
          `${name} after kill ${cut}`,
        ).toBe(true);
    }
    expect(cut).toBe(KILLS);
    expect(halfway).toBeGreaterThan(KILLS / 5);
    const last = evenfield(dir, ['make', jobs[0]!]);
    expect([last.status, last.err]).toEqual([0, '']);
    expect(state()).toEqual(wholes[0]);
    expect(readdirSync(out).filter((name) => name.startsWith('.'))).toEqual(['.written.json']);
  },
  KILLS * 15_000,
);

test('Ctrl-C in the middle of writing leaves one whole set or the other, and nothing lying about', async () => {
  const random = chance(5);
  let cut = 0;
  for (let round = 0; round < 6; round++) {
    const run = await make(jobs[round % 2]!, 'SIGINT', random() * wrote * 0.6);
    if (run.cut) cut++;
    expect(wholes).toContainEqual(state());
    expect(readdirSync(out).filter((name) => name.startsWith('.'))).toEqual(['.written.json']);
  }
  expect(cut).toBeGreaterThan(0);
}, 120_000);

test('two runs at once on one folder: both end well, and the folder holds one whole set', async () => {
  await Promise.all([make(jobs[0]!), make(jobs[1]!)]);
  expect(wholes).toContainEqual(state());
  expect(readdirSync(out).filter((name) => name.startsWith('.'))).toEqual(['.written.json']);
}, 120_000);
