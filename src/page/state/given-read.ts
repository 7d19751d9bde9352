import { fail, good, type Result } from '../../issue.ts';
import { textOf } from '../../job/text.ts';
import type { JobTree } from '../engine/ask.ts';

/** Bytes: a job file is a page of text; fonts, drawings and photos are larger. */
const LARGEST_JOB = 1_000_000;
export const LARGEST_FILE = 20_000_000;

const endOf = (name: string): string => /\.([a-z0-9]+)$/i.exec(name)?.[1]?.toLowerCase() ?? '';

const NAMED_BY_JOBS = new Set(['svg', 'ttf', 'otf', 'woff', 'png', 'jpg', 'jpeg']);
/** Files that jobs name: a font, a drawing, a photo of the floor. */
export const isNamedByJobs = (name: string): boolean => NAMED_BY_JOBS.has(endOf(name));

export const baseName = (path: string): string => path.split(/[\\/]/).at(-1)!;

/** A size as people read it, with two figures. */
export function sayBytes(bytes: number): string {
  if (bytes < 1000) return `${bytes} bytes`;
  const [size, unit] = bytes < 999_500 ? [bytes / 1e3, 'kB'] : [bytes / 1e6, 'MB'];
  return `${size < 9.95 ? size.toFixed(1) : size.toFixed(0)} ${unit}`;
}

const KNOWN_KINDS: [RegExp, string][] = [
  [/^(pdf)$/, 'a document to print'],
  [/^(docx?|odt|rtf|pages)$/, 'a document of a word processor'],
  [/^(xlsx?|ods|numbers)$/, 'a table of numbers'],
  [/^(zip|gz|7z|rar)$/, 'a packed folder'],
];

const BROKEN = 'save it again as plain text with the encoding UTF-8';
const INSTEAD = 'open the job file, whose name ends in .job.yaml';

/**
 * The text of a file that may be a job, or why it is none.
 * Issues: `file/large`, `file/empty`, `file/encoding`, `file/binary`.
 */
export function readText(bytes: Uint8Array, name: string): Result<string> {
  const kind = KNOWN_KINDS.find(([end]) => end.test(endOf(name)))?.[1];
  if (kind) return fail('file/binary', [], `${name} is ${kind}, not a job file`, INSTEAD);
  if (bytes.length > LARGEST_JOB)
    return fail('file/large', [], `${name} holds ${sayBytes(bytes.length)}; a job file holds 1 MB at most`, INSTEAD);
  const read = textOf(bytes);
  if (read.ok) return good(read.text);
  switch (read.trouble) {
    case 'utf-16':
      return fail('file/encoding', [], `${name} is saved as UTF-16`, BROKEN);
    case 'binary':
      return fail('file/binary', [], `${name} is not a text file`, INSTEAD);
    case 'empty':
      return fail('file/empty', [], `${name} is empty`, INSTEAD);
    case 'encoding':
      return fail('file/encoding', [], `${name} is not saved as UTF-8`, BROKEN);
  }
}

/** What only a job says. */
const JOB_KEYS = ['surface', 'site'];
const HOUSE_KEYS = ['palette', 'colours', 'field', 'border', 'lettering', 'paint'];

/** Whether a file that was read is a job, or what jobs of a house share; nothing where it is neither. */
export function kindOf(tree: JobTree): 'job' | 'house' | undefined {
  if (JOB_KEYS.some((key) => Object.hasOwn(tree, key))) return 'job';
  if (HOUSE_KEYS.some((key) => Object.hasOwn(tree, key))) return 'house';
  return Object.hasOwn(tree, 'evenfield') ? 'job' : undefined;
}
