import { type ChildProcess, spawn } from 'node:child_process';
import { BUILT } from './support.ts';

/** Told on the fourth stream each time a program begins to keep Ctrl-C waiting: `make` does once for making, and again for writing. */
const TELLS = `--import=data:text/javascript,${encodeURIComponent(
  `import { writeSync } from 'node:fs'; process.on('newListener', (name) => { if (name === 'SIGINT') writeSync(3, '!') });`,
)}`;

export interface Ended {
  /** What a shell would see: 128 and the number of the signal, where that ended it (POSIX, Shell Command Language, 2.8.2). */
  status: number | null;
  out: string;
  err: string;
}

const NUMBERS: Partial<Record<NodeJS.Signals, number>> = { SIGHUP: 1, SIGINT: 2, SIGKILL: 9, SIGTERM: 15 };

/** Runs the built command line; `held` is called when it begins to keep signals waiting, for the first time, the second. */
export function running(
  cwd: string,
  words: string[],
  held: (child: ChildProcess, time: number) => void,
): Promise<Ended> {
  const { NO_COLOR: _, EVENFIELD_DEBUG: __, ...env } = process.env;
  const child = spawn(process.execPath, [BUILT, ...words], {
    cwd,
    env: { ...env, NODE_OPTIONS: TELLS },
    stdio: ['ignore', 'pipe', 'pipe', 'pipe'],
  });
  let [out, err, times] = ['', '', 0];
  child.stdout!.on('data', (bytes) => (out += bytes));
  child.stderr!.on('data', (bytes) => (err += bytes));
  child.stdio[3]!.on('data', (bytes: Buffer) => {
    for (const _ of bytes) held(child, ++times);
  });
  return new Promise((done) =>
    child.on('close', (code, signal) => done({ status: signal === null ? code : 128 + NUMBERS[signal]!, out, err })),
  );
}
