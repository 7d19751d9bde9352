import { decodePDFRawStream, PDFDict, PDFDocument, PDFName, type PDFPage, type PDFRawStream } from '@cantoo/pdf-lib';
import { beforeAll, expect, test } from 'vitest';
import type { Claim } from '../../src/check/claim.ts';
import tiles from '../../src/check/claims/tiles.ts';
import { fileSet } from '../../src/check/file-set.ts';
import { checkFiles } from '../../src/check/index.ts';
import { jobText, make } from './support/make.ts';
import { recheck } from './support/recheck.ts';
import { change, changeLayout, type Files, without } from './support/tamper.ts';

const FILE = 'tiles.pdf';
let files: Files;
let untouched: Claim[];
let stated: { pages: number; drawings: { file: string; page: number; rows: number; columns: number }[] };

beforeAll(async () => {
  const made = await make(
    jobText([
      'overall: { across: 360, along: 420 }',
      'reserve: 0 to 100 mm',
      'field: { motif: ogee, repeats: { across: 2 } }',
      'border: none',
      'stencil: { sheet: { across: 300, along: 400, rim: 20 } }',
      'print: { paper: A4, tiles: pdf and svg, 10 in measured: 253 }',
    ]),
  );
  expect(made.refused).toBeUndefined();
  files = made.files;
  untouched = await tiles(fileSet(files));
  stated = JSON.parse(files.get('layout.json') as string).print;
});

test('every claim holds of what was written', async () => {
  const { claims } = await checkFiles(files);
  expect(claims.filter((claim) => !claim.holds)).toEqual([]);
  for (const claim of untouched) expect(claims).toContainEqual(claim);
  expect(untouched.filter(({ file }) => file === FILE).length).toBeGreaterThan(20);
  for (const { claim } of untouched) expect(claim).toMatch(/^[\w ,/-]+$/);
});

