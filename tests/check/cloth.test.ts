import { beforeAll, expect, test } from 'vitest';
import { checkFiles } from '../../src/check/index.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { recheck } from './support/recheck.ts';
import { change, changeLayout, changeMark, changePath, type Files, moveCorner, without } from './support/tamper.ts';

/** A small cloth with a mitred hem, a trial piece and two rolls. */
const JOB = `evenfield: 1
units: mm
surface: floor-cloth
overall: { across: 400, along: 600 }
field: { motif: diamond, repeats: { across: 4 } }
border: none
cloth:
  hem: 30
  trim: 20
  shrinkage: { before: { across: 500, along: 500 }, after: { across: 490, along: 480 } }
  rolls: [500, 1400]
  waste: 5
print: { tiles: none }
`;
let files: Files;
beforeAll(async () => {
  const made = await makeFiles(JOB, 'cloth.job.yaml');
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  files = made.value.files;
});

const refuted = async (changed: Files): Promise<string[]> =>
  (await recheck(files, changed)).claims.filter(({ holds }) => !holds).map(({ claim }) => claim);

const drawing = (edit: (svg: string) => string): Files => change(files, 'cloth.svg', edit);

test('every claim holds', async () => {
  const { claims } = await checkFiles(files);
  expect(claims.filter(({ holds }) => !holds)).toEqual([]);
  expect(
    claims.filter(({ file, claim }) => file === 'cloth.svg' || /hem|roll|cut size/.test(claim)).length,
  ).toBeGreaterThan(12);
});

test.each<[string, () => Files, string]>([
  ['a drawing left out', () => without(files, 'cloth.svg'), 'the drawing of the canvas can be read'],
  [
    'a fold line moved by 0.2 mm',
    () =>
      drawing((svg) =>
        changePath(svg, 'data-side="near"', (d) => d.replace(/ (-?[\d.]+)/g, (_, y) => ` ${Number(y) + 0.2}`)),
      ),
    'four fold lines run along the finished edge',
  ],
  [
    'a fold line left out',
    () => drawing((svg) => svg.replace(/<path[^>]*data-side="left"[^>]*>/, '')),
    'four fold lines run along the finished edge',
  ],
  [
    'a mitre that leaves a lump',
    () => drawing((svg) => changePath(svg, 'data-line="mitre"', (d) => moveCorner(d, 0, 0.3, 0, 1))),
    'the cut corners close at 45 degrees when the hem is turned in',
  ],
  [
    'a corner that is not cut off',
    () => drawing((svg) => svg.replace(/<path[^>]*data-line="mitre"[^>]*>/, '')),
    'the cut corners close at 45 degrees when the hem is turned in',
  ],
  [
    'a finished edge of 0.3 mm more',
    () => drawing((svg) => changePath(svg, 'data-line="finished"', (d) => d.replace('H200', 'H200.3'))),
    'the finished edge is drawn at the size of the work',
  ],
  [
    'a trimmed edge without a hem on one side',
    () => drawing((svg) => changePath(svg, 'data-line="trimmed"', (d) => d.replace('H230', 'H200'))),
    'the trimmed edge is drawn a hem outside the finished edge',
  ],
  [
    'a drawing of 99 %',
    () => drawing((svg) => svg.replace(/ width="([\d.]+)mm"/, (_, w) => ` width="${Number(w) * 0.99}mm"`)),
    'one unit of the drawing of the canvas is one millimetre',
  ],
  [
    'a wrong reading',
    () => drawing((svg) => svg.replace('data-label="finished 400 mm"', 'data-label="finished 401 mm"')),
    'the lengths on the drawing of the canvas are those of the cloth',
  ],
  [
    'canvas cut to what it is when dry',
    () =>
      changeLayout(files, ({ cloth }) => {
        cloth.cut = cloth.primed;
      }),
    'the cut size is enough and no more than a mark over, along',
  ],
  [
    'shrinkage of the two directions changed over',
    () =>
      changeLayout(files, ({ cloth }) => {
        const { across, along } = cloth.shrinkage.after;
        cloth.shrinkage.after = { across: along, along: across };
      }),
    'what is cut changes to what is needed, across',
  ],
  [
    'a hem on two sides only',
    () =>
      changeLayout(files, ({ cloth }) => {
        cloth.hemmed.along = cloth.finished.along;
      }),
    'with its hem it is larger by a hem on each side',
  ],
  [
    'a roll too narrow',
    () =>
      changeLayout(files, ({ cloth }) => {
        cloth.choices[0].roll = 500;
      }),
    'the roll is wide enough for the cloth',
  ],
  [
    'too short a piece bought',
    () =>
      changeLayout(files, ({ cloth }) => {
        cloth.choices[0].buy -= 100;
      }),
    'the length bought is enough, and no more than is sold at a time',
  ],
  [
    'a choice kept quiet',
    () =>
      changeLayout(files, ({ cloth }) => {
        cloth.choices = [];
        cloth.needed = 450;
      }),
    'whether a roll is wide enough is told as it is',
  ],
  [
    'a fold mark moved',
    () =>
      change(files, 'marks.csv', (csv) =>
        changeMark(
          csv,
          (row) => row.startsWith('hem-across') && row.includes('left fold'),
          (row) => row.replace('30 mm,30,', '31 mm,31,'),
        ),
      ),
    'the marks of cut and hem stand where the drawing has their lines',
  ],
])('%s is refuted', async (_, tamper, claim) => {
  expect(await refuted(tamper())).toContain(claim);
});
