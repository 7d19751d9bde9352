import { type SpawnSyncOptions, spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { inject, onTestFinished } from 'vitest';

export const BUILT = resolve(import.meta.dirname, '../../dist/evenfield.js');

export interface Ran {
  status: number | null;
  out: string;
  err: string;
}

/** Runs the built command line as a person would, in `cwd`. */
export function evenfield(cwd: string, words: string[], options: SpawnSyncOptions = {}): Ran {
  const trouble = inject('buildTrouble');
  if (trouble !== '') throw new Error(`the command line could not be built: ${trouble}`);
  const { NO_COLOR: _, EVENFIELD_DEBUG: __, ...env } = process.env;
  const ran = spawnSync(process.execPath, [BUILT, ...words], {
    cwd,
    env,
    timeout: 150_000,
    killSignal: 'SIGKILL',
    ...options,
    encoding: 'utf8',
  });
  return { status: ran.status, out: ran.stdout, err: ran.stderr };
}

/** A folder of its own for one test, gone afterwards. */
export function folder(): string {
  const dir = mkdtempSync(join(tmpdir(), 'evenfield-'));
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  return dir;
}

/** Whether this machine has the `script` of util-linux, which runs a command on a terminal of its own. */
export const HAS_TERMINAL = /util-linux/.test(spawnSync('script', ['--version'], { encoding: 'utf8' }).stdout ?? '');

const quoted = (word: string): string => `'${word.replaceAll("'", `'\\''`)}'`;

/**
 * Runs the built command line on a terminal; what it prints comes as the terminal saw it, both streams in one.
 * @param typed what is typed, each once the text before it has appeared
 */
export function onTerminal(
  cwd: string,
  words: string[],
  env: Record<string, string> = {},
  typed: [after: string, keys: string][] = [],
): Promise<{ status: number | null; out: string }> {
  const command = [process.execPath, BUILT, ...words].map(quoted).join(' ');
  const { NO_COLOR: _, ...rest } = process.env;
  const child = spawn('script', ['-qec', command, '/dev/null'], { cwd, env: { ...rest, TERM: 'xterm', ...env } });
  const left = [...typed];
  let out = '';
  let seen = 0;
  child.stdout.on('data', (bytes) => {
    out += bytes;
    for (let next = left[0]; next !== undefined; next = left[0]) {
      const at = out.indexOf(next[0], seen);
      if (at < 0) return;
      seen = at + next[0].length;
      child.stdin.write(next[1]);
      left.shift();
    }
  });
  return new Promise((resolve) => child.on('close', (status) => resolve({ status, out })));
}

/** Texts of small jobs by their motif, so that none is written by the program twice. */
const written = new Map<string, string>();

/** A small job that is quick to make, written by the program itself. */
export function smallJob(dir: string, motif = 'diamond', file = 'mat.job.yaml'): string {
  const known = written.get(motif);
  if (known !== undefined) writeFileSync(join(dir, file), known);
  else {
    const size = ['--surface', 'floor-cloth', '--wide', '14 3/8"', '--long', `23 5/16"`];
    const { status, err } = evenfield(dir, ['new', file, ...size, '--title', 'Mat', '--motif', motif]);
    if (status !== 0) throw new Error(err);
    written.set(motif, readFileSync(join(dir, file), 'utf8'));
  }
  return file;
}
