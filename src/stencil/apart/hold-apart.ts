import { boxesMeet, pieceBox } from '../../geometry/measure.ts';
import type { Box, Piece, Point } from '../../geometry/path.ts';
import { shifted, shiftedBox } from '../../geometry/transform.ts';
import type { BridgeSettings } from '../bridges/bridge.ts';
import type { Tools } from '../bridges/bridge-windows.ts';
import { cutStrips } from '../bridges/cut-strips.ts';
import { piecePaths } from '../clip.ts';
import { contactStrips } from './contacts.ts';

/** Pieces of one colour that stand together: first at `at`, again every so many mm, never where that is endless. */
export interface Stand {
  pieces: Piece[];
  at: Point;
  every: Point;
}

/** How often a period fits between two distances, both ends tried. */
function steps(period: number, from: number, to: number): number[] {
  if (!Number.isFinite(period)) return from <= 0 && to >= 0 ? [0] : [];
  const [first, last] = [Math.ceil(from / period - 1e-9), Math.floor(to / period + 1e-9)];
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, n) => (first + n) * period);
}

/** Where a stand has copies whose box comes within reach of another box, relative to that box's own stand. */
export function* copiesNear(box: Box, own: Box, [dx, dy]: Point, every: Point, reach: number): Generator<Point> {
  for (const x of steps(every[0], box.left - own.right - reach - dx, box.right - own.left + reach - dx))
    for (const y of steps(every[1], box.top - own.bottom - reach - dy, box.bottom - own.top + reach - dy))
      yield [dx + x, dy + y];
}

/**
 * Shapes that touch, or nearly, held apart by strips as wide as a bridge, so that they can be cut side by side on one sheet. A strip is taken from both
 * shapes alike, all copies of a shape lose the same, and the sides away from a strip stay as they are.
 * @returns the pieces of each stand; a piece may come back in several parts, or not at all
 */
export function holdApart(stands: Stand[], settings: BridgeSettings, { booleans, clipper }: Tools): Piece[][] {
  const { bridge } = settings;
  return stands.map((stand, which) =>
    stand.pieces.flatMap((piece, own) => {
      const box = pieceBox(piece);
      const paths = piecePaths(piece);
      const strips = stands.flatMap((other, there) =>
        other.pieces.flatMap((beside, index) => {
          const offset: Point = [other.at[0] - stand.at[0], other.at[1] - stand.at[1]];
          const besideBox = pieceBox(beside);
          return [...copiesNear(box, besideBox, offset, other.every, bridge)].flatMap(([x, y]) => {
            const isSelf = which === there && own === index && Math.abs(x) + Math.abs(y) < 1e-6;
            if (isSelf || !boxesMeet(box, shiftedBox(besideBox, x, y), bridge)) return [];
            return contactStrips(clipper, paths, piecePaths(shifted(beside, x, y)), bridge);
          });
        }),
      );
      return strips.length > 0 ? cutStrips([piece], strips, settings, booleans, clipper) : [piece];
    }),
  );
}
