import { copyFileSync, linkSync, renameSync, rmSync } from 'node:fs';
import { open, readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { LOCK } from './folder-lock.ts';

/** New files waiting to be put in place, and old ones kept until all are. */
const STAGED = '.stage-';
const KEPT = '.keep-';

/** Writes a file under its waiting name and sees it safely on the disk. */
export async function stage(dir: string, name: string, bytes: string | Uint8Array): Promise<void> {
  const file = await open(join(dir, STAGED + name), 'wx');
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** Puts one waiting file in place on its own. */
export function place(dir: string, name: string): void {
  renameSync(join(dir, STAGED + name), join(dir, name));
}

/** Takes away what this run, or one that was cut short, left waiting. A folder of such a name is of somebody else, and stays. */
export async function sweep(dir: string): Promise<void> {
  const all = await readdir(dir, { withFileTypes: true });
  const left = all.filter((one) => !one.isDirectory()).map(({ name }) => name);
  for (const name of left)
    if ([STAGED, KEPT, `${LOCK}-`].some((start) => name.startsWith(start))) await rm(join(dir, name), { force: true });
}

/** Makes the names of a folder last through a power cut, where the system allows it. */
export async function settle(dir: string): Promise<void> {
  const folder = await open(dir, 'r').catch(() => undefined);
  await folder?.sync().catch(() => undefined);
  await folder?.close();
}

function keep(path: string, aside: string): void {
  try {
    linkSync(path, aside);
  } catch {
    copyFileSync(path, aside);
  }
}

/** `fresh`: no file of that name yet. `changed`: written over. `gone`: taken away. */
export interface Move {
  name: string;
  kind: 'fresh' | 'changed' | 'gone';
}

/** Makes one move, and returns what takes it back. */
function move(dir: string, { name, kind }: Move): () => void {
  const path = join(dir, name);
  const aside = join(dir, KEPT + name);
  if (kind === 'gone') {
    renameSync(path, aside);
  } else {
    if (kind === 'changed') keep(path, aside);
    place(dir, name);
  }
  return kind === 'fresh' ? () => rmSync(path, { force: true }) : () => renameSync(aside, path);
}

/**
 * Makes all moves in the order given, in one breath: nothing else of this process runs in between.
 * If one of them fails, everything is put back as it was and the error goes on.
 */
export function swap(dir: string, moves: Move[]): void {
  const undo: (() => void)[] = [];
  try {
    for (const one of moves) undo.push(move(dir, one));
  } catch (error) {
    for (const back of undo.reverse()) {
      try {
        back();
      } catch {
        // The others are put back all the same.
      }
    }
    throw error;
  }
}
