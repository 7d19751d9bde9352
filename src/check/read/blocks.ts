import { readPage } from './page.ts';
import { type Read, read } from './read.ts';

/** One paragraph, heading, item or row of a page. */
export interface Block {
  /** `p`, `li`, `tr`, `dt`, `dd`, `h2` … */
  tag: string;
  /** Its cells, where it is a row; else all of it in one. */
  cells: string[];
}

const ENDS = /<\/(p|li|tr|dd|dt|h[1-6])\s*>/i;

/** What a page says, block by block, as it stands there; drawings left out. Primes and apostrophes as they are typed. */
export function readBlocks(text: string): Read<Block[]> {
  const page = readPage(text);
  if (!page.ok) return page;
  const pieces = withoutDrawings(text).split(ENDS);
  const blocks: Block[] = [];
  for (let at = 0; at + 1 < pieces.length; at += 2) {
    const tag = pieces[at + 1]!.toLowerCase();
    const cells = pieces[at]!.slice(Math.max(0, pieces[at]!.lastIndexOf(`<${tag}`)))
      .replace(/<\/?span\b[^<>]*>/gi, '')
      .split(/<t[hd]\b[^<>]*>/i)
      .map(wordsOf);
    const filled = cells.slice(cells.length > 1 ? 1 : 0);
    if (filled.some((cell) => cell !== '')) blocks.push({ tag, cells: filled });
  }
  return read(blocks);
}

const wordsOf = (piece: string): string => {
  const words = readPage(`<!doctype html>${piece}</html>`);
  return words.ok ? plainWords(words.value) : '';
};

/** Words with plain primes, apostrophes and single spaces. */
export const plainWords = (text: string): string =>
  text
    .replaceAll('″', '"')
    .replace(/[′’]/g, "'")
    .replace(/[\s\u00a0\u202f]+/g, ' ')
    .trim();

function withoutDrawings(text: string): string {
  const kept: string[] = [];
  let from = 0;
  for (let at = text.indexOf('<svg'); at >= 0; at = text.indexOf('<svg', from)) {
    kept.push(text.slice(from, at));
    const end = text.indexOf('</svg>', at);
    if (end < 0) return kept.join(' ');
    from = end + 6;
  }
  return [...kept, text.slice(from)].join(' ');
}
