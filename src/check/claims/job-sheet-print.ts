import { type Claim, equal, type Proof, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { type Block, plainWords, readBlocks } from '../read/blocks.ts';
import { readPdfText, type TextPage } from '../read/pdf-text.ts';

const FILE = 'job-sheet.pdf';
const PAGE = 'job-sheet.html';

export const proof: Proof = {
  claims: 'screen and print say the same, nothing less and nothing more',
  files: ['job-sheet.html', 'job-sheet.pdf', 'layout.json'],
  method:
    'blocks of the page looked for in the text of the PDF in their order, and what is left over looked for on the page',
  tolerance: 'none',
};

/** The job sheet says the same on the screen and in print: every block of the page, in its order, and no number that is not there. */
export default async function jobSheetPrint(set: FileSet): Promise<Claim[]> {
  const [text, content, layout] = [set.text(PAGE), set.content(FILE), set.layout()];
  if (content === undefined && !(text.ok && text.value.includes(FILE))) return [];
  const claim = 'the printed job sheet says what the one for the screen says';
  const blocks = set.read(PAGE, readBlocks);
  if (!blocks.ok) return [unproven(FILE, claim, blocks.says)];
  const pdf = await set.bytes(FILE, readPdfText);
  if (!pdf) return [unproven(FILE, claim, 'there is no PDF')];
  if (!pdf.ok) return [unproven(FILE, claim, pdf.says)];
  const title = layout.ok ? plainWords(layout.value.job.title) : '';
  const printed = ` ${pdf.value.map(wordsOf).join(' ')} `;
  const said = blocks.value.flatMap((block) => asPrinted(block, title));
  const { missing, rests } = compare(printed, said);
  const other = oddNumber(printed, said);
  // Heads of tables come again on a new page; what a figure shows is told on the page without being seen.
  const shown = text.ok ? plainWords(withoutTags(text.value)) : '';
  const more = rests.map(withoutFigures).find((words) => !shown.includes(words));
  return [
    equal(FILE, claim, missing === undefined ? 'all of it' : `not ${missing.slice(0, 80)}`, 'all of it'),
    equal(FILE, 'the printed job sheet says nothing else', more?.slice(0, 80) ?? 'nothing', 'nothing'),
    equal(FILE, 'no other number stands on the printed job sheet', other ?? 'none', 'none'),
  ];
}

/** The words of a page without its foot, the title of the work and the number of the page. */
function wordsOf({ runs }: TextPage): string {
  const foot = runs.findIndex(({ text }) => /^page \d+ of \d+$/.test(text));
  return plainWords(
    runs
      .filter((_, at) => foot < 0 || (at !== foot && at !== foot - 1))
      .map(({ text }) => text)
      .join(' '),
  );
}

/** A box to tick has a head on the screen only; the title stands at the foot of every printed page. */
function asPrinted({ tag, cells }: Block, title: string): string[] {
  const kept = cells[0] === 'Done' ? cells.slice(1) : cells;
  const words = kept
    .filter((cell) => cell !== '')
    .join(' ')
    .replace(tag === 'h3' ? /^(\d+)(?=[^\d\s])/ : /^$/, '$1 ');
  return words === '' || (tag === 'h1' && words === title) ? [] : [words];
}

/** What stands under figures in print, where the page for the screen shows the figure alone. */
const FIGURES = [
  'How to cut and fold the cloth: cut edge, trimmed edge, corners to cut off, fold lines, finished edge and centre lines.',
  'The risers from the bottom up, each as it was measured, with its panel on the centre line.',
  'The treads from the bottom up, each as it was measured, with its panel on the centre line.',
  'The floor as it will be. The sheets go on past the walls; what falls beyond them falls on the mask.',
  'Find the axis by its two distances along the near and far wall, then lay the work on it. The short lines are what is left to the walls; measure them before any paint goes on.',
];
const withoutFigures = (words: string): string =>
  plainWords(FIGURES.reduce((rest, figure) => rest.replace(figure, ' '), words));

/** Tags as spaces, so that words of neighbouring cells are apart. */
const withoutTags = (text: string): string =>
  text
    .replace(/<\/?span\b[^<>]*>/g, '')
    .replace(/<[^<>]*>/g, ' ')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');

/** The first words that are not printed in their turn, and what stands between those that are. */
function compare(printed: string, said: readonly string[]): { missing?: string; rests: string[] } {
  const rests: string[] = [];
  let at = 0;
  for (const words of said) {
    const found = printed.indexOf(` ${words} `, at);
    if (found < 0) return { missing: words, rests };
    const rest = printed.slice(at, found).trim();
    if (rest !== '') rests.push(rest);
    at = found + words.length + 1;
  }
  const rest = printed.slice(at).trim();
  return { rests: rest === '' ? rests : [...rests, rest] };
}

/** A number that stands in print and nowhere on the screen. */
function oddNumber(printed: string, said: readonly string[]): string | undefined {
  const numbers = (words: string): string[] => words.match(/\d[\d.,/]*/g) ?? [];
  const due = new Set(numbers(said.join(' ')));
  return numbers(printed).find((number) => !due.has(number));
}
