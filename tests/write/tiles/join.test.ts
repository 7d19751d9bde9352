import { beforeAll, describe, expect, test } from 'vitest';
import type { Paper } from '../../../src/job/job.ts';
import { writePlan } from '../../../src/write/plan.ts';
import { writeStencil } from '../../../src/write/stencil.ts';
import { printedPages } from '../../../src/write/tiles/pages.ts';
import { writeTiles } from '../../../src/write/tiles/tiles-pdf.ts';
import { readRings } from '../../support/read-path.ts';
import { cloth, withPrint } from './printed.ts';
import { type PageSeen, pointsOfRings, readPages } from './read-pages.ts';

type Points = [number, number][];

let whole: Awaited<ReturnType<typeof cloth>>;
/** What every drawing looks like in its own file, by the name its lines have on the pages. */
const files = new Map<string, Record<string, Points>>();

const pathsIn = (svg: string, pattern: RegExp): Points =>
  [...svg.matchAll(pattern)].flatMap(([path]) => pointsOfRings(readRings(/ d="([^"]*)"/.exec(path)![1]!)));

beforeAll(async () => {
  whole = await cloth();
  const { job, layout, drawing, motifs, sheets } = whole;
  for (const sheet of sheets) {
    const svg = writeStencil(sheet);
    files.set(sheet.file, {
      windows: pathsIn(svg, /<path id="window[^>]*>/g),
      keys: pathsIn(svg, /<path id="key[^>]*>/g),
    });
  }
  const plan = await writePlan(drawing, layout, job, motifs);
  files.set('plan.svg', {
    painted: pathsIn(plan, /<path data-element[^>]*>/g),
    edge: pathsIn(plan, /<path id="ground"[^>]*>/g),
  });
});

/** Distance of the farthest point from its nearest of the others, looked up by squares of 1 mm. */
function farthest(points: Points, others: Points): number {
  const squares = new Map<string, Points>();
  for (const [x, y] of others) {
    const key = `${Math.floor(x)},${Math.floor(y)}`;
    const list = squares.get(key);
    if (list) list.push([x, y]);
    else squares.set(key, [[x, y]]);
  }
  let worst = 0;
  for (const [x, y] of points) {
    let best = Number.POSITIVE_INFINITY;
    for (let i = -1; i <= 1; i++)
      for (let j = -1; j <= 1; j++)
        for (const [px, py] of squares.get(`${Math.floor(x) + i},${Math.floor(y) + j}`) ?? [])
          best = Math.min(best, Math.hypot(px - x, py - y));
    worst = Math.max(worst, best);
  }
  return worst;
}

/** What can be seen of one kind of line, page after page, each page put where its name says. */
function joined(
  pages: PageSeen[],
  name: string,
  shape: { columns: number; overlap: number; measured: number; at: number[] },
): Points {
  // On paper everything comes out so much smaller or larger.
  const printer = shape.measured / 254;
  return pages.flatMap((page) => {
    const [, row, letter] = /row (\d+), column ([A-Z]+)/.exec(page.words.find((words) => words.startsWith('row '))!)!;
    const column = letter!.charCodeAt(0) - 65;
    return page.strokes
      .filter(({ under }) => under[0] === 'drawing' && under.includes(name))
      .flatMap(({ points, clip }) => {
        const [left, top, right, bottom] = clip as [number, number, number, number];
        const [wide, high] = [(right - left) * printer, (bottom - top) * printer];
        return points
          .filter(([x, y]) => x >= left - 1e-4 && x <= right + 1e-4 && y >= top - 1e-4 && y <= bottom + 1e-4)
          .map(([x, y]): [number, number] => [
            (x - left) * printer + column * (wide - shape.overlap) + shape.at[0]!,
            (y - top) * printer + (Number(row) - 1) * (high - shape.overlap) + shape.at[1]!,
          ]);
      });
  });
}

describe.each<[Paper, number, number]>([
  ['letter', 12.7, 254],
  ['A4', 12, 251],
  ['legal', 6.35, 266.7],
  ['A3', 25, 254],
  ['tabloid', 12.7, 241.3],
])('%s, overlap %d mm, a printer on which 10 in measures %d mm', (paper, overlap, measured) => {
  test('the pages joined again give every drawing back to 0.1 mm', async () => {
    const printed = withPrint(whole, { paper, overlap, measured, plan: true });
    const stated = printedPages(printed.job, printed.layout, printed.sheets)!;
    const pages = await readPages((await writeTiles(printed))!);
    expect(pages).toHaveLength(stated.pages);
    expect(stated.drawings.map(({ file }) => file)).toEqual([...files.keys()]);
    for (const { file, page, rows, columns, box } of stated.drawings) {
      const own = pages.slice(page - 1, page - 1 + rows * columns);
      for (const [name, due] of Object.entries(files.get(file)!)) {
        const seen = joined(own, name, { columns, overlap, measured, at: box });
        expect(seen.length, `${file}: ${name}`).toBeGreaterThanOrEqual(due.length);
        expect(farthest(due, seen), `${file}: ${name}, as drawn`).toBeLessThan(0.1);
        expect(farthest(seen, due), `${file}: ${name}, as printed`).toBeLessThan(0.1);
      }
    }
  });
});

test('a page scaled to 99 % would not pass', async () => {
  const stated = printedPages(withPrint(whole, { plan: true }).job, whole.layout, whole.sheets)!;
  const pages = await readPages((await writeTiles(withPrint(whole, { plan: true })))!);
  const plan = stated.drawings.find(({ file }) => file === 'plan.svg')!;
  const own = pages.slice(plan.page - 1, plan.page - 1 + plan.rows * plan.columns);
  const shape = { columns: plan.columns, overlap: 12.7, measured: 254 * 0.99, at: plan.box };
  expect(farthest(joined(own, 'painted', shape), files.get('plan.svg')!.painted!)).toBeGreaterThan(0.5);
});

test('match marks of neighbours fall on one another, and lie where both pages show the drawing', async () => {
  const printed = withPrint(whole, { plan: true });
  const plan = printedPages(printed.job, printed.layout, printed.sheets)!.drawings.find(
    ({ file }) => file === 'plan.svg',
  )!;
  const pages = (await readPages((await writeTiles(printed))!)).slice(plan.page - 1);
  const { columns, rows, tile, step } = plan;
  const found: { at: [number, number]; pages: Set<number> }[] = [];
  pages.forEach((page, number) => {
    const clip = page.strokes.find(({ under }) => under[0] === 'drawing')!.clip!;
    for (const { points } of page.strokes.filter(({ under }) => under.includes('match'))) {
      const middle = (way: 0 | 1) =>
        (Math.min(...points.map((point) => point[way])) + Math.max(...points.map((point) => point[way]))) / 2;
      const at: [number, number] = [
        middle(0) - clip[0]! + (number % columns) * step.across,
        middle(1) - clip[1]! + Math.floor(number / columns) * step.along,
      ];
      const known = found.find((mark) => Math.hypot(mark.at[0] - at[0], mark.at[1] - at[1]) < 0.1);
      if (known) known.pages.add(number);
      else found.push({ at, pages: new Set([number]) });
    }
  });
  // Two on each join, each on both of its pages.
  expect(found).toHaveLength(2 * (rows * (columns - 1) + columns * (rows - 1)));
  for (const mark of found) expect(mark.pages.size).toBe(2);
  expect(tile.across - step.across).toBeCloseTo(12.7, 6);
});
