import { beforeAll, describe, expect, test } from 'vitest';
import { MANY, pagesOf } from '../../../src/write/tiles/pages.ts';
import { PAPER } from '../../../src/write/tiles/paper.ts';
import { writeTiles } from '../../../src/write/tiles/tiles-pdf.ts';
import { tileFile, writeTileDrawings } from '../../../src/write/tiles/tiles-svg.ts';
import { columnName, nameOf, shortName, tileDrawing, tilesOf } from '../../../src/write/tiles/tiling.ts';
import { cloth, runner, withPrint } from './printed.ts';
import { type PageSeen, readPages } from './read-pages.ts';

const POINTS = 72 / 25.4;

describe('papers', () => {
  // ISO 216 through its points (x 72 / 25.4); the inch sizes as CSS Paged Media 3 lists them for @page, in points.
  test.each([
    ['A4', 595.276, 841.89],
    ['A3', 841.89, 1190.551],
    ['letter', 612, 792],
    ['legal', 612, 1008],
    ['tabloid', 792, 1224],
  ] as const)('%s is %d × %d points', (name, across, along) => {
    expect(PAPER[name].across * POINTS).toBeCloseTo(across, 3);
    expect(PAPER[name].along * POINTS).toBeCloseTo(along, 3);
  });
});

describe('tiling', () => {
  const box = (across: number, along: number) => ({ left: 0, top: 0, right: across, bottom: along });

  // Letter shows 8 in × (10.5 in less the foot): two pages with 1/2 in shared reach 15 1/2 in across, three 23 in.
  test('takes as many pages as the overlap asks for', () => {
    const inch = 25.4;
    const upright = (across: number, along: number) => tileDrawing(box(across, along), PAPER.letter, 12.7, 1);
    expect(upright(8 * inch, 10 * inch)).toMatchObject({ columns: 1, rows: 1, page: PAPER.letter });
    expect(upright(15.5 * inch, 10 * inch).columns * upright(15.5 * inch, 10 * inch).rows).toBe(2);
    expect(upright(23 * inch, 19 * inch)).toMatchObject({ columns: 3, rows: 2 });
  });

  test('lies sideways where that takes fewer pages', () => {
    const wide = tileDrawing(box(260, 190), PAPER.letter, 12.7, 1);
    expect(wide).toMatchObject({ columns: 1, rows: 1, page: { across: 279.4, along: 215.9 } });
  });

  test('covers every drawing, neighbours sharing just the overlap', () => {
    for (const [across, along] of [
      [1, 1],
      [203.2, 240],
      [1000, 500],
      [3000, 90],
    ] as const)
      for (const paper of Object.values(PAPER))
        for (const factor of [0.96, 1, 1.05]) {
          const tiling = tileDrawing(box(across, along), paper, 12, factor);
          const tiles = tilesOf(tiling);
          expect(tiles).toHaveLength(tiling.rows * tiling.columns);
          expect(Math.max(...tiles.map((one) => one.box.right))).toBeGreaterThanOrEqual(across - 1e-6);
          expect(Math.max(...tiles.map((one) => one.box.bottom))).toBeGreaterThanOrEqual(along - 1e-6);
          for (const one of tiles.filter(({ column }) => column > 0)) {
            const before = tiles.find(({ row, column }) => row === one.row && column === one.column - 1)!;
            expect(before.box.right - one.box.left).toBeCloseTo(12, 9);
          }
        }
  });

  test('names rows by numbers and columns by letters', () => {
    expect([0, 1, 25, 26, 27, 51, 52].map(columnName)).toEqual(['A', 'B', 'Z', 'AA', 'AB', 'AZ', 'BA']);
    expect(nameOf({ row: 1, column: 1 })).toBe('row 2, column B');
    expect(shortName({ row: 11, column: 27 })).toBe('12AB');
    expect(tileFile('stencil-slate-1.svg', { row: 1, column: 1 })).toBe('tile-slate-1-2-b.svg');
    expect(tileFile('plan.svg', { row: 0, column: 26 })).toBe('tile-plan-1-aa.svg');
  });
});

describe('which drawings are printed', () => {
  let small: Awaited<ReturnType<typeof cloth>>;
  let long: Awaited<ReturnType<typeof runner>>;
  beforeAll(async () => {
    [small, long] = [await cloth(), await runner()];
  });
  const filesOf = (printed: typeof small) =>
    pagesOf(printed.job, printed.layout, printed.sheets)?.spreads.map(({ file }) => file);

  test('the plan only where it takes few pages, unless it is asked for', () => {
    expect(filesOf(small)).toEqual([...small.sheets.map(({ file }) => file), 'plan.svg']);
    expect(filesOf(long)).toEqual(long.sheets.map(({ file }) => file));
    const { planWouldTake } = pagesOf(long.job, long.layout, long.sheets)!;
    expect(planWouldTake).toBeGreaterThan(MANY);
    const asked = withPrint(long, { plan: true, sheets: false });
    expect(filesOf(asked)).toEqual(['plan.svg']);
    expect(pagesOf(asked.job, asked.layout, asked.sheets)!.count).toBe(planWouldTake! + 2);
    expect(filesOf(withPrint(small, { plan: false, sheets: true }))).toEqual(small.sheets.map(({ file }) => file));
  });

  test('nothing where the job wants no pages', async () => {
    expect(await writeTiles(withPrint(small, { tiles: 'none' }))).toBeUndefined();
    expect((await writeTileDrawings(withPrint(small, { tiles: 'none' }))).size).toBe(0);
    expect((await writeTileDrawings(small)).size).toBe(0);
  });

  test('a long runner stays a small file: every shape stands in it once', async () => {
    const bytes = (await writeTiles(withPrint(long, { plan: true })))!;
    expect(bytes.length).toBeLessThan(400_000);
  });
});

