import { beforeAll, expect, test } from 'vitest';
import { checkFiles } from '../../src/check/index.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { recheck } from './support/recheck.ts';
import { change, changeLayout, changeMark, changePath, type Files, moveCorner, without } from './support/tamper.ts';

/** Three risers of a made-up flight. */
const JOB = `evenfield: 1
units: mm
surface: stairs
site:
  steps:
    - riser: { across: 700, high: 180 }
    - riser: { across: 706, high: 184 }
    - riser: { across: 698, high: 176 }
stairs: { margin: { sides: 20 to 40, risers: 8 to 20 } }
field: { motif: diamond, repeats: { across: 4 to 8, along: 1 } }
print: { tiles: none }
`;
let files: Files;
beforeAll(async () => {
  const made = await makeFiles(JOB, 'stairs.job.yaml');
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  files = made.value.files;
});

const refuted = async (changed: Files): Promise<string[]> =>
  (await recheck(files, changed)).claims.filter(({ holds }) => !holds).map(({ claim }) => claim);

const flight = (edit: (svg: string) => string): Files => change(files, 'flight.svg', edit);
/** A whole rectangle moved. */
const move = (d: string, dx: number, dy: number): string =>
  [0, 1, 2, 3].reduce((path, corner) => moveCorner(path, dx, dy, 0, corner), d);

test('every claim holds', async () => {
  const { claims } = await checkFiles(files);
  expect(claims.filter(({ holds }) => !holds)).toEqual([]);
  expect(claims.filter(({ file }) => file === 'flight.svg').length).toBeGreaterThan(13);
});

const CENTRED = 'every panel is centred on its own step';
const PAINT = 'every step carries the panel of the plan, piece for piece';

test.each<[string, () => Files, string]>([
  ['a drawing left out', () => without(files, 'flight.svg'), 'the drawing of the flight can be read'],
  [
    'a panel 0.2 mm to the right',
    () => flight((svg) => changePath(svg, 'data-step="2" data-line="panel"', (d) => move(d, 0.2, 0))),
    CENTRED,
  ],
  [
    'a step and its panel off the line',
    () =>
      flight((svg) =>
        changePath(
          changePath(svg, 'data-step="2" data-line="riser"', (d) => move(d, 0.2, 0)),
          'data-step="2" data-line="panel"',
          (d) => move(d, 0.2, 0),
        ),
      ),
    'all panels are centred on one line',
  ],
  [
    'a panel above the middle',
    () => flight((svg) => changePath(svg, 'data-step="3" data-line="panel"', (d) => move(d, 0, -0.3))),
    'every panel stands in the middle of its step',
  ],
  [
    'a smaller panel on one step',
    () =>
      flight((svg) =>
        changePath(svg, 'data-step="1" data-line="panel"', (d) => moveCorner(moveCorner(d, -1, 0, 0, 1), -1, 0, 0, 2)),
      ),
    'the panel on every step is as large as the plan',
  ],
  [
    'a piece moved by 0.2 mm',
    () =>
      flight((svg) =>
        changePath(svg, 'data-step="3" data-element="field"', (d) =>
          d.replace(/^M(-?[\d.]+)/, (_, x) => `M${Number(x) + 0.2}`),
        ),
      ),
    PAINT,
  ],
  [
    'a repeat less on one step',
    () =>
      flight((svg) => changePath(svg, 'data-step="1" data-element="field"', (d) => d.split(/(?=M)/).slice(1).join(''))),
    PAINT,
  ],
  [
    'another colour on one step',
    () => flight((svg) => svg.replace(/(data-step="2" data-element="field"[^>]*fill=")#[0-9a-f]+/, '$1#123456')),
    PAINT,
  ],
  [
    'a step left out',
    () => flight((svg) => svg.replace(/<path[^>]*data-step="2" data-line="riser"[^>]*>/, '')),
    'every step is drawn once, from the bottom up',
  ],
  [
    'a step drawn higher than measured',
    () =>
      flight((svg) =>
        changePath(svg, 'data-step="3" data-line="riser"', (d) => moveCorner(moveCorner(d, 0, -1, 0, 0), 0, -1, 0, 1)),
      ),
    'every step is drawn as large as it was measured',
  ],
  [
    'a centre line beside the centre',
    () =>
      flight((svg) =>
        changePath(svg, 'data-line="centre"', (d) => moveCorner(moveCorner(d, 0.3, 0, 0, 0), 0.3, 0, 0, 1)),
      ),
    'one centre line runs up the whole flight',
  ],
  [
    'paint on a step that is not there',
    () =>
      flight((svg) =>
        svg.replace(
          '</g>',
          '</g><g id="paint"><path data-step="9" data-element="field" data-part="field" fill="#000" d="M0 0h5v5z"/></g>',
        ),
      ),
    'nothing is painted beside the steps',
  ],
  [
    'a strip beyond its limit',
    () =>
      changeLayout(files, ({ flight: told }) => {
        told.limits.sides.to = 20;
      }),
    'the strips at the sides keep within their limits',
  ],
  [
    'strips that are told wrong',
    () =>
      changeLayout(files, ({ flight: told }) => {
        told.steps[1].margins.above += 1;
      }),
    'the plain strips are as they are told',
  ],
  [
    'a wrong reading beside the flight',
    () => flight((svg) => svg.replace('data-label="184 mm"', 'data-label="188 mm"')),
    'the lengths beside the flight are those of its steps',
  ],
  [
    'a mark moved',
    () =>
      change(files, 'marks.csv', (csv) =>
        changeMark(
          csv,
          (row) => row.startsWith('riser-2-across') && row.includes('centre line'),
          (row) => row.replace('353 mm,353', '354 mm,354'),
        ),
      ),
    'the marks of every step stand where its panel is drawn',
  ],
  [
    'a step without its marks',
    () => change(files, 'marks.csv', (csv) => csv.replace(/^riser-3-up.*\r\n/gm, '')),
    'the marks of every step stand where its panel is drawn',
  ],
])('%s is refuted', async (_, tamper, claim) => {
  expect(await refuted(tamper())).toContain(claim);
});