/** The claims that fail once the files are tampered with; what they say is plain. */
async function refuted(touched: Files): Promise<Claim[]> {
  const claims = await tiles(fileSet(touched));
  for (const { measured, allowed } of claims)
    expect(`${measured} ${allowed}`).not.toMatch(/NaN|undefined|\[object|Infinity|TypeError|Cannot read prop/);
  return claims.filter((claim) => !claim.holds);
}

/** The file with something changed in it; the library that wrote it opens it again. */
async function inPdf(edit: (pdf: PDFDocument) => void): Promise<Files> {
  const pdf = await PDFDocument.load(files.get(FILE) as Uint8Array, { updateMetadata: false });
  edit(pdf);
  return new Map(files).set(FILE, await pdf.save({ useObjectStreams: false }));
}

function rewritten(pdf: PDFDocument, stream: PDFRawStream, edit: (text: string) => string): PDFRawStream {
  const before = Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1');
  const after = edit(before);
  expect(after).not.toBe(before);
  const dict = Object.fromEntries(stream.dict.entries().map(([key, value]) => [key.decodeText(), value]));
  return pdf.context.flateStream(after, dict);
}

/** Page `number` with its operators changed. */
const onPage = (number: number, edit: (text: string) => string) =>
  inPdf((pdf) => {
    const { node } = pdf.getPage(number - 1) as PDFPage;
    const stream = node.Contents() as unknown as PDFRawStream;
    node.set(PDFName.of('Contents'), pdf.context.register(rewritten(pdf, stream, edit)));
  });

/** The drawing with its operators changed. */
const inDrawing = (number: number, edit: (text: string) => string) =>
  inPdf((pdf) => {
    const list = pdf.getPage(0).node.Resources()!.lookup(PDFName.of('XObject'), PDFDict);
    const name = PDFName.of(`D${number}`);
    list.set(name, pdf.context.register(rewritten(pdf, list.lookup(name) as PDFRawStream, edit)));
  });

const first = () => stated.drawings[0]!;
const planNumber = () => stated.drawings.findIndex(({ file }) => file === 'plan.svg');

/** Takes a number of the first match and adds to it. */
const add = (text: string, pattern: RegExp, more: number): string =>
  text.replace(pattern, (_, before: string, value: string) => `${before}${Number(value) + more}`);

const shown = /(\/drawing BMC .*? W n )(\S+) 0 0 (\S+) (\S+) (\S+) cm/;

test.each<[string, RegExp, () => Promise<Files>]>([
  [
    'a page scaled to 99 %',
    /to size$/,
    () =>
      onPage(first().page, (text) => text.replace(/^(\S+) 0 0 -(\S+)/, (_, a, d) => `${a * 0.99} 0 0 -${d * 0.99}`)),
  ],
  [
    'a drawing on one page scaled to 99 %',
    /to size$/,
    () =>
      onPage(first().page, (text) =>
        text.replace(shown, (_, at, a, d, e, f) => `${at}${a * 0.99} 0 0 ${d * 0.99} ${e} ${f} cm`),
      ),
  ],
  [
    'a drawing on one page scaled upright alone',
    /to size$/,
    () =>
      onPage(first().page, (text) =>
        text.replace(shown, (_, at, a, d, e, f) => `${at}${a} 0 0 ${d * 0.999} ${e} ${f} cm`),
      ),
  ],
  [
    'a drawing 0.2 mm off on one page',
    /shows its own part$/,
    () =>
      onPage(first().page, (text) =>
        text.replace(shown, (_, at, a, d, e, f) => `${at}${a} 0 0 ${d} ${Number(e) + 0.2} ${f} cm`),
      ),
  ],
  ['a page taken out', /as many pages/, () => inPdf((pdf) => pdf.removePage(first().page - 1))],
  [
    'two pages exchanged',
    /shows its own part$/,
    () =>
      inPdf((pdf) => {
        const page = pdf.getPage(first().page - 1);
        pdf.removePage(first().page - 1);
        pdf.insertPage(first().page, page);
      }),
  ],
  ['a page of another size', /as large as its paper/, () => inPdf((pdf) => pdf.getPage(2).setSize(595, 845))],
  [
    'a page turned',
    /can be read/,
    () => inPdf((pdf) => pdf.getPage(2).node.set(PDFName.of('Rotate'), pdf.context.obj(90))),
  ],
  [
    'a page in larger units',
    /can be read/,
    () => inPdf((pdf) => pdf.getPage(2).node.set(PDFName.of('UserUnit'), pdf.context.obj(1.01))),
  ],
  [
    'a scale bar 1 % long',
    /scale bar/,
    () => onPage(1, (text) => add(text, /(\/scale-bar BMC[\s\S]*? m \S+ )(\S+)(?= l)/, 2.54)),
  ],
  [
    'a card box 1 mm wide',
    /bank card/,
    () => onPage(1, (text) => add(text, /(\/card BMC[\s\S]*? c )(\S+)(?= \S+ l)/, 1)),
  ],
  ['a corner moved', /what is printed/, () => inDrawing(0, (text) => add(text, /(\/windows BMC[^\n]*\n)(\S+)/, 0.2))],
  [
    'a handle of a curve moved',
    /what is printed/,
    () =>
      inDrawing(0, (text) =>
        add(text, /(\/windows BMC[\s\S]*? m (?:\S+ \S+ l )*)(\S+)(?= \S+ \S+ \S+ \S+ \S+ c)/, 0.2),
      ),
  ],
  [
    'a window drawn twice',
    /what is printed/,
    () => inDrawing(0, (text) => text.replace(/(\/windows BMC.*\n)(.* h)/, '$1$2\n$2')),
  ],
  ['a window left out', /what is printed/, () => inDrawing(0, (text) => text.replace(/(\/windows BMC.*\n).* h/, '$1'))],
  [
    'a curve flattened',
    /what is printed/,
    () => inDrawing(0, (text) => text.replace(/(\/windows BMC[\s\S]*?) \S+ \S+ \S+ \S+ (\S+ \S+) c/, '$1 $2 l')),
  ],
  [
    'a place on the plan moved',
    /what is printed/,
    () => inDrawing(planNumber(), (text) => add(text, /(q 1 0 0 1 )(\S+)/, 0.2)),
  ],
])('%s is refuted', async (_, claim, tamper) => {
  const found = await refuted(await tamper());
  expect(found.filter((one) => one.file === FILE && claim.test(one.claim))).not.toEqual([]);
});

// biome-ignore lint/suspicious/noExplicitAny: the tests reach into the file as it is written
const inPrint = (edit: (print: any) => void) => (all: Files) => changeLayout(all, ({ print }) => edit(print));

test.each<[string, RegExp, string, (all: Files) => Files]>([
  ['another correction', /to size$/, FILE, inPrint((print) => (print.factor *= 1.01))],
  ['another overlap', /overlap as stated/, FILE, inPrint((print) => (print.overlap += 1))],
  ['another paper', /size of its name/, FILE, inPrint((print) => (print.paper.name = 'A3'))],
  ['one page more', /as many pages/, FILE, inPrint((print) => (print.pages += 1))],
  ['a sheet not listed', /no sheet is left out/, FILE, inPrint((print) => print.drawings.shift())],
  [
    'a box too small',
    /holds the whole drawing|shows its own part/,
    FILE,
    inPrint((print) => (print.drawings[0].box[0] += 5)),
  ],
  ['nonsense', /pages are those of the layout/, FILE, inPrint((print) => (print.drawings = 'all'))],
])('layout.json with %s is refuted', async (name, claim, file, tamper) => {
  const found = await refuted(tamper(files));
  expect(
    found.filter((one) => one.file === file && claim.test(one.claim)),
    name,
  ).not.toEqual([]);
});

const svg = () => [...files.keys()].find((name) => name.startsWith('tile-'))!;

test.each<[string, RegExp, () => Files]>([
  [
    'no word of the pages in layout.json',
    /no pages of another layout/,
    () => changeLayout(files, (layout) => delete layout.print),
  ],
  ['the file taken away', /can be read/, () => without(files, FILE)],
  ['the file empty', /can be read/, () => new Map(files).set(FILE, new Uint8Array())],
  ['text in its place', /can be read/, () => new Map(files).set(FILE, 'no pages')],
  ['the file cut short', /can be read/, () => new Map(files).set(FILE, (files.get(FILE) as Uint8Array).slice(0, 9000))],
  [
    'rubbish in it',
    /can be read/,
    () =>
      new Map(files).set(
        FILE,
        Uint8Array.from({ length: 5000 }, (_, i) => (i * 7919 + 13) % 251),
      ),
  ],
  [
    'rubbish that begins and ends well',
    /can be read/,
    () => new Map(files).set(FILE, new TextEncoder().encode('%PDF-1.7\n1 0 obj << >> endobj\n%%EOF')),
  ],
  ['a page drawn as SVG taken away', /can be read/, () => without(files, svg())],
  [
    'a page drawn as SVG moved',
    /its own part/,
    () => change(files, svg(), (text) => add(text, /(translate\()(\S+)/, 0.2)),
  ],
  [
    'a page drawn as SVG scaled',
    /its own part/,
    () => change(files, svg(), (text) => add(text, /( scale\()([\d.]+)/, -0.01)),
  ],
  [
    'a page drawn as SVG stretched',
    /large as its paper/,
    () => change(files, svg(), (text) => text.replace(/width="[\d.]+mm"/, 'width="200mm"')),
  ],
  [
    'a page of another layout',
    /no pages of another layout/,
    () => new Map(files).set('tile-old-1-a.svg', files.get(svg())!),
  ],
])('%s is refuted', async (_, claim, tamper) => {
  expect((await refuted(tamper())).filter((one) => claim.test(one.claim))).not.toEqual([]);
});

test('one refuted page refutes the work', async () => {
  expect((await recheck(files, without(files, FILE))).holds).toBe(false);
});
