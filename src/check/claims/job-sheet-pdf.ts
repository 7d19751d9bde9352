import { type Claim, equal, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { readPdfText, type TextPage } from '../read/pdf-text.ts';

const FILE = 'job-sheet.pdf';

/** What a printer cannot reach at the edges of the paper, points: 1/4 in (common practice, no source). */
const EDGE = 18;
/** The type that readings of the tape are set in at least, points (common practice, no source; see the writer). */
const READING = 14;
/** Cautions that hold for every work, each by words that carry it. */
const CAUTIONS = [
  'Local codes, the product label and licensed practitioners come first',
  'Keep windows open',
  'slippery when wet',
];

export const proof: Proof = {
  claims:
    'every mark, check and sheet is printed; readings large; pages numbered; nothing where a printer cannot reach; cautions',
  files: ['job-sheet.html', 'job-sheet.pdf', 'layout.json', 'marks.csv', 'stencil-*.svg'],
  method: 'text runs of the PDF with their place and size',
  tolerance: '0.01 point',
};

/** The printed job sheet has every mark, every check and every sheet; its pages are numbered, and nothing lies off them. */
export default async function jobSheetPdf(set: FileSet): Promise<Claim[]> {
  const named = set.text('job-sheet.html');
  const content = set.content(FILE);
  if (content === undefined && !(named.ok && named.value.includes(FILE))) return [];
  const READS = 'the printed job sheet is there and can be read';
  const file = await set.bytes(FILE, readPdfText);
  if (!file) return [equal(FILE, READS, content === undefined ? `${FILE} is missing` : 'it is text', 'it is')];
  if (!file.ok) return [equal(FILE, READS, file.says, 'it is')];
  const pages = file.value;
  const words = ` ${pages.map(({ runs }) => runs.map(({ text }) => text).join(' ')).join(' ')} `.replace(/\s+/g, ' ');
  return [
    equal(FILE, READS, 'it is', 'it is'),
    ...pageClaims(pages),
    ...markClaims(set, pages, words),
    equal(FILE, 'the printed job sheet names every sheet', lacking(sheetNames(set), words), 'all'),
    ...cautionClaims(set, words),
  ];
}

const sheetNames = (set: FileSet): string[] => set.sheets().map(({ entry }) => entry.file);

const lacking = (wanted: string[], words: string): string => {
  const found = wanted.find((one) => !words.includes(` ${one} `));
  return found === undefined ? 'all' : `not ${found}`;
};

function pageClaims(pages: TextPage[]): Claim[] {
  const wrong = pages.findIndex(({ runs }, at) => {
    const numbers = runs.filter(({ text }) => /^page \d+ of \d+$/.test(text));
    return numbers.length !== 1 || numbers[0]!.text !== `page ${at + 1} of ${pages.length}`;
  });
  let [off, where] = [0, 0];
  pages.forEach(({ width, height, runs, drawn }, at) => {
    for (const { left, right, bottom, top } of [...runs, ...drawn]) {
      const beyond = Math.max(EDGE - left, right - (width - EDGE), EDGE - bottom, top - (height - EDGE));
      if (beyond > off) [off, where] = [beyond, at + 1];
    }
  });
  return [
    equal(FILE, 'the pages of the printed job sheet are numbered', wrong < 0 ? 'all' : `not page ${wrong + 1}`, 'all'),
    stated(
      FILE,
      'nothing on the printed job sheet lies where a printer cannot reach',
      off <= 0.01,
      off <= 0.01 ? 'nothing' : `page ${where}, by ${off.toFixed(2)} points`,
      'nothing',
    ),
  ];
}

const typographic = (tape: string): string => tape.replaceAll('"', '″').replaceAll("'", '′');

function markClaims(set: FileSet, pages: TextPage[], words: string): Claim[] {
  const claim = 'the printed job sheet has every mark with its number and every check';
  const marks = set.marks();
  if (!marks.ok) return [unproven(FILE, claim, marks.says)];
  const rows = marks.value.filter(({ line }) => line !== 'span');
  const missing = rows.find(({ line, number, tape }) => {
    const read = typographic(tape);
    return !words.includes(line === 'check' ? ` ${read} ` : ` ${number} ${read} `);
  });
  const sizes = new Map<string, number>();
  for (const { runs } of pages)
    for (const { text, size } of runs) sizes.set(text, Math.max(size, sizes.get(text) ?? 0));
  const small = rows.find(({ tape }) => (sizes.get(typographic(tape)) ?? 0) < READING - 0.01);
  return [
    equal(FILE, claim, missing ? `not ${missing.line} ${missing.number}, ${missing.tape}` : 'all', 'all'),
    equal(FILE, 'every reading is printed large', small ? `not ${small.tape}` : 'all', 'all'),
  ];
}

function cautionClaims(set: FileSet, words: string): Claim[] {
  const layout = set.layout();
  const cloth = layout.ok && layout.value.job.surface === 'floor-cloth';
  // US EPA, 40 CFR 745: 1978.
  const due = [
    ...CAUTIONS,
    ...(cloth ? [] : ['1978']),
    ...(sheetNames(set).length > 0 ? ['cutting away from yourself'] : []),
  ];
  const missing = due.find((one) => !words.includes(one));
  return [equal(FILE, 'the printed job sheet has its cautions', missing ?? 'all', 'all')];
}
