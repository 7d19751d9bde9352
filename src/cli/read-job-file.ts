import { open, readdir, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { fail, good, type Result } from '../issue.ts';
import { nearestName } from '../motif/nearest.ts';
import { trouble, troubleCode } from '../write/folder-trouble.ts';
import { shownPath } from './talk.ts';

/** A job file is a page of text. Bytes. */
export const LARGEST_JOB = 1_000_000;

const isJob = (name: string): boolean => /\.ya?ml$/i.test(name);

/** Job files that stand in a folder; none where it cannot be looked into. */
async function jobsIn(dir: string): Promise<string[]> {
  const names = await readdir(dir).catch(() => []);
  return names.filter(isJob).sort();
}

async function missing(path: string): Promise<Result<never>> {
  const dir = dirname(path);
  const names = await jobsIn(dir);
  const near = nearestName(basename(path), names) ?? names.find((name) => name.startsWith(basename(path)));
  const hint =
    near === undefined ? `evenfield new ${shownPath(path)} writes one` : `did you mean ${shownPath(join(dir, near))}?`;
  return fail('file/missing', [], `there is no file ${shownPath(path)}`, hint);
}

async function notAFile(path: string, isFolder: boolean): Promise<Result<never>> {
  if (!isFolder) return fail('file/kind', [], `${shownPath(path)} is not an ordinary file`);
  const [first] = await jobsIn(path);
  const hint = `give the job file itself${first === undefined ? '' : `, such as ${shownPath(join(path, first))}`}`;
  return fail('file/folder', [], `${shownPath(path)} is a folder, not a job file`, hint);
}

const megabytes = (bytes: number): string => `${Math.max(1, Math.round(bytes / 1e6))} MB`;

/** Text, or why it is none. */
function decode(bytes: Uint8Array, path: string): Result<string> {
  const name = shownPath(path);
  const [a, b] = bytes;
  if ((a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff))
    return fail('file/encoding', [], `${name} is saved as UTF-16`, 'save it again with the encoding UTF-8');
  const odd = bytes.findIndex((byte) => (byte < 32 && ![9, 10, 12, 13].includes(byte)) || byte === 127);
  if (odd >= 0)
    return fail(
      'file/binary',
      [],
      `${name} is not a text file`,
      'give the *.job.yaml file you wrote, not a picture or document',
    );
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    if (text.trim() === '')
      return fail('file/empty', [], `${name} is empty`, 'evenfield new, then a name, writes a job to start from');
    return good(text);
  } catch {
    return fail('file/encoding', [], `${name} is not saved as UTF-8`, 'save it again with the encoding UTF-8');
  }
}

/**
 * Reads a job file as text. Looks at what it is and how large before reading any of it.
 * Issues, each fit to stand on one line: `file/missing`, `file/folder`, `file/kind`, `file/large`, `file/binary`,
 * `file/encoding`, `file/empty`, `file/unreadable`.
 */
export async function readJobFile(path: string): Promise<Result<string>> {
  try {
    const kind = await stat(path);
    if (!kind.isFile()) return await notAFile(path, kind.isDirectory());
    if (kind.size > LARGEST_JOB)
      return fail(
        'file/large',
        [],
        `${shownPath(path)} holds ${megabytes(kind.size)}; a job file may hold 1 MB at most`,
        'give the *.job.yaml file you wrote',
      );
    const file = await open(path, 'r');
    try {
      return decode(await file.readFile(), path);
    } finally {
      await file.close();
    }
  } catch (error) {
    if (troubleCode(error) === 'ENOENT') return missing(path);
    if (troubleCode(error) === undefined) throw error;
    return fail('file/unreadable', [], `cannot read ${shownPath(path)}: ${trouble(error)}`);
  }
}
