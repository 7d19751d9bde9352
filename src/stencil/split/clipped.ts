import { clipPieces } from '../../geometry/clip.ts';
import { boxesMeet } from '../../geometry/measure.ts';
import type { Box, Piece } from '../../geometry/path.ts';
import { shiftedBox } from '../../geometry/transform.ts';
import { lapped } from '../part.ts';
import type { Axis } from '../patch.ts';

/** What of a window one part has, in the cell so many cells on from the window's own. */
export interface Clipped {
  part: number;
  di: number;
  dj: number;
  pieces: Piece[];
}

/** How many cells on a box that repeats can meet another. */
function cells(axis: Axis, isSplit: boolean, [low, high]: [number, number], [from, to]: [number, number]): number[] {
  if (!axis.repeats || !isSplit) return [0];
  const first = Math.ceil((from - high) / axis.pitch - 1e-9);
  const last = Math.floor((to - low) / axis.pitch + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, n) => first + n);
}

/**
 * A window in the parts of a split: whole where one part holds it, otherwise cut along the lines with half the lap beyond. What lies
 * within the lap only is left to the other part.
 */
export function clipped(piece: Piece, box: Box, boxes: readonly Box[], lap: number, x: Axis, y: Axis): Clipped[] {
  return boxes.flatMap((own, part) =>
    cells(x, Number.isFinite(own.left), [own.left, own.right], [box.left, box.right]).flatMap((di) =>
      cells(y, Number.isFinite(own.top), [own.top, own.bottom], [box.top, box.bottom]).flatMap((dj): Clipped[] => {
        const here = shiftedBox(own, di * x.pitch, dj * y.pitch);
        if (!boxesMeet(here, box) || clipPieces([piece], here).length === 0) return [];
        const pieces = clipPieces([piece], lapped(here, lap)).filter((one) => clipPieces([one], here).length > 0);
        return pieces.length === 0 ? [] : [{ part, di, dj, pieces }];
      }),
    ),
  );
}
