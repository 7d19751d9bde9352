import { open, readdir, stat } from 'node:fs/promises';
import { basename, dirname, resolve } from 'node:path';
import { fail, good, type Result } from '../issue.ts';
import { nearestName } from '../motif/nearest.ts';
import { trouble, troubleCode } from '../write/folder-trouble.ts';
import { shownPath } from './talk.ts';

/** A font or a drawing that a job names. Bytes. */
const LARGEST_ASSET = 20_000_000;

async function missing(path: string, given: string): Promise<Result<never>> {
  const names = await readdir(dirname(path)).catch(() => []);
  const near = nearestName(basename(path), names.sort());
  const hint =
    near === undefined
      ? 'its path as seen from the job file, such as ./my-face.ttf beside it'
      : given.slice(0, given.length - basename(given).length) + near;
  return fail('asset/missing', [], `there is no file ${shownPath(given)} (looked for at ${shownPath(path)})`, hint);
}

/**
 * Reads files that a job names, by their paths as seen from the job file; a full path is taken as it is. Looks at what a file is and how large before
 * reading any of it.
 * Issues: `asset/missing`, `asset/kind`, `asset/large`, `asset/unreadable`.
 */
export const assetReader =
  (job: string) =>
  async (given: string): Promise<Result<Uint8Array>> => {
    const path = resolve(dirname(job), given);
    const name = shownPath(given);
    try {
      const kind = await stat(path);
      if (!kind.isFile())
        return fail(
          'asset/kind',
          [],
          `${name} is ${kind.isDirectory() ? 'a folder' : 'not an ordinary file'}`,
          'the file itself',
        );
      if (kind.size > LARGEST_ASSET)
        return fail(
          'asset/large',
          [],
          `${name} holds ${Math.round(kind.size / 1e6)} MB; at most 20 MB are read`,
          'a smaller file',
        );
      const file = await open(path, 'r');
      try {
        return good(new Uint8Array(await file.readFile()));
      } finally {
        await file.close();
      }
    } catch (error) {
      if (troubleCode(error) === 'ENOENT') return missing(path, given);
      if (troubleCode(error) === undefined) throw error;
      return fail('asset/unreadable', [], `cannot read ${name}: ${trouble(error)}`, 'a file that can be read');
    }
  };
