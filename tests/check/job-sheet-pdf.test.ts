import { decodePDFRawStream, PDFDocument, PDFName, type PDFRawStream } from '@cantoo/pdf-lib';
import { beforeAll, expect, test } from 'vitest';
import type { Claim } from '../../src/check/claim.ts';
import family from '../../src/check/claims/job-sheet-pdf.ts';
import { fileSet } from '../../src/check/file-set.ts';
import { readPages } from '../write/tiles/read-pages.ts';
import { jobText, make } from './support/make.ts';
import { change, changeMark, type Files, without } from './support/tamper.ts';

const FILE = 'job-sheet.pdf';
let files: Files;
let untouched: Claim[];

beforeAll(async () => {
  const made = await make(
    jobText([
      'title: Cloth by the stove',
      'overall: { across: 360, along: 420 }',
      'reserve: 0 to 100 mm',
      'field: { motif: ogee, repeats: { across: 2 } }',
      'border: none',
      'stencil: { sheet: { across: 300, along: 400, rim: 20 } }',
    ]),
  );
  expect(made.refused).toBeUndefined();
  files = made.files;
  untouched = await family(fileSet(files));
});

test('every claim holds of what was written', () => {
  expect(untouched.length).toBeGreaterThan(5);
  expect(untouched.filter(({ holds }) => !holds)).toEqual([]);
  for (const { claim } of untouched) expect(claim).toMatch(/^[\w ,/-]+$/);
});

/** The file with the operators of every page changed; the library that wrote it opens it again. Fails where nothing changes. */
async function onPages(edit: (text: string, page: number) => string, more = (_: PDFDocument) => {}): Promise<Files> {
  const pdf = await PDFDocument.load(files.get(FILE) as Uint8Array, { updateMetadata: false });
  let changed = false;
  pdf.getPages().forEach(({ node }, at) => {
    const stream = node.Contents() as unknown as PDFRawStream;
    const before = Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1');
    const after = edit(before, at + 1);
    if (after === before) return;
    changed = true;
    node.set(PDFName.of('Contents'), pdf.context.register(pdf.context.flateStream(after)));
  });
  more(pdf);
  if (!changed && pdf.getPageCount() === (await PDFDocument.load(files.get(FILE) as Uint8Array)).getPageCount())
    throw new Error('nothing changed');
  return new Map(files).set(FILE, await pdf.save({ useObjectStreams: false }));
}

/** Takes away the line of text that matches, by what its letters stand for in the order they were first used. */
const withoutLines = (matches: (operators: string, at: number) => boolean) => (text: string) =>
  text
    .split('\n')
    .filter((line, at) => !(line.startsWith('BT') && matches(line, at)))
    .join('\n');

const size = (line: string): number => Number(/\/F\d (\S+) Tf/.exec(line)![1]);

test.each<[string, RegExp, () => Promise<Files>]>([
  ['the file gone', /can be read$/, async () => without(files, FILE)],
  ['the file as text', /can be read$/, async () => new Map(files).set(FILE, 'a job sheet')],
  [
    'half of the file',
    /can be read$/,
    async () => new Map(files).set(FILE, (files.get(FILE) as Uint8Array).slice(0, 9000)),
  ],
  [
    'a page taken out',
    /are numbered$/,
    () =>
      onPages(
        (text) => text,
        (pdf) => pdf.removePage(1),
      ),
  ],
  [
    'a page moved up by 2 inches',
    /printer cannot reach$/,
    () =>
      onPages((text, page) =>
        page === 2 ? text.replaceAll(/(BT .*? 1 0 0 1 \S+ )(\S+)/g, (_, at, y) => `${at}${Number(y) + 144}`) : text,
      ),
  ],
  [
    'a line drawn over the edge',
    /printer cannot reach$/,
    () => onPages((text) => `${text}\nq 1 w 100 100 m 900 100 l S Q`),
  ],
  [
    'large readings gone',
    /every mark with its number/,
    () => onPages(withoutLines((line) => line.includes('/F2') && Math.abs(size(line) - 16) < 0.01)),
  ],
  ['readings set smaller', /printed large$/, () => onPages((text) => text.replaceAll(/\/F2 16 Tf/g, '/F2 9 Tf'))],
  [
    'another reading in the list',
    /every mark with its number/,
    async () =>
      change(files, 'marks.csv', (csv) =>
        changeMark(
          csv,
          (row) => row.startsWith('axis,'),
          (row) => row.replace(/(,\d+,)"?[^,]*"?,/, '$1777 mm,'),
        ),
      ),
  ],
  [
    'all words of ordinary size gone',
    /names every sheet|has its cautions/,
    () => onPages(withoutLines((line) => Math.abs(size(line) - 10.5) < 0.01)),
  ],
  [
    'headings of sheets gone',
    /names every sheet$/,
    () => onPages(withoutLines((line) => Math.abs(size(line) - 13.5) < 0.01)),
  ],
  ['an operator that is never written', /can be read$/, () => onPages((text) => `${text}\n/X sh`)],
])('%s is refuted', async (_, claim, tamper) => {
  const claims = await family(fileSet(await tamper()));
  for (const { measured, allowed } of claims)
    expect(`${measured} ${allowed}`).not.toMatch(/NaN|undefined|\[object|Infinity|TypeError/);
  expect(claims.filter(({ holds }) => !holds).map((one) => one.claim)).toContainEqual(expect.stringMatching(claim));
});

test('no claim where the tool wrote no printed job sheet, as it once did', async () => {
  const old = new Map(without(files, FILE)).set('job-sheet.html', '<!doctype html><html><body>a sheet</body></html>');
  expect(await family(fileSet(old))).toEqual([]);
});

test('another reader of PDF (pdfjs-dist) sees the same pages, numbered, on A4 (ISO 216)', async () => {
  const pages = await readPages(files.get(FILE) as Uint8Array);
  expect(pages.length).toBeGreaterThan(3);
  pages.forEach(({ width, height, words }, at) => {
    expect([width.toFixed(1), height.toFixed(1)]).toEqual(['210.0', '297.0']);
    expect(words.filter((word) => /^page \d/.test(word))).toEqual([`page ${at + 1} of ${pages.length}`]);
    expect(words.some((word) => word.includes('Cloth by the stove'))).toBe(true);
  });
  const all = pages.flatMap(({ words }) => words);
  expect(all).toContain('Order of work');
  for (const name of files.keys()) if (name.startsWith('stencil-')) expect(all).toContain(name);
});
