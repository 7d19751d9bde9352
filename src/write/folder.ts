import { lstat, mkdir, rm, rmdir, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { bad, fail, good, type Issue, type Result } from '../issue.ts';
import { LOCK, type Lock, takeLock } from './folder-lock.ts';
import {
  digest,
  type Found,
  findFile,
  INTENT,
  RECORD,
  readRecord,
  type Written,
  writeRecord,
} from './folder-record.ts';
import { type Hold, holdSignals } from './folder-signals.ts';
import { type Move, place, settle, stage, swap, sweep } from './folder-swap.ts';
import { trouble, troubleCode } from './folder-trouble.ts';

export type Files = Map<string, string | Uint8Array>;

/** File names, sorted. */
export interface Report {
  /** Everything that now stands in the folder from this run. */
  written: string[];
  /** Files of an earlier run that are no longer made. */
  removed: string[];
  /** Such files that somebody edited since, and that were therefore left. */
  kept: string[];
}

/** How long a second run waits for the first, ms. */
const PATIENCE = 5_000;
const NAME = /^[a-z0-9][a-z0-9.-]*$/;

const STOPPED = fail('write/stopped', [], 'stopped before anything was changed');

const ordered = (names: Iterable<string>): string[] => [...names].sort();

/**
 * Makes the folder and those above it. (Not by the recursive `mkdir` of Node, which never ends where the system makes
 * no folders at all, such as under /proc.)
 * @returns what takes away again those that were made here, as far as they are empty
 */
async function makeFolder(dir: string): Promise<() => Promise<void>> {
  const made: string[] = [];
  const make = async (path: string, parents: boolean): Promise<void> => {
    try {
      await mkdir(path);
      made.unshift(path);
    } catch (error) {
      if (troubleCode(error) === 'EEXIST' && (await stat(path)).isDirectory()) return;
      if (troubleCode(error) !== 'ENOENT' || !parents || dirname(path) === path) throw error;
      await make(dirname(path), true);
      await make(path, false);
    }
  };
  const undo = async () => {
    try {
      for (const path of made) await rmdir(path);
    } catch {
      // Somebody else put something in it: then it stays.
    }
  };
  try {
    await make(resolve(dir), true);
  } catch (error) {
    await undo();
    throw error;
  }
  return undo;
}

function inTheWay(dir: string, name: string, kind: Found['kind']): Issue {
  const what = { link: 'a link to somewhere else', folder: 'a folder', other: 'not an ordinary file' }[kind as string];
  return {
    code: 'write/in-the-way',
    path: [name],
    says: `${join(dir, name)} is ${what}, and is left alone`,
    hint: 'move it away, or write to another folder with --out',
  };
}

function strange(dir: string, name: string, listed: boolean): Issue {
  const why = listed ? 'was edited since it was written' : 'was not written by evenfield';
  return {
    code: listed ? 'write/edited' : 'write/stranger',
    path: [name],
    says: `${join(dir, name)} ${why}, and is left alone`,
    hint: 'keep a copy under another name, or write over it with --replace',
  };
}

/** What stands in the folder by our own hand, from a finished run or from one that was cut short. */
async function ownFiles(dir: string): Promise<Written> {
  const record = await readRecord(join(dir, RECORD));
  const intent = await readRecord(join(dir, INTENT));
  if (intent.size === 0) return record;
  const own: Written = new Map();
  for (const name of ordered(new Set([...record.keys(), ...intent.keys()]))) {
    if (!NAME.test(name)) continue;
    const found = await findFile(dir, name);
    const sum = found.kind === 'file' && found.sum === intent.get(name) ? found.sum : record.get(name);
    if (found.kind !== 'nothing' && sum !== undefined) own.set(name, sum);
  }
  await stage(dir, RECORD, writeRecord(own));
  place(dir, RECORD);
  await rm(join(dir, INTENT));
  return own;
}

interface Plan {
  moves: Move[];
  removed: string[];
  kept: string[];
}

/** What is to be done to the folder, or everything that stands against it. */
async function planMoves(dir: string, sums: Written, own: Written, replace: boolean): Promise<Result<Plan>> {
  const moves: Move[] = [];
  const issues: Issue[] = [];
  for (const [name, sum] of sums) {
    const found = await findFile(dir, name);
    if (found.kind === 'nothing') moves.push({ name, kind: 'fresh' });
    else if (found.kind !== 'file') issues.push(inTheWay(dir, name, found.kind));
    else if (found.sum === sum) continue;
    else if (replace || found.sum === own.get(name)) moves.push({ name, kind: 'changed' });
    else issues.push(strange(dir, name, own.has(name)));
  }
  const removed: string[] = [];
  const kept: string[] = [];
  for (const [name, sum] of own) {
    if (sums.has(name) || !NAME.test(name)) continue;
    const found = await findFile(dir, name);
    if (found.kind === 'file') (found.sum === sum ? removed : kept).push(name);
  }
  moves.push(...removed.map((name) => ({ name, kind: 'gone' as const })));
  return issues.length > 0 ? bad(...issues) : good({ moves, removed, kept });
}

/** The part that runs under the lock. */
async function writeLocked(
  dir: string,
  files: Files,
  replace: boolean,
  lock: Lock,
  hold: Hold,
): Promise<Result<Report>> {
  await sweep(dir);
  const own = await ownFiles(dir);
  const sums: Written = new Map(ordered(files.keys()).map((name) => [name, digest(files.get(name)!)]));
  const plan = await planMoves(dir, sums, own, replace);
  if (!plan.ok) return plan;
  const { moves, removed, kept } = plan.value;
  const before = await findFile(dir, RECORD);
  try {
    for (const { name, kind } of moves) {
      if (kind !== 'gone') await stage(dir, name, files.get(name)!);
      if (hold.raised !== undefined) return STOPPED;
    }
    await stage(dir, INTENT, writeRecord(sums));
    await stage(dir, RECORD, writeRecord(sums));
    if (!(await lock.held())) return fail('write/busy', [], `another run took over ${dir}`, 'run it again');
    place(dir, INTENT);
    await settle(dir);
    swap(dir, [...moves, { name: RECORD, kind: before.kind === 'nothing' ? 'fresh' : 'changed' }]);
  } finally {
    await rm(join(dir, INTENT), { force: true });
    await sweep(dir);
  }
  await settle(dir);
  return good({ written: [...sums.keys()], removed, kept });
}

const refused = (dir: string, why: string) =>
  fail('write/failed', [], `cannot write to ${dir}: ${why}`, 'nothing there was changed');

/** Whether there is a folder of that name or could be one, as far as can be told without making it. Issues: `write/failed`. */
export async function mayHold(dir: string): Promise<Result<undefined>> {
  try {
    return (await stat(dir)).isDirectory() ? good(undefined) : refused(dir, 'part of the path is a file, not a folder');
  } catch (error) {
    const code = troubleCode(error);
    if (code === undefined) throw error;
    return code === 'ENOENT' ? good(undefined) : refused(dir, trouble(error));
  }
}

/**
 * Writes a set of files into a folder, all of them or none: each is written whole beside its place and moved there once
 * all are safe on the disk. A record in the folder tells files of ours from files of others and from edited ones; those
 * are never written over unless `replace` is set. Files of an earlier run that are no longer made are taken away.
 *
 * @param options `replace`: also over files of others; `patience`: how long to wait for another run, ms
 * Issues: `write/name` (not a plain name of small letters, digits, dots and hyphens), `write/in-the-way` (a link or a
 * folder of that name), `write/stranger`, `write/edited`, `write/busy` (another run is writing there), `write/stopped`,
 * `write/failed` (the system refused). After any of them the files are as they were.
 */
export async function writeFolder(
  dir: string,
  files: Files,
  options: { replace?: boolean; patience?: number } = {},
): Promise<Result<Report>> {
  for (const name of files.keys()) {
    if (!NAME.test(name)) return fail('write/name', [name], `${JSON.stringify(name)} is no name for a file in ${dir}`);
  }
  let undo = async () => {};
  let lock: Lock | undefined;
  const hold = holdSignals();
  try {
    const there = await lstat(dir).catch(() => undefined);
    if (there?.isSymbolicLink()) return bad(inTheWay(dirname(dir), basename(dir), 'link'));
    undo = await makeFolder(dir);
    for (const name of [LOCK, RECORD, INTENT]) {
      const { kind } = await findFile(dir, name);
      if (kind !== 'file' && kind !== 'nothing') return bad(inTheWay(dir, name, kind));
    }
    const taken = await takeLock(dir, options.patience ?? PATIENCE, () => hold.raised !== undefined);
    if (taken.ok) lock = taken.lock;
    if (hold.raised !== undefined) return STOPPED;
    if (!taken.ok) {
      const who = taken.pid === 0 ? 'another run' : `another run (process ${taken.pid})`;
      return fail('write/busy', [], `${who} is writing to ${dir}`, 'wait until it is done, then run it again');
    }
    const result = await writeLocked(dir, files, options.replace === true, taken.lock, hold);
    if (result.ok) undo = async () => {};
    return result;
  } catch (error) {
    if (troubleCode(error) === undefined) throw error;
    return refused(dir, trouble(error));
  } finally {
    await lock?.release().catch(() => undefined);
    await undo();
    hold.release();
  }
}
