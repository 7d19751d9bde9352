import svgpath from 'svgpath';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Claim } from '../../src/check/claim.ts';
import cutLines from '../../src/check/claims/cut-lines.ts';
import { fileSet } from '../../src/check/file-set.ts';
import { checkFiles } from '../../src/check/index.ts';
import { jobText, make } from './support/make.ts';
import { change, changeLayout, type Files } from './support/tamper.ts';

const STATED = ['outline', 'mirrored', 'overcut'] as const;
const job = (cutting: string): string =>
  jobText([
    'overall: { across: 440, along: 560 }',
    'field: { motif: eight-point-star, repeats: { across: 3, along: 4 } }',
    'border: none',
    `stencil: { cutting: ${cutting} }`,
  ]);

let plain: Files;
let special: Files;
let sheet = '';

beforeAll(async () => {
  plain = (await make(job('{ overcut: 0 }'))).files;
  special = (await make(job("{ outline: draw, mirrored: yes, overcut: 0.4 mm, lines: { cut: 'c00' } }"))).files;
  sheet = [...plain.keys()].find((name) => name.startsWith('stencil-'))!;
}, 60_000);

/** A claim about the lines of the sheet holds of the files as written, and no longer of those tampered with. */
function expectRefuted(files: Files, claim: RegExp, tampered: Files): void {
  const about = (some: Files): Claim[] =>
    (cutLines(fileSet(some)) as Claim[]).filter((one) => claim.test(one.claim) && one.file === sheet);
  expect(about(files).map(({ holds }) => holds)).toEqual([true]);
  expect(about(tampered).map(({ holds }) => holds)).toEqual([false]);
}

/** Two paths of the file change places. */
function swapped(svg: string, a: string, b: string): string {
  const tag = (id: string) => new RegExp(`<path id="${id}"[^>]*>`).exec(svg)![0];
  const [one, other] = [tag(a), tag(b)];
  return svg.replace(one, '<!---->').replace(other, one).replace('<!---->', other);
}

const windowD = (svg: string, id: string): string => new RegExp(`<path id="${id}"[^>]*? d="([^"]*)"`).exec(svg)![1]!;
const withD = (svg: string, id: string, edit: (d: string) => string): string => {
  const d = windowD(svg, id);
  return svg.replace(`d="${d}"`, `d="${edit(d)}"`);
};

test('files cut as usual, and mirrored ones that run on past their starts, hold in every claim', async () => {
  for (const files of [plain, special])
    expect((await checkFiles(files)).claims.filter(({ holds }) => !holds)).toEqual([]);
  for (const key of STATED) expect(JSON.parse(special.get('layout.json') as string).sheets[0].cut[key]).toBeTruthy();
});

describe.each<[string, RegExp, (svg: string) => string]>([
  ['two windows in the other order', /^the order of the lines is/, (svg) => swapped(svg, 'window-1', 'window-2')],
  ['the edge before a window', /^what lies inside is cut before/, (svg) => swapped(svg, 'window-1', 'outline')],
  [
    'a window drawn twice in one path',
    /^no line is cut twice$/,
    (svg) => withD(svg, 'window-1', (d) => d + d.replace(/^m/, 'M')),
  ],
  [
    'a window drawn over another',
    /^no line is cut twice$/,
    (svg) => withD(svg, 'window-1', () => windowD(svg, 'window-2')),
  ],
  ['a filled window', /^every path is one line/, (svg) => svg.replace('fill="none"', 'fill="#000"')],
  [
    'a window that is only drawn',
    /^every path is one line/,
    (svg) => svg.replace('data-line="cut"', 'data-line="draw"'),
  ],
  [
    'a window in another colour',
    /^every path is one line/,
    (svg) => svg.replace('stroke="#000000"', 'stroke="#0066cc"'),
  ],
  [
    'an edge that is not the sheet’s',
    /^the edge of the sheet is drawn/,
    (svg) => withD(svg, 'outline', () => 'M1 0H100V100H1Z'),
  ],
  [
    'words that say it is mirrored',
    /^left and right are changed over/,
    (svg) => svg.replace('</desc>', ' Mirrored for cutting from the back.</desc>'),
  ],
  [
    'a stated overcut that is not there',
    /^every cut runs on/,
    (svg) => svg.replace('id="window-1"', 'id="window-1" data-overcut="0.3"'),
  ],
])('%s', (_, claim, edit) => {
  test('is refuted', () => expectRefuted(plain, claim, change(plain, sheet, edit)));
});

describe.each<[string, RegExp, (svg: string) => string]>([
  ['an overcut 0.1 mm too long', /^every cut runs on/, (svg) => withD(svg, 'window-1', (d) => lengthened(d, 1.25))],
  [
    'an overcut beside its line',
    /^every cut runs on/,
    (svg) => withD(svg, 'window-1', (d) => lastMoved(d, ([x, y]) => [x! + 0.05, y! + 0.05])),
  ],
  [
    'an overcut of another length stated',
    /^every cut runs on/,
    (svg) => svg.replace('data-overcut="0.4"', 'data-overcut="0.5"'),
  ],
  ['an overcut not stated', /^every cut runs on/, (svg) => svg.replace(' data-overcut="0.4"', '')],
  [
    'mirrored, and not said',
    /^left and right are changed over/,
    (svg) => svg.replace('Mirrored for cutting from the back.', ''),
  ],
])('of mirrored sheets that run on: %s', (_, claim, edit) => {
  test('is refuted', () => expectRefuted(special, claim, change(special, sheet, edit)));
});

test.each([
  ['order', 'window-1', /^the order of the lines is/],
  ['overcut', 0.3, /^every cut runs on/],
  ['mirrored', true, /^left and right are changed over/],
  ['outline', 'draw', /^every path is one line/],
])('layout.json that states another %s is refuted', (key, value, claim) =>
  expectRefuted(
    plain,
    claim,
    changeLayout(plain, (layout) => {
      for (const one of layout.sheets) one.cut[key] = value;
    }),
  ),
);

/** The last point of a path, moved to where `edit` puts it; it is told the point before it too. */
function lastMoved(d: string, edit: (last: number[], before: number[]) => [number, number]): string {
  const path = svgpath(d).abs().unshort() as ReturnType<typeof svgpath> & { segments: [string, ...number[]][] };
  let [x, y] = [0, 0];
  const ends = path.segments.map(([letter, ...v]) => {
    if (letter === 'H') x = v[0]!;
    else if (letter === 'V') y = v[0]!;
    else [x, y] = v.slice(-2) as [number, number];
    return [x, y];
  });
  const [letter, ...v] = path.segments.at(-1)!;
  const to = edit(ends.at(-1)!, ends.at(-2)!);
  path.segments[path.segments.length - 1] = letter === 'C' ? ['C', ...v.slice(0, 4), ...to] : ['L', ...to];
  return path.segments.map(([command, ...values]) => command + values.join(' ')).join('');
}

/** A path whose last, straight stretch is made longer. */
const lengthened = (d: string, by: number): string =>
  lastMoved(d, ([x, y], [px, py]) => [px! + (x! - px!) * by, py! + (y! - py!) * by]);
