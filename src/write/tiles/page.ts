import type { Point } from '../../geometry/path.ts';
import { LAY, MARK, SMALL_WORDS, TRIM, WORDS } from './looks.ts';
import { circle, line } from './outlines.ts';
import type { Spread } from './pages.ts';
import { areaOf, MARGIN } from './paper.ts';
import { drawSmallBar } from './scale-bar.ts';
import type { Surface } from './surface.ts';
import { nameOf, shortName, type Tile } from './tiling.ts';

/** Radius of a match mark, true mm. */
const ROUND = 2;
/** Where the match marks lie along a join, as shares of it. */
const ALONG_JOIN = [0.25, 0.75];

export interface PageOf {
  /** Number of the drawing. */
  number: number;
  spread: Spread;
  tile: Tile;
  title: string;
  /** Of all pages. */
  count: number;
  overlap: number;
  factor: number;
}

/** One page of a drawing: its part of the drawing, where to cut, match marks, its name and a scale. */
export function drawPage(surface: Surface, { number, spread, tile, title, count, overlap, factor }: PageOf): void {
  const { tiling } = spread;
  const area = areaOf(tiling.page);
  surface.drawing(number, area, {
    x: area.left - tile.box.left * factor,
    y: area.top - tile.box.top * factor,
    scale: factor,
  });
  drawJoins(surface, { spread, tile, overlap, factor });

  const foot = tiling.page.along - MARGIN;
  const name = nameOf(tile);
  surface.label(name, { x: area.left + 1, y: foot - 1.2, size: 5, anchor: 'start' }, WORDS);
  const bar = area.right - 62 * factor;
  const words = area.left + 1 + surface.width('row 88, column BB', 5) + 3;
  const room = bar - words - 4;
  const whole = `${spread.file}: ${spread.says}`;
  const short = surface.width(whole, 3) <= room ? whole : spread.file;
  const page = `page ${spread.page + tile.row * tiling.columns + tile.column} of ${count}`;
  const from = surface.width(`${page}, ${title}`, 3) <= room ? `${page}, ${title}` : page;
  surface.label(short, { x: words, y: foot - 5, size: 3, anchor: 'start' }, SMALL_WORDS);
  surface.label(from, { x: words, y: foot - 1.2, size: 3, anchor: 'start' }, SMALL_WORDS);
  drawSmallBar(surface, bar, foot - 3.6, factor);
}

/** Joins run through the middle of each overlap: cut along the left and the upper one, lay the page on those at the others. */
function drawJoins(
  surface: Surface,
  { spread, tile, overlap, factor }: Pick<PageOf, 'spread' | 'tile' | 'overlap' | 'factor'>,
): void {
  const { tiling } = spread;
  const area = areaOf(tiling.page);
  const { row, column } = tile;
  const inset = (overlap / 2) * factor;
  const join = (from: Point, to: Point, other: Pick<Tile, 'row' | 'column'>, cut: boolean) => {
    surface.group(cut ? 'trim' : 'lay', () => surface.stroke([line(from, to)], cut ? TRIM : LAY, false));
    const names = [tile, other]
      .sort((a, b) => a.row - b.row || a.column - b.column)
      .map(shortName)
      .join('–');
    for (const share of ALONG_JOIN) {
      const at: Point = [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
      drawMatch(surface, at, factor);
      surface.label(names, { x: at[0], y: at[1] - ROUND * factor - 1, size: 2.6, anchor: 'middle' }, WORDS);
    }
  };
  if (column > 0)
    join([area.left + inset, area.top], [area.left + inset, area.bottom], { row, column: column - 1 }, true);
  if (row > 0) join([area.left, area.top + inset], [area.right, area.top + inset], { row: row - 1, column }, true);
  if (column < tiling.columns - 1)
    join([area.right - inset, area.top], [area.right - inset, area.bottom], { row, column: column + 1 }, false);
  if (row < tiling.rows - 1)
    join([area.left, area.bottom - inset], [area.right, area.bottom - inset], { row: row + 1, column }, false);
}

function drawMatch(surface: Surface, [x, y]: Point, factor: number): void {
  const [round, arm] = [ROUND * factor, 1.4 * ROUND * factor];
  surface.group('match', () => {
    surface.stroke([circle([x, y], round)], MARK);
    surface.stroke([line([x - arm, y], [x + arm, y]), line([x, y - arm], [x, y + arm])], MARK, false);
  });
}
