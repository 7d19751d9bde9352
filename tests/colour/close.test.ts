import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';
import { describe, expect, test } from 'vitest';
import { type Colourway, colourwaysOf } from '../../src/colour/ways.ts';
import type { Drawing } from '../../src/compose/drawing.ts';
import { pieceArea } from '../../src/geometry/measure.ts';
import type { Box } from '../../src/geometry/path.ts';
import { shifted } from '../../src/geometry/transform.ts';
import type { Job } from '../../src/job/job.ts';
import { drawJob, fitJob } from '../../src/pipeline.ts';
import { closeShown, writeCloseViews } from '../../src/write/colourways/close.ts';
import { writeWaysFiles } from '../../src/write/colourways/files.ts';
import { paintGroup } from '../../src/write/plan-paint.ts';
import { renderPng } from '../../src/write/png.ts';
import { rectanglePiece, sharedArea } from '../support/areas.ts';

const HEAD = ['evenfield: 1', 'title: Mat', 'units: mm'];
const COLOURS = [
  "palette: { bone: '#efe8d6', ink: '#23303f', rust: '#a2492a', moss: '#4f5b3a' }",
  'colours: { ground: bone, field: ink, alternate: rust, border: ink, corner: rust }',
  'colourways: [{ name: Dusk, colours: { ground: ink, field: bone, border: rust, corner: moss } }]',
];
const CLOTH = [...HEAD, 'surface: floor-cloth', 'overall: { across: 360, along: 480 }'];

const JOBS: Record<string, string[]> = {
  'a bordered cloth': [...CLOTH, 'field: { motif: diamond }', 'border: sawtooth'],
  'a cloth of two kinds of repeats': [
    ...CLOTH,
    'field: { motif: eight-point-star, alternate: checker, pitch: { across: 40 to 50 } }',
    'border: sawtooth',
  ],
  'a cloth whose field ends in halves': [
    ...HEAD,
    'surface: floor-cloth',
    'overall: { across: 330 to 390, along: 450 to 510 }',
    'field: { motif: diamond, landing: half, pitch: { across: 40 to 60 } }',
    'border: dog-tooth',
  ],
  'a cloth without a border': [
    ...CLOTH,
    'field: { motif: eight-point-star, pitch: { across: 60 to 70 } }',
    'border: none',
  ],
};
const ROOM = [
  ...HEAD,
  'surface: room-border',
  'site: { walls: [{ length: 3000 }, { length: 2000 }, { length: 3000 }, { length: 2000 }] }',
  'border: { motif: sawtooth, width: 60 to 100 }',
  'reserve: 50 to 120',
];
const STAIRS = [
  ...HEAD,
  'surface: stairs',
  'site: { steps: [{ riser: { across: 900, high: 190 } }, { riser: { across: 902, high: 189 } }] }',
  'stairs: { painted: risers, margin: { sides: 20 to 60, risers: 8 to 25 } }',
  'field: { motif: eight-point-star, repeats: { along: 1 } }',
  'border: sawtooth',
];
const FLOOR = [
  ...HEAD,
  'surface: floor',
  'site: { room: { near: 2140, right: 2740, far: 2151, left: 2756, diagonals: { near-left to far-right: 3480, near-right to far-left: 3494 } } }',
  'field: { motif: eight-point-star, pitch: { across: { from: 300, to: 460, wish: 380 } } }',
];

interface Seen {
  job: Job;
  drawing: Drawing;
  ways: Colourway[];
  window: Box;
  sheet: string;
}

async function seen(lines: string[]): Promise<Seen> {
  const drawn = await drawJob([...lines, ...COLOURS].join('\n'), 'a.job.yaml');
  if (!drawn.ok) throw new Error(JSON.stringify(drawn.issues));
  const { job, drawing } = drawn.value;
  const ways = colourwaysOf(drawing, job);
  const { box } = await closeShown(drawing, job);
  return { job, drawing, ways, window: box, sheet: await writeCloseViews(drawing, job, ways) };
}

