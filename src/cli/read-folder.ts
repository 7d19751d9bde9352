import { readdir, readFile, stat } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { fail, good, type Result } from '../issue.ts';
import type { Files } from '../write/folder.ts';
import { trouble, troubleCode } from '../write/folder-trouble.ts';
import { shownPath } from './talk.ts';

/** The kinds of file that are written, and whether they are text. */
const KINDS: Record<string, boolean> = {
  '.json': true,
  '.svg': true,
  '.csv': true,
  '.html': true,
  '.png': false,
  '.pdf': false,
};

/** Larger than anything that is written here. Bytes. */
const LARGEST = 256_000_000;

/** Folders in `dir` that hold a layout. */
async function layoutsIn(dir: string): Promise<string[]> {
  const found: string[] = [];
  for (const entry of await readdir(dir, { withFileTypes: true })) {
    if (!entry.isDirectory()) continue;
    const inside = await stat(join(dir, entry.name, 'layout.json')).catch(() => undefined);
    if (inside?.isFile()) found.push(join(dir, entry.name));
  }
  return found.sort();
}

/**
 * Reads the files that `make` writes back from a folder: text as strings, pictures and pages as bytes. Other files are passed over.
 * Issues, each fit to stand on one line: `file/missing`, `file/not-a-folder`, `file/no-layout`, `file/large`, `file/unreadable`.
 */
export async function readFolder(dir: string): Promise<Result<Files>> {
  const name = shownPath(dir);
  try {
    const kind = await stat(dir);
    if (!kind.isDirectory())
      return fail('file/not-a-folder', [], `${name} is a file`, 'give the folder that evenfield make wrote');
    const files: Files = new Map();
    for (const file of (await readdir(dir)).sort()) {
      const isText = KINDS[extname(file)];
      const path = join(dir, file);
      if (isText === undefined || file.startsWith('.')) continue;
      const found = await stat(path).catch(() => undefined);
      if (!found?.isFile()) continue;
      if (found.size > LARGEST) return fail('file/large', [], `${shownPath(path)} is too large to check`);
      files.set(file, isText ? await readFile(path, 'utf8') : await readFile(path));
    }
    if (files.has('layout.json')) return good(files);
    const near = await layoutsIn(dir);
    const hint =
      near.length === 0
        ? 'give the folder that evenfield make wrote'
        : `did you mean ${near.map(shownPath).join(' or ')}?`;
    return fail('file/no-layout', [], `there is no layout.json in ${name}`, hint);
  } catch (error) {
    if (troubleCode(error) === undefined) throw error;
    if (troubleCode(error) === 'ENOENT')
      return fail('file/missing', [], `there is no folder ${name}`, 'evenfield make writes one');
    return fail('file/unreadable', [], `cannot read ${name}: ${trouble(error)}`);
  }
}
