import type { Box } from '../../geometry/path.ts';
import { areaOf, type Size, turned } from './paper.ts';

/** How a drawing is spread over pages. All but `page` in true mm of the drawing. */
export interface Tiling {
  /** The paper as it lies: upright or sideways. */
  page: Size;
  rows: number;
  columns: number;
  /** What one page shows. */
  tile: Size;
  /** From one tile to the next. */
  step: Size;
  /** Top left corner of the first tile, in coordinates of the drawing. */
  origin: [x: number, y: number];
}

export interface Tile {
  /** Counted from 0, from the top and from the left. */
  row: number;
  column: number;
  /** What the page shows, in coordinates of the drawing. */
  box: Box;
}

const SLACK = 1e-6;

/** How many tiles a length takes; neighbours share the overlap. */
const countFor = (length: number, tile: number, overlap: number): number =>
  Math.max(1, Math.ceil((length - overlap) / (tile - overlap) - SLACK));

function layOut(box: Box, page: Size, overlap: number, factor: number): Tiling {
  const area = areaOf(page);
  const tile = { across: (area.right - area.left) / factor, along: (area.bottom - area.top) / factor };
  return {
    page,
    rows: countFor(box.bottom - box.top, tile.along, overlap),
    columns: countFor(box.right - box.left, tile.across, overlap),
    tile,
    step: { across: tile.across - overlap, along: tile.along - overlap },
    origin: [box.left, box.top],
  };
}

/**
 * Spreads a drawing over the fewest pages, upright or sideways; upright where both take as many.
 * @param box what is drawn, mm
 * @param paper upright
 * @param overlap mm that neighbouring pages share, less than half of a tile
 * @param factor the correction for the printer
 */
export function tileDrawing(box: Box, paper: Size, overlap: number, factor: number): Tiling {
  const upright = layOut(box, paper, overlap, factor);
  const sideways = layOut(box, turned(paper), overlap, factor);
  return sideways.rows * sideways.columns < upright.rows * upright.columns ? sideways : upright;
}

/** Every tile, row by row from the top, each row from the left. */
export function tilesOf({ rows, columns, tile, step, origin: [x, y] }: Tiling): Tile[] {
  return Array.from({ length: rows * columns }, (_, at) => {
    const [row, column] = [Math.floor(at / columns), at % columns];
    const [left, top] = [x + column * step.across, y + row * step.along];
    return { row, column, box: { left, top, right: left + tile.across, bottom: top + tile.along } };
  });
}

/** A, B, … Z, AA, AB, … */
export function columnName(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnName(Math.floor(column / 26) - 1) + letter;
}

type Place = Pick<Tile, 'row' | 'column'>;

/** `row 2, column B` */
export const nameOf = ({ row, column }: Place): string => `row ${row + 1}, column ${columnName(column)}`;
/** `2B` */
export const shortName = ({ row, column }: Place): string => `${row + 1}${columnName(column)}`;
