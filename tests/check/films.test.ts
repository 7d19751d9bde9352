import { beforeAll, expect, test } from 'vitest';
import { makeFiles } from '../../src/pipeline.ts';
import { recheck } from './support/recheck.ts';
import { change, type Files } from './support/tamper.ts';

/** A small cloth whose sheets share a film, seen from the back and with the blade running on. */
const JOB = `evenfield: 1
units: mm
surface: floor-cloth
overall: { across: 480, along: 640 }
field: { motif: diamond, repeats: { across: 4 } }
border: { motif: sawtooth, width: 60, corner: rosette }
stencil: { sheet: { across: 600, along: 900 }, cutting: { files: one a film, mirrored: yes, overcut: 0.3 mm } }
print: { tiles: none }
`;
let files: Files;
beforeAll(async () => {
  const made = await makeFiles(JOB, 'film.job.yaml');
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  files = made.value.files;
});

const refuted = async (changed: Files): Promise<string[]> =>
  (await recheck(files, changed)).claims.filter(({ holds }) => !holds).map(({ claim }) => claim);

const LINES = 'the film holds every line of its sheets, and no other';
const CLEAR = 'every sheet lies on a film, clear of the others';

test('every claim holds, and several sheets share a film', async () => {
  expect(await refuted(files)).toEqual([]);
  const { films, sheets } = JSON.parse(String(files.get('layout.json')));
  expect(films.length).toBeLessThan(sheets.length);
  expect(films.flatMap(({ sheets: on }: { sheets: unknown[] }) => on)).toHaveLength(sheets.length);
  // The film holds no more than the film is large: a bound from areas.
  const area = [...files]
    .filter(([name]) => /^stencil-/.test(name))
    .map(([, text]) => /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(String(text))!);
  const sum = area.reduce((all, [, w, h]) => all + Number(w) * Number(h), 0);
  expect(films.length).toBeGreaterThanOrEqual(Math.ceil(sum / (600 * 900)));
});

const layout = (
  to: (data: { films: { sheets: { x: number; y: number; turned: boolean; file: string }[] }[] }) => void,
): Files =>
  change(files, 'layout.json', (text) => {
    const data = JSON.parse(text);
    to(data);
    return JSON.stringify(data);
  });

test.each<[string, () => Files, string]>([
  [
    'a line moved by 0.2 mm',
    () =>
      change(files, 'film-1.svg', (svg) =>
        svg.replace(/(id="sheet-1-window-\d+"[^>]* d="[Mm])(-?[\d.]+)/, (_, a, x) => `${a}${Number(x) + 0.2}`),
      ),
    LINES,
  ],
  [
    'a line left out',
    () => change(files, 'film-1.svg', (svg) => svg.replace(/<path id="sheet-1-window-2"[^>]*>/, '')),
    LINES,
  ],
  [
    'a line more',
    () =>
      change(files, 'film-1.svg', (svg) =>
        svg.replace('</svg>', '<path id="more" data-line="cut" d="M1 1h5v5z"/></svg>'),
      ),
    LINES,
  ],
  [
    'a key drawn as a line to draw',
    () => change(files, 'film-1.svg', (svg) => svg.replace(/(id="sheet-1-key-1"[^>]*data-line=")cut/, '$1draw')),
    LINES,
  ],
  ['a film of 99 %', () => change(files, 'film-1.svg', (svg) => svg.replace('width="600mm"', 'width="594mm"')), LINES],
  [
    'a sheet moved on the list',
    () =>
      layout(({ films }) => {
        films[0]!.sheets[0]!.x += 0.2;
      }),
    LINES,
  ],
  [
    'a sheet over the edge',
    () =>
      layout(({ films }) => {
        films[0]!.sheets[0]!.x = 590;
      }),
    CLEAR,
  ],
  [
    'a sheet on another',
    () =>
      layout(({ films }) => {
        const [one, other] = films[0]!.sheets;
        Object.assign(other!, { x: one!.x, y: one!.y });
      }),
    CLEAR,
  ],
  [
    'a sheet on no film',
    () =>
      layout(({ films }) => {
        films[0]!.sheets.pop();
      }),
    'every sheet has its place on one film',
  ],
])('%s is refuted', async (_, tamper, claim) => {
  expect(await refuted(tamper())).toContain(claim);
});
