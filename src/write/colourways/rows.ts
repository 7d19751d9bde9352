import type { Point } from '../../geometry/path.ts';

interface Size {
  across: number;
  along: number;
}

/** What a page loses that is not of its shape, and by room left empty. */
const EMPTY = 0.6;

interface Packed extends Size {
  places: Point[];
}

/** Room under a cell, down to the foot of its row. */
interface Room {
  left: number;
  right: number;
  top: number;
  foot: number;
}

/** The highest first, side by side in rows no wider than `width`; under one that is lower than its row stand others that find room there. */
function rowsWithin(cells: readonly Size[], width: number): Packed {
  const order = cells.map((_, at) => at).sort((a, b) => cells[b]!.along - cells[a]!.along || a - b);
  const places: Point[] = cells.map(() => [0, 0]);
  let [x, top, foot, reach] = [0, 0, 0, 0];
  const rooms: Room[] = [];
  for (const at of order) {
    const { across, along } = cells[at]!;
    const under = rooms.findIndex((room) => across <= room.right - room.left && along <= room.foot - room.top);
    if (under >= 0) {
      const room = rooms[under]!;
      places[at] = [room.left, room.top];
      rooms.splice(
        under,
        1,
        { ...room, left: room.left + across },
        { ...room, right: room.left + across, top: room.top + along },
      );
      continue;
    }
    if (x > 0 && x + across > width) [x, top] = [0, foot];
    if (x === 0) foot = top + along;
    places[at] = [x, top];
    rooms.push({ left: x, right: x + across, top: top + along, foot });
    x += across;
    reach = Math.max(reach, x);
  }
  return { places, across: reach, along: foot };
}

/**
 * Cells of any size in rows on a page of about the shape wished for (across over along), with little of it empty.
 * Returns where the left top corner of each lies, in the order given, and the size of all of them.
 */
export function packRows(cells: readonly Size[], shape: number): Packed {
  const filled = cells.reduce((sum, { across, along }) => sum + across * along, 0);
  const widest = Math.max(0, ...cells.map(({ across }) => across));
  const all = cells.reduce((sum, { across }) => sum + across, 0);
  const steps = 24;
  const tried = Array.from({ length: steps + 1 }, (_, at) => rowsWithin(cells, widest + ((all - widest) * at) / steps));
  const loss = ({ across, along }: Packed): number =>
    Math.abs(Math.log(across / along / shape)) + EMPTY * ((across * along) / filled - 1);
  return tried.reduce((best, one) => (loss(one) < loss(best) ? one : best));
}
