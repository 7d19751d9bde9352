import { beforeAll, expect, test } from 'vitest';
import type { Claim } from '../../src/check/claim.ts';
import marks from '../../src/check/claims/marks.ts';
import large from '../../src/check/claims/marks-large.ts';
import { fileSet } from '../../src/check/file-set.ts';
import { jobText, makeDrawn } from './support/make.ts';
import { change, type Files, without } from './support/tamper.ts';

const FILE = 'marks-large.html';
let files: Files;

beforeAll(async () => {
  // 3.1 m long, so that its lines have spans.
  files = await makeDrawn(
    jobText([
      'overall: { across: 600, along: 3100 }',
      'field: { motif: diamond, repeats: { across: 3 }, stretch: 0.9 to 1.1 }',
      'border: none',
    ]),
  );
});

const failing = async (touched: Files, family = large): Promise<Claim[]> =>
  (await family(fileSet(touched))).filter((claim) => !claim.holds);

test('every claim holds of what was written', async () => {
  expect(await failing(files)).toEqual([]);
  expect(await failing(files, marks)).toEqual([]);
  expect((await large(fileSet(files))).length).toBe(5);
});

const page = (edit: (html: string) => string): Files => change(files, FILE, edit);
const list = (edit: (csv: string) => string): Files => change(files, 'marks.csv', edit);
const SECTION = /<section class="mark">(?:(?!<\/section>).)*mark <span class="no">4<(?:(?!<\/section>).)*<\/section>/s;

test.each<[string, () => Files, RegExp]>([
  [
    'one numeral',
    () =>
      page((html) =>
        html.replace(
          /(<p class="tape"[^>]*>.*?)(\d) mm/,
          (_, before, last) => `${before}${(Number(last) + 1) % 10} mm`,
        ),
      ),
    /those of the list/,
  ],
  ['a mark gone', () => page((html) => html.replace(SECTION, '')), /no mark is missing/],
  ['a mark twice', () => page((html) => html.replace(SECTION, '$&$&')), /those of the list/],
  [
    'a mark under another number',
    () => page((html) => html.replace('<span class="no">4<', '<span class="no">44<')),
    /those of the list/,
  ],
  [
    'a reading of nothing',
    () => page((html) => html.replace(/(<p class="tape"[^>]*>).*?<\/p>/, '$1</p>')),
    /those of the list/,
  ],
  [
    'a span of another total',
    () => page((html) => html.replace(/to here: <span class="n">\d/, '$&1')),
    /spans in large type/,
  ],
  ['the list itself', () => list((csv) => csv.replace(/(\r\naxis,[^\r]*?,)(\d+) mm/, '$17 mm')), /those of the list/],
  [
    'something fetched',
    () => page((html) => html.replace('</head>', '<link rel="stylesheet" href="//else.where"/></head>')),
    /stand by themselves/,
  ],
  ['the file gone', () => without(files, FILE), /can be read/],
  ['the file cut short', () => page((html) => html.slice(0, html.length / 2)), /can be read/],
])('%s is refuted', async (_, tamper, claim) => {
  const refuted = await failing(tamper());
  expect(refuted.map((one) => one.claim).join('; ')).toMatch(claim);
  for (const { measured } of refuted) expect(`${measured}`).not.toMatch(/NaN|undefined|\[object/);
});

const CLOSES = /^the spans of every long line close on its marks$/;
test.each<[string, (csv: string) => string]>([
  [
    'a total that is not the difference of its marks',
    (csv) =>
      csv.replace(
        /(\r\nspan,[^\r]*?,1,)(\d+) mm,\d+/,
        (_, before, mm) => `${before}${Number(mm) + 1} mm,${Number(mm) + 1}`,
      ),
  ],
  ['a span gone', (csv) => csv.replace(/\r\nspan,the datum of axis[^\r]*/, '')],
  ['the last span gone', (csv) => csv.replace(/\r\nspan,mark \d+ of axis[^\r]*/, '')],
  ['all spans gone', (csv) => csv.replace(/\r\nspan,[^\r]*/g, '')],
  ['a span that starts elsewhere', (csv) => csv.replace(/\r\nspan,mark \d+ of axis/, '\r\nspan,mark 2 of axis')],
  ['a span of no line', (csv) => csv.replace(/\r\nspan,the datum of axis/, '\r\nspan,the datum of wall')],
])('%s is refuted', async (_, edit) => {
  const refuted = await failing(list(edit), marks);
  expect(refuted.some(({ claim }) => CLOSES.test(claim))).toBe(true);
});
