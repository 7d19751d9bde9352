import type { Drawing } from '../../compose/drawing.ts';
import type { Box, Piece, Point, Ring } from '../../geometry/path.ts';
import type { Sheet } from '../../stencil/sheet.ts';
import { sheetOrigin } from '../stencil.ts';
import { CUT, EDGE, GUIDE, KEY, PAINTED } from './looks.ts';
import { line, rectangle } from './outlines.ts';
import type { Look } from './surface.ts';

/** Lines of one kind. */
export interface Layer {
  name: string;
  look: Look;
  /** Closed outlines, and the places (x0, y0, x1, y1, …) where each set of them is drawn, mm. */
  regions: { pieces: readonly Piece[]; at: ArrayLike<number> }[];
  /** Lines that are not closed. */
  lines: Ring[];
}

const HERE = [0, 0];
const closed = (name: string, look: Look, pieces: readonly Piece[], at: ArrayLike<number> = HERE): Layer => ({
  name,
  look,
  regions: [{ pieces, at }],
  lines: [],
});

/** A sheet in the coordinates of its file: its edge, its windows and its keys. */
export function sheetLayers(sheet: Sheet): Layer[] {
  const { left, top, right, bottom } = sheet.outline;
  const at = sheetOrigin(sheet);
  const keys = sheet.keys.map(({ piece }) => piece);
  return [
    closed('edge', EDGE, [[rectangle({ left: 0, top: 0, right: right - left, bottom: bottom - top })]]),
    closed('windows', CUT, sheet.windows, at),
    ...(keys.length > 0 ? [closed('keys', KEY, keys, at)] : []),
  ];
}

/** The plan as outlines, not filled, so that it takes little ink: edge of the work, what is painted, and the guide lines. */
export function planLayers({ work, border, innerBorder, field, regions }: Drawing): Layer[] {
  const boxes = [border.inner, ...(innerBorder ? [innerBorder.outer, innerBorder.inner] : []), field];
  return [
    closed('edge', EDGE, [[rectangle(work)]]),
    { name: 'guides', look: GUIDE, regions: [], lines: guides(work, boxes) },
    { name: 'painted', look: PAINTED, regions: regions.map(({ pieces, at }) => ({ pieces, at })), lines: [] },
  ];
}

const NEXT_TO_NOTHING = 1e-6;

/** The axis, the line across the middle, and the edges of border and field, from edge to edge of the work. */
function guides(work: Box, boxes: Box[]): Ring[] {
  const apart = (places: number[], low: number, high: number) =>
    places
      .filter((at) => at - low > NEXT_TO_NOTHING && high - at > NEXT_TO_NOTHING)
      .sort((a, b) => a - b)
      .filter((at, n, all) => n === 0 || at - all[n - 1]! > NEXT_TO_NOTHING);
  const { left, right, top, bottom } = work;
  const xs = apart([0, ...boxes.flatMap((box) => [box.left, box.right])], left, right);
  const ys = apart([0, ...boxes.flatMap((box) => [box.top, box.bottom])], top, bottom);
  const upright = xs.map((x): [Point, Point] => [
    [x, top],
    [x, bottom],
  ]);
  const level = ys.map((y): [Point, Point] => [
    [left, y],
    [right, y],
  ]);
  return [...upright, ...level].map(([from, to]) => line(from, to));
}
