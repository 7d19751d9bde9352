import type { Region } from '../compose/drawing.ts';
import { emptyBox, joinBoxes } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import { shiftedBox } from '../geometry/transform.ts';
import type { Axis, Placed } from './patch.ts';
import type { ShapeBook } from './shape.ts';

/** All pieces of some regions where they are painted. */
export function placedOf(regions: Region[], book: ShapeBook): Placed[] {
  return regions.flatMap(({ pieces, at }) => {
    const found = pieces.map((piece) => book.find(piece));
    const placed: Placed[] = [];
    for (let n = 0; n < at.length; n += 2) {
      for (const { shape, centre } of found) {
        placed.push({ shape, centre: [centre[0] + at[n]!, centre[1] + at[n + 1]!] });
      }
    }
    return placed;
  });
}

export const boxOfPlaced = ({ shape, centre }: Placed, { shapes }: ShapeBook): Box =>
  shiftedBox(shapes[shape]!.box, centre[0], centre[1]);

/** The box round some pieces. */
export const reachOf = (placed: Placed[], book: ShapeBook): Box =>
  placed.map((one) => boxOfPlaced(one, book)).reduce(joinBoxes, emptyBox());

/** One cell, from here to there. */
export const single = (start: number, end: number): Axis => ({ start, pitch: end - start, repeats: false });

/** Things sorted by a name of theirs, names in the order met. */
export function byName<T>(items: T[], nameOf: (item: T) => string): Map<string, T[]> {
  const found = new Map<string, T[]>();
  for (const item of items) {
    const name = nameOf(item);
    const known = found.get(name);
    if (known) known.push(item);
    else found.set(name, [item]);
  }
  return found;
}
