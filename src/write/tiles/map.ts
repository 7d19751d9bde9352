import type { Box, Point } from '../../geometry/path.ts';
import { LAY, SMALL_WORDS, WORDS } from './looks.ts';
import { line, rectangle } from './outlines.ts';
import type { Spread } from './pages.ts';
import type { Surface } from './surface.ts';
import { shortName, type Tile, tilesOf } from './tiling.ts';

/** The largest scale of a map. */
const LARGEST = 1 / 4;

/** A small picture of one drawing with the names of its pages on it, inside a box of the page. */
export function drawMap(surface: Surface, number: number, spread: Spread, room: Box, overlap: number): void {
  const { tiling, file, says, page } = spread;
  const { rows, columns, step, tile, origin } = tiling;
  const count = rows * columns;
  surface.label(file, { x: room.left, y: room.top + 3.4, size: 3.6, anchor: 'start' }, WORDS);
  const pages = count === 1 ? `page ${page}` : `pages ${page} to ${page + count - 1}`;
  const grid = `${pages}: ${rows} ${rows === 1 ? 'row' : 'rows'}, ${columns} ${columns === 1 ? 'column' : 'columns'}`;
  const under = surface.width(`${grid}; ${says}`, 2.9) <= room.right - room.left ? `${grid}; ${says}` : grid;
  surface.label(under, { x: room.left, y: room.top + 7.4, size: 2.9, anchor: 'start' }, SMALL_WORDS);

  const [wide, high] = [(columns - 1) * step.across + tile.across, (rows - 1) * step.along + tile.along];
  const top = room.top + 9.5;
  const scale = Math.min(LARGEST, (room.right - room.left) / wide, (room.bottom - top) / high);
  const place = (x: number, y: number): [number, number] => [
    room.left + (x - origin[0]) * scale,
    top + (y - origin[1]) * scale,
  ];
  const [left, upper] = place(...origin);
  const whole = { left, top: upper, right: left + wide * scale, bottom: upper + high * scale };
  surface.group('map', () => {
    surface.drawing(number, whole, { x: left - origin[0] * scale, y: upper - origin[1] * scale, scale });
    surface.stroke([rectangle(whole)], LAY);
    const half = overlap / 2;
    const joins = [
      ...Array.from(
        { length: columns - 1 },
        (_, n) => place(origin[0] + (n + 1) * step.across + half, origin[1])[0],
      ).map((x) => line([x, whole.top], [x, whole.bottom])),
      ...Array.from({ length: rows - 1 }, (_, n) => place(origin[0], origin[1] + (n + 1) * step.along + half)[1]).map(
        (y) => line([whole.left, y], [whole.right, y]),
      ),
    ];
    if (joins.length > 0) surface.stroke(joins, { ...LAY, width: 0.3, dash: [1.5, 1] }, false);
  });
  const size = Math.max(1.6, Math.min(5, 0.42 * scale * step.across, 0.6 * scale * step.along));
  for (const one of tilesOf(tiling)) {
    const [x, y] = place(...middleOf(one, spread, overlap));
    surface.label(shortName(one), { x, y: y + 0.35 * size, size, anchor: 'middle' }, WORDS);
  }
}

/** The middle of what is kept of a page once it is joined: between its joins, and no farther than the drawing goes. */
function middleOf({ row, column, box }: Tile, { tiling, box: whole }: Spread, overlap: number): Point {
  const half = overlap / 2;
  const left = column === 0 ? box.left : box.left + half;
  const top = row === 0 ? box.top : box.top + half;
  const right = Math.min(column === tiling.columns - 1 ? box.right : box.right - half, whole.right);
  const bottom = Math.min(row === tiling.rows - 1 ? box.bottom : box.bottom - half, whole.bottom);
  return [(left + Math.max(left, right)) / 2, (top + Math.max(top, bottom)) / 2];
}
