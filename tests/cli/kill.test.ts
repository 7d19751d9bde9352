import { spawn } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, watch } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { BUILT, evenfield, folder, smallJob } from './support.ts';

type State = Record<string, string>;

const state = (dir: string): State =>
  Object.fromEntries(
    readdirSync(dir)
      .filter((name) => !name.startsWith('.'))
      .sort()
      .map((name) => [name, readFileSync(join(dir, name)).toString('latin1')]),
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
function make(dir: string, job: string, signal?: NodeJS.Signals, after = 0): Promise<Run> {
  return new Promise((resolve) => {
    let began = 0;
    const child = spawn(process.execPath, [BUILT, 'make', job], { cwd: dir, stdio: 'ignore' });
    const watcher = watch(join(dir, 'out', 'mat'), (_, name) => {
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

async function setUp(): Promise<{ dir: string; out: string; jobs: string[]; wholes: State[]; wrote: number }> {
  const dir = folder();
  const jobs = [smallJob(dir, 'diamond', 'one.job.yaml'), smallJob(dir, 'lozenge', 'two.job.yaml')];
  const out = join(dir, 'out', 'mat');
  mkdirSync(out, { recursive: true });
  const wholes: State[] = [];
  let wrote = 0;
  for (const job of jobs) {
    ({ wrote } = await make(dir, job));
    wholes.push(state(out));
  }
  expect(wholes[0]!['layout.json']).not.toBe(wholes[1]!['layout.json']);
  return { dir, out, jobs, wholes, wrote };
}

test('twenty runs killed in the middle of writing leave only whole files, and the next run needs no leave', async () => {
  const { dir, out, jobs, wholes, wrote } = await setUp();
  const random = chance(20);
  let cut = 0;
  for (let round = 0; cut < 20 && round < 80; round++) {
    const run = await make(dir, jobs[round % 2]!, 'SIGKILL', random() * wrote);
    if (run.cut) cut++;
    for (const [name, bytes] of Object.entries(state(out)))
      expect(
        wholes.some((whole) => whole[name] === bytes),
        `${name} after kill ${cut}`,
      ).toBe(true);
  }
  expect(cut).toBe(20);
  const last = evenfield(dir, ['make', jobs[0]!]);
  expect([last.status, last.err]).toEqual([0, '']);
  expect(state(out)).toEqual(wholes[0]);
  expect(readdirSync(out).filter((name) => name.startsWith('.'))).toEqual(['.written.json']);
}, 300_000);

test('Ctrl-C in the middle of writing leaves one whole set or the other, and nothing lying about', async () => {
  const { dir, out, jobs, wholes, wrote } = await setUp();
  const random = chance(5);
  let cut = 0;
  for (let round = 0; round < 6; round++) {
    const run = await make(dir, jobs[round % 2]!, 'SIGINT', random() * wrote * 0.6);
    if (run.cut) cut++;
    expect(wholes).toContainEqual(state(out));
    expect(readdirSync(out).filter((name) => name.startsWith('.'))).toEqual(['.written.json']);
  }
  expect(cut).toBeGreaterThan(0);
}, 120_000);

test('two runs at once on one folder: both end well, and the folder holds one whole set', async () => {
  const { dir, out, jobs, wholes } = await setUp();
  await Promise.all([make(dir, jobs[0]!), make(dir, jobs[1]!)]);
  expect(wholes).toContainEqual(state(out));
  expect(readdirSync(out).filter((name) => name.startsWith('.'))).toEqual(['.written.json']);
}, 120_000);
