import { type Claim, equal, type Proof, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { plainWords } from '../read/blocks.ts';
import { lineNamed } from '../read/line-named.ts';
import type { MarkRow } from '../read/marks.ts';
import { readPage } from '../read/page.ts';

const FILE = 'marks-large.html';

export const proof: Proof = {
  claims: 'marks-large.html has every mark, its reading and what it is for, and no other; fetches nothing',
  files: ['job-sheet.html', 'marks-large.html', 'marks.csv'],
  method: 'sections of the page compared with marks.csv',
  tolerance: 'none',
};

/** The marks in large type are those of marks.csv, every one of them and no other. */
export default function marksLarge(set: FileSet): Claim[] {
  const named = set.text('job-sheet.html');
  if (set.content(FILE) === undefined && !(named.ok && named.value.includes(FILE))) return [];
  const [text, page] = [set.text(FILE), set.read(FILE, readPage)];
  if (!text.ok || !page.ok) return [unproven(FILE, 'the marks in large type can be read', page.ok ? '' : page.says)];
  const rows = set.marks();
  if (!rows.ok) return [unproven(FILE, 'the marks in large type are those of the list', rows.says)];
  const due = new Map<string, string>();
  for (const row of rows.value) if (row.line !== 'span') due.set(`${row.line} ${row.number}`, row.tape);
  const spans = rows.value.filter((row) => row.line === 'span');
  const shown = shownMarks(text.value);
  const twice = [...shown.twice][0];
  const wrong = [...shown.marks].find(([mark, tape]) => due.get(mark) !== tape);
  const lacking = [...due.keys()].find((mark) => !shown.marks.has(mark));
  const total = spans.find(({ datum, for: use, tape }) => {
    const [, start, line] = /^(.+) of (.+)$/.exec(datum) ?? [];
    const end = /^to mark (\d+)$/.exec(use)?.[1];
    return !shown.notes.get(`${line} ${end}`)?.includes(`from ${start} to here: ${tape}`);
  });
  const astray = rows.value.find(
    (row) => row.line !== 'span' && !shown.notes.get(`${row.line} ${row.number}`)?.includes(use(row)),
  );
  return [
    equal(
      FILE,
      'every mark in large type is for what the list says',
      astray ? said(`not ${astray.line} ${astray.number}`) : 'it is',
      'it is',
    ),
    equal(
      FILE,
      'the marks in large type are those of the list',
      wrong
        ? said(`${wrong[0]} shows ${wrong[1] || 'nothing'}`)
        : twice
          ? said(`${twice} stands there twice`)
          : 'they are',
      'they are',
    ),
    equal(FILE, 'no mark is missing in large type', lacking ? said(lacking) : 'none', 'none'),
    equal(
      FILE,
      'the spans in large type close as the list has them',
      total ? said(`${total.datum} ${total.for}`) : 'they do',
      'they do',
    ),
    equal(FILE, 'the marks in large type stand by themselves', outward(text.value) ?? 'they do', 'they do'),
  ];
}

/** What a mark is for, as it is set: primes and spaces as they are typed. */
const use = (row: MarkRow): string => plainWords(row.for);

const said = (words: string): string => words.slice(0, 80);

interface Shown {
  /** `axis 5` to what the page shows for it. */
  marks: Map<string, string>;
  /** The same to everything else its section says. */
  notes: Map<string, string>;
  twice: Set<string>;
}

/** Every mark as a person reads it off the page: each section with one reading, for all the lines it names. */
function shownMarks(text: string): Shown {
  const shown: Shown = { marks: new Map(), notes: new Map(), twice: new Set() };
  for (const section of text.split('<section').slice(1)) {
    const tapes = [...section.matchAll(/<p class="tape"[^>]*>(.*?)<\/p>/gs)].map((found) => words(found[1]!));
    if (tapes.length === 0) continue;
    const number = words(/<span class="no">(.*?)<\/span>/s.exec(section)?.[1] ?? '');
    for (const [, name] of section.matchAll(/<span class="name">(.*?)<\/span>/gs)) {
      const mark = `${lineNamed(words(name!))} ${number}`;
      if (shown.marks.has(mark)) shown.twice.add(mark);
      shown.marks.set(mark, tapes.join(' and '));
      shown.notes.set(mark, words(section.replace(/^[^>]*>/, '')));
    }
  }
  return shown;
}

/** Words of a piece of the page, primes and spaces as they are typed. */
function words(piece: string): string {
  const read = readPage(`<!doctype html>${piece.replace(/<\/?span[^>]*>/g, '')}</html>`);
  const text = read.ok ? read.value : '';
  return text.replaceAll('″', '"').replaceAll('′', "'").replace(/\s+/g, ' ').trim();
}

/** Something that the page would fetch or run. */
function outward(text: string): string | undefined {
  const found = /<(script|link|iframe|object|embed|img)\b|\b(?:src|href)\s*=|@import|url\(\s*["']?(?!data:)/i.exec(
    text,
  );
  return found ? said(`it has ${found[0]}`) : undefined;
}
