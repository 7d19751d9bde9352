import { beforeAll, expect, test } from 'vitest';
import { checkFiles } from '../../src/check/index.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { refutedPaint as refuted } from './support/refuted-paint.ts';
import { change, changeLayout, changePath, type Files, without } from './support/tamper.ts';

/** A made-up mat with a masked band. */
const JOB = `evenfield: 1
units: in
surface: floor-cloth
overall: { across: 15, along: 21 }
paint is: water-based
field: { motif: diamond }
border: { motif: plain-band, width: 3 }
palette: { cream: '#efe4cc', black: '#222222', rust: '#a04a2c' }
colours: { ground: cream, field: black, border: rust }
paint:
  on hand: { rust: 10 ml }
  tins: [{ size: 4 fl oz, price: 7 }, { size: 1/2 pint, price: 9 }, { size: 1 quart, price: 24 }]
print: { tiles: none }
`;
let files: Files;
beforeAll(async () => {
  const made = await makeFiles(JOB, 'mat.job.yaml');
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  files = made.value.files;
});

test('every claim holds, and there are some of each colour', async () => {
  const { claims } = await checkFiles(files);
  expect(claims.filter(({ holds }) => !holds)).toEqual([]);
  for (const name of ['cream', 'black', 'rust', 'clear coats', 'primer'])
    expect(claims.some(({ claim }) => claim.includes(name))).toBe(true);
});

const TABLE = 'the table of paint says the same as the layout';
// biome-ignore lint/suspicious/noExplicitAny: the tests reach into the file as it is written
const paints = (edit: (of: (name: string) => any, all: any) => void) => () =>
  changeLayout(files, ({ paint }) =>
    edit((name) => paint.paints.find((one: { name: string }) => one.name === name), paint),
  );

test.each<[string, () => Files, string]>([
  ['no table', () => without(files, 'paint.csv'), TABLE],
  ['no entry', () => changeLayout(files, (layout) => delete layout.paint), 'the paint is told'],
  [
    'another area in the table',
    () => change(files, 'paint.csv', (text) => text.replace(/black,colour,0,0,\d/, '$&1')),
    TABLE,
  ],
  ['a row less in the table', () => change(files, 'paint.csv', (text) => text.replace(/^black.*\r\n/m, '')), TABLE],
  [
    'an area 0.2 % too large',
    paints((of) => {
      of('black').uses[0].area *= 1.002;
    }),
    'black covers as much as its paint is reckoned for',
  ],
  [
    'a piece that is not painted',
    () => change(files, 'plan.svg', (svg) => changePath(svg, 'data-part="field"', (d) => d.slice(d.indexOf('M', 1)))),
    'black covers as much as its paint is reckoned for',
  ],
  [
    'a smaller ground',
    paints((of) => {
      of('cream').uses[0].area *= 0.99;
    }),
    'the ground covers as much as its paint is reckoned for',
  ],
  [
    'a colour left out',
    paints((_, all) => {
      all.paints = all.paints.filter(({ name }: { name: string }) => name !== 'rust');
    }),
    'rust covers as much as its paint is reckoned for',
  ],
  [
    'a coat forgotten',
    paints((of) => {
      of('rust').uses[0].covers.pop();
    }),
    'every coat of rust has what it covers',
  ],
  [
    'no loss in the tool',
    paints((of) => {
      of('rust').uses[0].loss = 0;
    }),
    'the volume of rust on the pattern adds up',
  ],
  [
    'nothing kept back',
    paints((_, all) => {
      all.reserve = 0;
    }),
    'cream has what is kept back for touching up',
  ],
  [
    'what is at hand counted twice',
    paints((of) => {
      of('rust').onHand *= 2;
    }),
    'what is at hand of rust is taken off what is bought',
  ],
  [
    'a cheaper tin on the shelf',
    paints((of) => {
      of('cream').offered.push({ size: 1000, price: 1 });
    }),
    'no cheaper tins of cream hold enough',
  ],
  [
    'a tin too few',
    paints((of) => {
      of('rust').tins = [];
    }),
    'the tins of rust hold enough',
  ],
  [
    'a sheet laid once less',
    paints((_, all) => {
      all.days.stints.find(({ sheets }: { sheets?: number }) => sheets).sheets -= 1;
    }),
    'sheets are laid as often over all days as the layout has them',
  ],
  [
    'a tool that keeps less than it does',
    paints((of) => {
      of('rust').uses[0].tool = 'brush';
    }),
    'what the tool keeps of rust on the pattern is reckoned with',
  ],
  [
    'less tape',
    paints((_, all) => {
      all.tape.length *= 0.998;
    }),
    'there is tape for all edges that are masked',
  ],
  [
    'no tape',
    paints((_, all) => {
      delete all.tape;
    }),
    'there is tape for all edges that are masked',
  ],
  [
    'a roll too few',
    paints((_, all) => {
      all.tape.roll = all.tape.length;
    }),
    'the rolls of tape are enough, and none too many',
  ],
  [
    'walked on too early',
    paints((_, all) => {
      all.days.walk = 1;
    }),
    'nobody walks on the last coat before it is dry',
  ],
])('%s is refuted', (_, tampered, claim) => {
  expect(refuted(tampered())).toContain(claim);
});
