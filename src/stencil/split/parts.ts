import { pieceBox } from '../../geometry/measure.ts';
import { shifted } from '../../geometry/transform.ts';
import type { Area } from '../area.ts';
import { movedPart, type Part } from '../part.ts';
import { type Axis, makePatch, type Placed } from '../patch.ts';
import { reachOf, single } from '../placed.ts';
import type { ShapeBook } from '../shape.ts';
import type { Member } from '../share.ts';
import { clipped } from './clipped.ts';

/** An area that a pattern is laid on, in the parts that the pattern is split in. */
export function partsOf({ area, turn, origin }: Member, parts: readonly Part[], book: ShapeBook): Area[] {
  const own = parts.map((part) => movedPart(movedPart(part, 0, origin), turn, [0, 0]));
  const boxes = own.map(({ box }) => box);
  const lap = own[0]!.lap;
  const { x, y, kinds, spots } = area.patch;
  const cut = kinds.map(({ shape, x: dx, y: dy }) => {
    const piece = shifted(book.shapes[shape]!.piece, x.start + dx, y.start + dy);
    return clipped(piece, pieceBox(piece), boxes, lap, x, y).map(({ part, pieces }) => ({
      part,
      placed: pieces.map((one): Placed => book.find(one)),
    }));
  });
  return own.flatMap((part, at): Area[] => {
    const placed = spots.flatMap(({ kind, i, j }) =>
      cut[kind]!.filter((one) => one.part === at).flatMap((one) =>
        one.placed.map(
          ({ shape, centre }): Placed => ({ shape, centre: [centre[0] + i * x.pitch, centre[1] + j * y.pitch] }),
        ),
      ),
    );
    if (placed.length === 0) return [];
    const reach = reachOf(placed, book);
    const axis = (whole: Axis, start: number, low: number, high: number): Axis => {
      if (!whole.repeats) return single(low, high);
      return Number.isFinite(start) ? { ...whole, start } : whole;
    };
    const patch = makePatch(
      axis(x, part.box.left, reach.left, reach.right),
      axis(y, part.box.top, reach.top, reach.bottom),
      placed,
    );
    return [{ ...area, part, patch }];
  });
}
