import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';
import { beforeAll, describe, expect, test } from 'vitest';
import { type Colourway, colourwaysOf } from '../../src/colour/ways.ts';
import type { Drawing } from '../../src/compose/drawing.ts';
import type { Job } from '../../src/job/job.ts';
import { drawJob } from '../../src/pipeline.ts';
import { writeContactSheet } from '../../src/write/colourways/contact-sheet.ts';
import { paintGroup } from '../../src/write/plan-paint.ts';
import { renderPng } from '../../src/write/png.ts';

const JOB = [
  'evenfield: 1',
  'units: mm',
  'surface: floor-cloth',
  'overall: { across: 360, along: 480 }',
  'field: { motif: diamond }',
  'border: sawtooth',
  "palette: { bone: '#efe8d6', ink: '#23303f', rust: '#a2492a', moss: '#9b4c30' }",
  'colours: { ground: bone, field: ink, alternate: rust, border: ink, corner: rust }',
];
const WAYS = [
  'colourways:',
  '  - { name: Dusk, colours: { ground: ink, field: bone, border: rust } }',
  '  - { name: Muddle, colours: { ground: moss, border: rust } }',
];

let job: Job;
let drawing: Drawing;
let ways: Colourway[];
let sheet: string;

beforeAll(async () => {
  const drawn = await drawJob([...JOB, ...WAYS].join('\n'), 'a.job.yaml');
  if (!drawn.ok) throw new Error(JSON.stringify(drawn.issues));
  ({ job, drawing } = drawn.value);
  ways = colourwaysOf(drawing, job);
  sheet = await writeContactSheet(drawing, job, ways);
});

describe('colourways', () => {
  test('say only what differs from the job', () => {
    expect(ways.map(({ name }) => name)).toEqual(['As in the job', 'Dusk', 'Muddle']);
    expect(ways[1]!.colours).toMatchObject({ ground: 'ink', field: 'bone', border: 'rust', corner: 'rust' });
    expect(ways[2]!.colours).toMatchObject({ ground: 'moss', field: 'ink' });
  });

  test('are told apart by how they read', () => {
    expect(ways[0]!.pairs.every(({ reads }) => reads === 'well')).toBe(true);
    expect(ways[2]!.pairs.find(({ colours }) => [...colours].sort().join() === 'moss,rust')?.reads).toBe('hardly');
  });

  test('with a colour that the palette does not have are refused', async () => {
    const drawn = await drawJob(
      [...JOB, 'colourways: [{ name: Dawn, colours: { field: inc } }]'].join('\n'),
      'a.job.yaml',
    );
    expect(drawn.ok).toBe(false);
    if (drawn.ok) return;
    expect(drawn.issues).toEqual([
      expect.objectContaining({ code: 'job/colour-unknown', path: ['colourways', 0, 'colours', 'field'], hint: 'ink' }),
    ]);
  });
});

test.each([
  [
    'of one name twice',
    '[{ name: Dawn, colours: { field: rust } }, { name: dawn, colours: { field: bone } }]',
    'job/colourway-twice',
  ],
  ['without a name', '[{ name: "", colours: { field: rust } }]', 'job/title'],
])('colourways %s are refused', async (_, list, code) => {
  const drawn = await drawJob([...JOB, `colourways: ${list}`].join('\n'), 'a.job.yaml');
  expect(drawn.ok).toBe(false);
  if (!drawn.ok) expect(drawn.issues).toEqual([expect.objectContaining({ code, hint: expect.any(String) })]);
});

describe('the contact sheet', () => {
  test('shows each in its place exactly as its plan would be painted', async () => {
    const { left, top, right, bottom } = drawing.work;
    const box = `viewBox="${left} ${top} ${right - left} ${bottom - top}" width="360" height="480"`;
    const [defs] = /<defs>[\s\S]*?<\/defs>/.exec(sheet)!;
    for (const [at, { colours }] of ways.entries()) {
      const [group] = new RegExp(`<g id="colourway-${at + 1}"[\\s\\S]*?</g>`).exec(sheet)!;
      const placed = group.replace(/ transform="[^"]*"/, '');
      const render = async (content: string) =>
        PNG.sync.read(
          Buffer.from(await renderPng(`<svg xmlns="http://www.w3.org/2000/svg" ${box}>${content}</svg>`, 480)),
        );
      const [shown, due] = [await render(defs + placed), await render(paintGroup(drawing, { ...job, colours }))];
      expect(pixelmatch(shown.data, due.data, undefined, due.width, due.height, { threshold: 0 })).toBe(0);
    }
  });

  test('lays them side by side without one over another, all on the page', () => {
    const [, x, y, width, height] = /viewBox="(\S+) (\S+) (\S+) (\S+)"/.exec(sheet)!.map(Number) as number[];
    const places = [...sheet.matchAll(/<g id="colourway-\d+" transform="translate\((\S+) (\S+)\)"/g)].map(
      ([, dx, dy]) => ({
        left: drawing.work.left + Number(dx),
        right: drawing.work.right + Number(dx),
        top: drawing.work.top + Number(dy),
        bottom: drawing.work.bottom + Number(dy),
      }),
    );
    expect(places).toHaveLength(3);
    for (const [at, one] of places.entries()) {
      expect(one.left).toBeGreaterThan(x!);
      expect(one.top).toBeGreaterThan(y!);
      expect(one.right).toBeLessThan(x! + width!);
      expect(one.bottom).toBeLessThan(y! + height!);
      for (const other of places.slice(at + 1))
        expect(
          one.right < other.left || other.right < one.left || one.bottom < other.top || other.bottom < one.top,
        ).toBe(true);
    }
  });

  test('names each, and says what will not be seen', () => {
    const labels = [...sheet.matchAll(/data-label="([^"]*)"/g)].map(([, label]) => label);
    expect(labels).toEqual(
      expect.arrayContaining(['As in the job', 'Dusk', 'Muddle', 'All its colours read well beside each other.']),
    );
    expect(labels.join(' ')).toMatch(/(rust beside moss|moss beside rust) will hardly be told apart/);
  });
});
