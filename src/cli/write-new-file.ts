import { link, lstat, open, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { fail, good, type Result } from '../issue.ts';
import { trouble, troubleCode } from '../write/folder-trouble.ts';
import { shownPath } from './talk.ts';

/** The refusal to write over a file. */
export const exists = (path: string) =>
  fail(
    'file/exists',
    [],
    `there is a file ${shownPath(path)} already`,
    'choose another name, or write over it with --replace',
  );

/** Gives the file its name unless that is taken. Where the disk knows no links, a moment is left in which it could be. */
async function placeNew(waiting: string, path: string): Promise<void> {
  try {
    await link(waiting, path);
  } catch (error) {
    if (troubleCode(error) === 'EEXIST') throw error;
    await rename(waiting, path);
  }
}

/**
 * Writes one text file, whole or not at all. Without `replace` a file of that name stays as it is.
 * Issues: `file/exists`, `file/in-the-way` (a folder or a link), `file/unwritable`.
 */
export async function writeNewFile(path: string, text: string, replace: boolean): Promise<Result<string>> {
  const waiting = join(dirname(path), `.${basename(path)}.${process.pid}.tmp`);
  try {
    const there = await lstat(path).catch(() => undefined);
    if (there !== undefined && !there.isFile())
      return fail('file/in-the-way', [], `${shownPath(path)} is a folder or a link`, 'choose another name');
    if (there !== undefined && !replace) return exists(path);
    const file = await open(waiting, 'wx');
    await file
      .writeFile(text)
      .then(() => file.sync())
      .finally(() => file.close());
    await (replace ? rename(waiting, path) : placeNew(waiting, path));
    return good(path);
  } catch (error) {
    const code = troubleCode(error);
    if (code === undefined) throw error;
    if (code === 'EEXIST') return exists(path);
    const says =
      code === 'ENOENT'
        ? `there is no folder ${shownPath(dirname(path))}`
        : `cannot write ${shownPath(path)}: ${trouble(error)}`;
    return fail('file/unwritable', [], says);
  } finally {
    await rm(waiting, { force: true }).catch(() => undefined);
  }
}