const render = async (content: string, { left, top, right, bottom }: Box, pixels = 600) => {
  const [wide, high] = [right - left, bottom - top];
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${left} ${top} ${wide} ${high}" width="${wide}" height="${high}">${content}</svg>`;
  return PNG.sync.read(Buffer.from(await renderPng(svg, pixels)));
};

/** One colourway of the sheet, moved back to where its drawing is. */
const viewOf = (sheet: string, at: number): string => {
  const [defs] = /<defs>[\s\S]*?<\/defs>/.exec(sheet)!;
  const [group] = new RegExp(`<g id="colourway-${at + 1}"[\\s\\S]*?</g>`).exec(sheet)!;
  return defs + group.replace(/ transform="[^"]*"/, '');
};

describe.each(Object.entries({ ...JOBS, 'a border in a room': ROOM, 'a riser': STAIRS, 'a floor': FLOOR }))(
  'the close view of %s',
  (name, lines) => {
    test('is what the plan shows in that window, and no more', async () => {
      const { job, drawing, ways, window, sheet } = await seen(lines);
      for (const [at, { colours }] of ways.entries()) {
        const view = viewOf(sheet, at);
        const [shown, due] = [
          await render(view, window),
          await render(paintGroup(drawing, { ...job, colours }), window),
        ];
        const differ = pixelmatch(shown.data, due.data, undefined, due.width, due.height, { threshold: 0.05 });
        expect(differ / (due.width * due.height)).toBeLessThan(0.0005);
        // Half as much again on every side: nothing is painted out there.
        const more = { across: (window.right - window.left) / 2, along: (window.bottom - window.top) / 2 };
        const wider = {
          left: window.left - more.across,
          right: window.right + more.across,
          top: window.top - more.along,
          bottom: window.bottom + more.along,
        };
        const all = await render(view, wider);
        let covered = 0;
        for (let n = 3; n < all.data.length; n += 4) covered += all.data[n]! / 255;
        expect(covered / (all.width * all.height)).toBeCloseTo(1 / 4, 2);
      }
    });

    test('has of every colour as much as lies in the window by clipper2', async () => {
      const { job, drawing, ways, window, sheet } = await seen(lines);
      const whole = (window.right - window.left) * (window.bottom - window.top);
      const due = new Map<string, number>();
      const add = (hex: string, area: number) => due.set(hex, (due.get(hex) ?? 0) + area);
      const { colours } = ways[1]!;
      for (const { part, pieces, at } of drawing.regions) {
        for (let n = 0; n < at.length; n += 2) {
          const area = sharedArea(
            pieces.map((piece) => shifted(piece, at[n]!, at[n + 1]!)),
            [rectanglePiece(window)],
          );
          add(job.palette[colours[part]]!, area);
          add(job.palette[colours.ground]!, -area);
        }
      }
      add(job.palette[colours.ground]!, whole);
      const picture = await render(viewOf(sheet, 1), window, 1600);
      // A blended pixel belongs to the colour it is nearest to; over a whole edge that evens out.
      const hexes = [...due.keys()];
      const rgb = hexes.map((hex) => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)));
      const counts = hexes.map(() => 0);
      for (let n = 0; n < picture.data.length; n += 4) {
        const far = rgb.map((one) => one.reduce((sum, value, c) => sum + (value - picture.data[n + c]!) ** 2, 0));
        counts[far.indexOf(Math.min(...far))]!++;
      }
      hexes.forEach((hex, at) => {
        expect(counts[at]! / (picture.width * picture.height), `${name} ${hex}`).toBeCloseTo(due.get(hex)! / whole, 2);
      });
    });
  },
);

