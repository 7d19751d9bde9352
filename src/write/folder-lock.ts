import { open, readFile, rename, rm, stat } from 'node:fs/promises';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { troubleCode } from './folder-trouble.ts';

export const LOCK = '.lock';

/** A run writes for a few seconds at most. A lock this old (ms) was left behind, whatever its process number says. */
const OLD = 10 * 60_000;
/** A lock without readable text this old (ms) was left by a run that ended between making and filling it. */
const BLANK = 5_000;

export interface Lock {
  /** False when somebody took the lock away in the meantime. */
  held(): Promise<boolean>;
  release(): Promise<void>;
}

function alive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return troubleCode(error) === 'EPERM';
  }
}

/** The process that holds the lock, or undefined when the lock is stale. `pid` is 0 when it cannot be told. */
async function holder(path: string, text: string): Promise<{ pid: number } | undefined> {
  const age = Date.now() - (await stat(path)).mtimeMs;
  const [pid, host] = text.trim().split(' ');
  if (host === undefined || !/^\d+$/.test(pid ?? '')) return age > BLANK ? undefined : { pid: 0 };
  if (age > OLD) return undefined;
  if (host === hostname() && !alive(Number(pid))) return undefined;
  return { pid: Number(pid) };
}

/** Takes a stale lock away, unless somebody else replaced it since it was read. */
async function clear(path: string, text: string): Promise<void> {
  const aside = `${path}-${process.pid}`;
  await rename(path, aside);
  const taken = await readFile(aside, 'utf8');
  if (taken === text) await rm(aside, { force: true });
  else await rename(aside, path);
}

async function create(path: string, text: string): Promise<boolean> {
  try {
    const file = await open(path, 'wx');
    await file.writeFile(text).finally(() => file.close());
    return true;
  } catch (error) {
    if (troubleCode(error) === 'EEXIST') return false;
    throw error;
  }
}

/**
 * Locks a folder for one run at a time: a file with the process number and the machine's name.
 * Waits for another run, up to `patience` ms, and no longer once `stop` says so. A lock whose process is gone is cleared.
 * @returns the lock, or the process that holds it (`pid` 0 when it cannot be told)
 */
export async function takeLock(
  dir: string,
  patience: number,
  stop: () => boolean,
): Promise<{ ok: true; lock: Lock } | { ok: false; pid: number }> {
  const path = join(dir, LOCK);
  const mine = `${process.pid} ${hostname()}\n`;
  const until = Date.now() + patience;
  for (;;) {
    if (await create(path, mine)) break;
    try {
      const text = await readFile(path, 'utf8');
      const other = await holder(path, text);
      if (other === undefined) await clear(path, text);
      else if (stop() || Date.now() >= until) return { ok: false, pid: other.pid };
      else await pause(50);
    } catch (error) {
      if (troubleCode(error) !== 'ENOENT') throw error;
    }
  }
  const held = async () => (await readFile(path, 'utf8').catch(() => '')) === mine;
  return {
    ok: true,
    lock: {
      held,
      release: async () => {
        if (await held()) await rm(path, { force: true });
      },
    },
  };
}
