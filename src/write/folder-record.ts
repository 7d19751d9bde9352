import { createHash } from 'node:crypto';
import { lstat, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { troubleCode } from './folder-trouble.ts';

/** What a run wrote: file name to SHA-256 of its bytes. Kept in the folder, so that an edited file is known from one of ours. */
export type Written = Map<string, string>;

/** The finished record, and the one of a run that has begun to put its files in place. */
export const RECORD = '.written.json';
export const INTENT = '.writing.json';

export const digest = (bytes: string | Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

export function writeRecord(written: Written): string {
  const files = Object.fromEntries([...written].sort(([a], [b]) => (a < b ? -1 : 1)));
  return `${JSON.stringify({ evenfield: 1, files }, null, 2)}\n`;
}

/** Reads a record. A missing or unreadable one counts as empty: then every file in the folder is a stranger. */
export async function readRecord(path: string): Promise<Written> {
  try {
    const read = JSON.parse(await readFile(path, 'utf8')) as { files?: unknown };
    const pairs = Object.entries(read.files ?? {}).filter(([, sum]) => typeof sum === 'string');
    return new Map(pairs as [string, string][]);
  } catch {
    return new Map();
  }
}

/** What lies under a name now: nothing, an ordinary file (with its digest), or something that is never written over. */
export type Found = { kind: 'nothing' } | { kind: 'file'; sum: string } | { kind: 'link' | 'folder' | 'other' };

export async function findFile(dir: string, name: string): Promise<Found> {
  const path = join(dir, name);
  try {
    const stat = await lstat(path);
    if (stat.isSymbolicLink()) return { kind: 'link' };
    if (stat.isDirectory()) return { kind: 'folder' };
    if (!stat.isFile()) return { kind: 'other' };
    return { kind: 'file', sum: digest(await readFile(path)) };
  } catch (error) {
    if (troubleCode(error) === 'ENOENT') return { kind: 'nothing' };
    throw error;
  }
}
