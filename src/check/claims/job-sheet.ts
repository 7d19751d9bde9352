import { type Claim, equal, type Proof, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { readPage } from '../read/page.ts';

const FILE = 'job-sheet.html';

export const proof: Proof = {
  claims: 'names every sheet, shows the paint of the plan, fetches nothing',
  files: ['job-sheet.html', 'layout.json', 'marks.csv', 'plan.svg', 'stencil-*.svg'],
  method: 'words and path texts looked for',
  tolerance: 'none',
};

/** The job sheet names every sheet and every reading of the axis, and stands by itself. */
export default function jobSheet(set: FileSet): Claim[] {
  const [text, page] = [set.text(FILE), set.read(FILE, readPage)];
  if (!page.ok || !text.ok) return [unproven(FILE, 'the job sheet can be read', page.ok ? '' : page.says)];
  const words = plain(page.value);
  const lacks = (wanted: string[]) => wanted.find((one) => !holdsWord(words, plain(one)));
  const sheets = lacks(set.sheets().map(({ entry }) => entry.file));
  const claims = [
    equal(FILE, 'the job sheet names every sheet', sheets ? `not ${sheets}` : 'all', 'all'),
    equal(FILE, 'the job sheet stands by itself', outward(text.value) ?? 'it does', 'it does'),
  ];
  const plan = set.plan();
  if (plan.ok) {
    const painted = plan.value.svg.paths.filter((path) => path.groups.includes('paint'));
    const lines = new Set(painted.map(({ attributes }) => ` d="${attributes.d}"`));
    const missing = [...lines].filter((line) => !text.value.includes(line)).length;
    const written = set.text('plan.svg');
    // Where a few paths are used in many places, those places must be the same as well.
    const placed = written.ok ? (written.value.match(/<use\b[^>]*>\s*(?:<use\b[^>]*>\s*)*/g) ?? []) : [];
    const strayed = placed.filter((uses) => !text.value.includes(uses)).length;
    claims.push(
      equal(
        FILE,
        'the job sheet shows the paint of the plan',
        missing ? `${missing} paths are not on it` : strayed ? 'they lie elsewhere on it' : 'all',
        'all',
      ),
    );
  }
  const marks = set.marks();
  if (!marks.ok) return [...claims, unproven(FILE, 'the job sheet has every mark of the axis', marks.says)];
  const reading_ = lacks(
    marks.value.filter((row) => /^(axis|along-near|along-far|check)$/.test(row.line)).map((row) => row.tape),
  );
  return [
    ...claims,
    equal(
      FILE,
      'the job sheet has every mark of the axis and every check',
      reading_ ? `not ${reading_}` : 'all',
      'all',
    ),
  ];
}

/** Typographic primes and spaces as they are typed. */
const plain = (text: string): string =>
  text
    .replaceAll('″', '"')
    .replaceAll('′', "'")
    .replace(/[\s\u00a0\u202f]+/g, ' ')
    .trim();

/** The word stands by itself, not as a part of a longer number or name. */
function holdsWord(words: string, word: string): boolean {
  for (let at = words.indexOf(word); at >= 0; at = words.indexOf(word, at + 1)) {
    const [before, after] = [words[at - 1] ?? ' ', words[at + word.length] ?? ' '];
    if (!/[\w/.]/.test(before) && !/[\w/]/.test(after)) return true;
  }
  return false;
}

/** Something that the page would fetch or run. */
function outward(text: string): string | undefined {
  const found =
    /<(script|link|iframe|object|embed)\b|\b(?:src|href)\s*=\s*["']?\s*(?:https?:|\/\/|file:)|@import|url\(\s*["']?(?:https?:|\/\/)/i.exec(
      text,
    );
  return found ? `it has ${found[0].slice(0, 40)}` : undefined;
}
