import { parseLength } from '../../units/index.ts';
import type { FileSet } from '../file-set.ts';
import { type Block, plainWords, readBlocks } from './blocks.ts';
import type { LayoutFile } from './layout.ts';
import { type Read, read } from './read.ts';

/** A length as it stands in a sentence, with plain primes: `9' 2 1/2"`, `5/8"`, `22.4 cm`. */
export const LENGTH = String.raw`(?:\d+'(?: (?:\d+ )?\d+(?:\/\d+)?")?|(?:\d+ )?\d+(?:\/\d+)?"|\d+(?:\.\d+)? (?:mm|cm|m)\b)`;
const WHOLE = new RegExp(`^${LENGTH}$`);
/** Beyond half a step of the tape, for numbers that lie half way, mm. */
const HALF_WAY = 1e-3;

/** What the job sheet says, and the layout that it says it of. */
export interface Said {
  blocks: Block[];
  /** Paragraphs, items and facts, each as one text; rows as their cells in one. */
  lines: string[];
  layout: LayoutFile;
  /** layout.json as it stands there. */
  json: Record<string, unknown>;
  /** Whether a length in words is one in mm, to half a step of the tape. */
  is(words: string, mm: number): boolean;
}

const readJson = (text: string): Read<Record<string, unknown>> => read(JSON.parse(text));

export function saidOf(set: FileSet): Read<Said> {
  const [layout, json] = [set.layout(), set.read('layout.json', readJson)];
  if (!layout.ok) return layout;
  if (!json.ok) return json;
  const blocks = set.read('job-sheet.html', readBlocks);
  if (!blocks.ok) return blocks;
  const { units, step } = layout.value.job;
  return read({
    blocks: blocks.value,
    lines: blocks.value.map(({ cells }) => cells.join(' ')),
    layout: layout.value,
    json: json.value,
    is: (words, mm) => {
      const found = WHOLE.test(words) ? parseLength(words, units) : undefined;
      return found?.ok === true && Math.abs(found.mm - mm) <= step / 2 + HALF_WAY;
    },
  });
}

/** What a mark is for, as drawings and the job sheet set it: `between border repeats 4 and 5` as `repeats 4–5`. */
export const shortUse = (use: string): string =>
  plainWords(use)
    .replace(/\bbetween (?:border )?([\w-]+) (\d+) and (\d+)/g, '$1 $2–$3')
    .replaceAll('border repeats', 'repeats');

/** The rows that stand under a head with these cells, up to the next block that is no row. */
export function rowsUnder(blocks: readonly Block[], head: readonly string[]): string[][] | undefined {
  const at = blocks.findIndex(({ cells }) => cells.filter((cell) => cell !== 'Done').join('|') === head.join('|'));
  if (at < 0) return undefined;
  const rest = blocks.slice(at + 1);
  const end = rest.findIndex(({ tag }) => tag !== 'tr');
  return (end < 0 ? rest : rest.slice(0, end)).map(({ cells }) => cells);
}
