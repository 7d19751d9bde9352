import { open, readdir, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { fail, good, type Result } from '../issue.ts';
import { textOf } from '../job/text.ts';
import { nearestName } from '../motif/nearest.ts';
import { trouble, troubleCode } from '../write/folder-trouble.ts';
import { shownPath } from './talk.ts';

/** A job file is a page of text. Bytes. */
const LARGEST_JOB = 1_000_000;

const isJob = (name: string): boolean => /\.ya?ml$/i.test(name);

/** Job files that stand in a folder; none where it cannot be looked into. */
async function jobsIn(dir: string): Promise<string[]> {
  const names = await readdir(dir).catch(() => []);
  return names.filter(isJob).sort();
}

/** How a file of this kind is named in what is said of it, and how one comes to be. */
interface FileWords {
  kind: string;
  begin(path: string): string;
  give: string;
  /** What an empty one is begun with. */
  start: string;
}

const WORDS: Record<'job' | 'house', FileWords> = {
  job: {
    kind: 'job file',
    begin: (path) => `evenfield new ${path} writes one`,
    give: 'the *.job.yaml file you wrote',
    start: 'evenfield new, then a name, writes a job to start from',
  },
  house: {
    kind: 'house file',
    begin: () => 'the file that your jobs name after `house:`, its path as seen from here',
    give: 'the file that your jobs name after `house:`',
    start: 'palette, colours, field and what else the jobs share',
  },
};

async function missing(path: string, words: FileWords): Promise<Result<never>> {
  const dir = dirname(path);
  const names = await jobsIn(dir);
  const near = nearestName(basename(path), names) ?? names.find((name) => name.startsWith(basename(path)));
  const hint = near === undefined ? words.begin(shownPath(path)) : `did you mean ${shownPath(join(dir, near))}?`;
  return fail('file/missing', [], `there is no file ${shownPath(path)}`, hint);
}

async function notAFile(path: string, isFolder: boolean, { kind }: FileWords): Promise<Result<never>> {
  if (!isFolder) return fail('file/kind', [], `${shownPath(path)} is not an ordinary file`);
  const [first] = await jobsIn(path);
  const hint = `give the ${kind} itself${first === undefined ? '' : `, such as ${shownPath(join(path, first))}`}`;
  return fail('file/folder', [], `${shownPath(path)} is a folder, not a ${kind}`, hint);
}

const megabytes = (bytes: number): string => `${Math.max(1, Math.round(bytes / 1e6))} MB`;

/** Text, or why it is none. */
function decode(bytes: Uint8Array, path: string, words: FileWords): Result<string> {
  const name = shownPath(path);
  const read = textOf(bytes);
  if (read.ok) return good(read.text);
  const again = 'save it again with the encoding UTF-8';
  switch (read.trouble) {
    case 'utf-16':
      return fail('file/encoding', [], `${name} is saved as UTF-16`, again);
    case 'binary':
      return fail('file/binary', [], `${name} is not a text file`, `give ${words.give}, not a picture or document`);
    case 'empty':
      return fail('file/empty', [], `${name} is empty`, words.start);
    case 'encoding':
      return fail('file/encoding', [], `${name} is not saved as UTF-8`, again);
  }
}

/**
 * Reads a job file, or the file of a house, as text. Looks at what it is and how large before reading any of it.
 * Issues, each fit to stand on one line: `file/missing`, `file/folder`, `file/kind`, `file/large`, `file/binary`,
 * `file/encoding`, `file/empty`, `file/unreadable`.
 */
export async function readJobFile(path: string, kind: keyof typeof WORDS = 'job'): Promise<Result<string>> {
  const words = WORDS[kind];
  try {
    const found = await stat(path);
    if (!found.isFile()) return await notAFile(path, found.isDirectory(), words);
    if (found.size > LARGEST_JOB)
      return fail(
        'file/large',
        [],
        `${shownPath(path)} holds ${megabytes(found.size)}; a ${words.kind} may hold 1 MB at most`,
        `give ${words.give}`,
      );
    const file = await open(path, 'r');
    try {
      return decode(await file.readFile(), path, words);
    } finally {
      await file.close();
    }
  } catch (error) {
    if (troubleCode(error) === 'ENOENT') return missing(path, words);
    if (troubleCode(error) === undefined) throw error;
    return fail('file/unreadable', [], `cannot read ${shownPath(path)}: ${trouble(error)}`);
  }
}
