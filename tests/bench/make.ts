import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join, resolve } from 'node:path';
import { median, type Row } from './row.ts';

const ROUNDS = 5;
/** Milliseconds. */
const LIMIT = 2000;
const BUILT = resolve('dist/evenfield.js');

/** Milliseconds from start to end of a Node process. */
function time(words: string[]): number {
  const began = performance.now();
  const { status, stderr } = spawnSync(process.execPath, words, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`node ${words.join(' ')} ended with ${status}: ${stderr}`);
  return performance.now() - began;
}

/** `evenfield make` on every sample, from the start of the process to the last file on disk; the slowest is held to the limit. */
export async function bench(): Promise<Row[]> {
  if (!existsSync(BUILT)) throw new Error(`${BUILT} is not built; npm run build makes it`);
  const out = mkdtempSync(join(tmpdir(), 'evenfield-bench-'));
  const make = (sample: string) => time([BUILT, 'make', `samples/${sample}`, '--out', join(out, sample)]);
  const samples = readdirSync('samples').filter((name) => name.endsWith('.job.yaml'));
  const once = samples.map((sample) => ({ sample, ms: make(sample) })).sort((a, b) => b.ms - a.ms);
  const bare = time(['-e', '0']);
  const [slowest] = once;
  const ms = median(Array.from({ length: ROUNDS }, () => make(slowest!.sample)));
  rmSync(out, { recursive: true, force: true });
  return [
    {
      row: `make: the slowest of ${samples.length} samples, ${basename(slowest!.sample, '.job.yaml')}`,
      figure: `${ms.toFixed(0)} ms (${(ms / bare).toFixed(0)} × node -e 0)`,
      limit: `under ${LIMIT} ms`,
      holds: ms < LIMIT,
    },
  ];
}