describe('the words on the pages', () => {
  let pages: PageSeen[];
  let printed: Awaited<ReturnType<typeof cloth>>;
  let bytes: Uint8Array;
  beforeAll(async () => {
    printed = withPrint(await cloth(), { paper: 'letter', measured: 255.5875 });
    printed.job.title = 'Poêle: 3⅜″ × 2′, ½ & “ø” (a\\b) <9>';
    bytes = (await writeTiles({ ...printed, job: { ...printed.job, units: 'in', system: 'inch' } }))!;
    pages = await readPages(bytes);
  });

  test('are text that reads back, primes and fractions among it', () => {
    const first = pages[0]!.words.join(' ');
    // The face has no ⅜; every other sign of the title is there.
    expect(first).toContain('Poêle: 3″ × 2′, ½ & “ø” (a\\b) <9>');
    expect(first).toContain('10 in measured: 10 1/16 in');
    expect(first).toContain('99.38 % of size, for a printer on which 10 in measured 10 1/16"');
    expect(first).toContain('85.60 × 53.98 mm (ISO/IEC 7810, ID-1)');
    for (const label of ['0', '1', '9', '10 in', '5', '20', '25 cm']) expect(pages[0]!.words).toContain(label);
  });

  test('name every page, its drawing and its number', () => {
    const { spreads, count } = pagesOf(printed.job, printed.layout, printed.sheets)!;
    expect(pages).toHaveLength(count);
    for (const { file, tiling, page } of spreads)
      for (const tile of tilesOf(tiling)) {
        const at = page - 1 + tile.row * tiling.columns + tile.column;
        const words = pages[at]!.words;
        expect(words).toContain(nameOf(tile));
        expect(words.some((one) => one.startsWith(file))).toBe(true);
        expect(words.some((one) => one.startsWith(`page ${at + 1} of ${count}`))).toBe(true);
        expect(words).toEqual(expect.arrayContaining(['2 in', '5 cm']));
      }
  });

  test('the maps name every file and every page of it', () => {
    const { spreads, maps } = pagesOf(printed.job, printed.layout, printed.sheets)!;
    const words = pages.slice(1, 1 + maps).flatMap((page) => page.words);
    for (const { file, tiling } of spreads) {
      expect(words).toContain(file);
      for (const tile of tilesOf(tiling)) expect(words).toContain(shortName(tile));
    }
  });

  // ISO/IEC 7810: ID-1 is 85.60 × 53.98 mm. On this printer everything comes out 255.5875 / 254 as large.
  test('the bar and the card come out true on paper', () => {
    const extent = (name: string) => {
      const { points } = pages[0]!.strokes.find(({ under }) => under.includes(name))!;
      const way = (at: 0 | 1) => Math.max(...points.map((p) => p[at])) - Math.min(...points.map((p) => p[at]));
      return [way(0), way(1)].map((mm) => (mm * 255.5875) / 254);
    };
    expect(extent('scale-bar')[1]).toBeCloseTo(254, 2);
    expect(Math.abs(extent('card')[0]! - 85.6)).toBeLessThan(0.02);
    expect(Math.abs(extent('card')[1]! - 53.98)).toBeLessThan(0.02);
  });

  test('same job, same bytes; no date and nothing random', async () => {
    const again = (await writeTiles({ ...printed, job: { ...printed.job, units: 'in', system: 'inch' } }))!;
    expect(Buffer.from(again).equals(Buffer.from(bytes))).toBe(true);
    const text = Buffer.from(bytes).toString('latin1');
    expect(text).not.toMatch(/CreationDate|ModDate|\/ID\b|D:\d{8}/);
    const today = new Date().toISOString().slice(0, 10);
    for (const date of [today, today.replaceAll('-', '')]) expect(text).not.toContain(date);
  });
});

test('pages as SVG show what the pages of the PDF show', async () => {
  const printed = withPrint(await cloth(), { paper: 'A3', measured: 252, tiles: 'pdf and svg' });
  const drawn = await writeTileDrawings(printed);
  const { spreads } = pagesOf(printed.job, printed.layout, printed.sheets)!;
  const due = spreads.flatMap(({ file, tiling }) => tilesOf(tiling).map((tile) => tileFile(file, tile)));
  expect([...drawn.keys()].sort()).toEqual(due.sort());
  for (const [name, svg] of drawn) {
    const [, wide, high] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg)!;
    expect(
      [Number(wide), Number(high)].sort((a, b) => a - b),
      name,
    ).toEqual([297, 420]);
    const [, x, y, scale] = /translate\((\S+) (\S+)\) scale\((\S+)\)/.exec(svg)!;
    expect(Number(scale)).toBeCloseTo(254 / 252, 9);
    // The first tile begins 1 mm outside the drawing, at the margin of 6.35 mm.
    if (/-1-a\.svg$/.test(name) && !name.includes('plan')) {
      expect(Number(x)).toBeCloseTo(6.35 + 254 / 252, 2);
      expect(Number(y)).toBeCloseTo(6.35 + 254 / 252, 2);
    }
    expect(svg).toMatch(/data-label="row \d+, column [A-Z]+"/);
  }
});