describe('what is seen from close by', () => {
  test.each(Object.entries(JOBS).filter(([, lines]) => !lines.includes('border: none')))(
    'of %s is its corner, as far as a line between two whole repeats',
    async (_, lines) => {
      const { drawing, window } = await seen(lines);
      const fitted = await fitJob([...lines, ...COLOURS].join('\n'), 'a.job.yaml');
      if (!fitted.ok) throw new Error('no fit');
      const [{ pitch, phase }] = fitted.value.fit.layouts as [(typeof fitted.value.fit.layouts)[number]];
      expect([window.left, window.bottom]).toEqual([drawing.work.left, drawing.work.bottom]);
      const across = (window.right - drawing.field.left) / pitch.across + phase.across;
      const along = (drawing.field.bottom - window.top) / pitch.along + phase.along;
      for (const count of [across, along]) {
        expect(count).toBeCloseTo(Math.round(count), 6);
        expect(count).toBeGreaterThanOrEqual(2);
      }
      expect(window.right).toBeLessThan(drawing.work.right);
      // Border and corner are in it.
      expect(drawing.field.left).toBeGreaterThan(window.left);
      expect(drawing.field.bottom).toBeLessThan(window.bottom);
    },
  );

  test('without a border is two repeats by two', async () => {
    const lines = JOBS['a cloth without a border']!;
    const { window } = await seen(lines);
    const fitted = await fitJob([...lines, ...COLOURS].join('\n'), 'a.job.yaml');
    if (!fitted.ok) throw new Error('no fit');
    const { pitch } = fitted.value.fit.layouts[0]!;
    expect((window.right - window.left) / pitch.across).toBeCloseTo(2, 6);
    expect((window.bottom - window.top) / pitch.along).toBeCloseTo(2, 6);
  });

  test('of a room has the corner block in it', async () => {
    const { drawing, window } = await seen(ROOM);
    const corners = drawing.regions.filter(({ element }) => element === 'corner');
    const inside = corners.some(({ pieces, at }) => {
      const placed = pieces.map((piece) => shifted(piece, at[0]!, at[1]!));
      const area = placed.reduce((sum, piece) => sum + pieceArea(piece), 0);
      return Math.abs(sharedArea(placed, [rectanglePiece(window)]) - area) < 0.01 * area;
    });
    expect(inside).toBe(true);
  });

  test('is labelled with its colours and what each is for', async () => {
    const { sheet } = await seen(JOBS['a bordered cloth']!);
    const labels = [...sheet.matchAll(/data-label="([^"]*)"/g)].map(([, label]) => label);
    expect(labels).toEqual(
      expect.arrayContaining([
        'As in the job',
        'bone: ground',
        'ink: field, border',
        'rust: corner',
        'Dusk',
        'ink: ground',
        'bone: field',
        'rust: border',
        'moss: corner',
      ]),
    );
    for (const hex of ['#efe8d6', '#23303f', '#a2492a', '#4f5b3a'])
      expect(sheet).toMatch(new RegExp(`<path d="M[^"]*" fill="${hex}" stroke`));
  });
});

test('a name that cannot be lettered is told, with the letters that are missing', async () => {
  const text = [...CLOTH, 'field: { motif: diamond }', 'border: none', ...COLOURS.slice(0, 2)];
  const drawn = await drawJob(
    [...text, 'colourways: [{ name: Дом, colours: { field: rust } }, { name: Plain, colours: { field: moss } }]'].join(
      '\n',
    ),
    'a.job.yaml',
  );
  if (!drawn.ok) throw new Error(JSON.stringify(drawn.issues));
  const { job, drawing } = drawn.value;
  const { files, says } = await writeWaysFiles(drawing, job, colourwaysOf(drawing, job));
  expect([...files.keys()].sort()).toEqual(
    ['colourways-close.png', 'colourways-close.svg', 'colourways.pdf', 'colourways.png', 'colourways.svg'].sort(),
  );
  expect(says).toHaveLength(1);
  expect(says[0]).toMatch(/“Дом”.*“Colourway 2”.*Д о м/);
  for (const file of ['colourways.svg', 'colourways-close.svg']) {
    expect(files.get(file)).toContain('data-label="Colourway 2"');
    expect(files.get(file)).toContain('data-label="Plain"');
  }
});
