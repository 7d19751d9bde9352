import type { Point } from '../geometry/path.ts';
import type { Corner } from '../job/job.ts';
import { CORNERS, ENDS, isWall, type Reading, type Room, readingBetween } from './walls.ts';

export type Lengths = Partial<Record<Reading, number>>;

/** Where the third corner of a triangle lies, above a base from (0, 0) to (base, 0). Undefined where no triangle has these sides. */
function apex(base: number, fromStart: number, fromEnd: number): Point | undefined {
  const x = (base * base + fromStart * fromStart - fromEnd * fromEnd) / (2 * base);
  const squared = (fromStart - x) * (fromStart + x);
  return squared > 0 ? [x, Math.sqrt(squared)] : undefined;
}

/** Moved and turned so that the near left corner is (0, 0) and the near wall runs level to the right, the room above it (y down). */
function posed(room: Room): Room {
  const [ox, oy] = room['near-left'];
  const [bx, by] = room['near-right'];
  const turn = Math.atan2(by - oy, bx - ox);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const moved = ([x, y]: Point): Point => [(x - ox) * cos + (y - oy) * sin, (y - oy) * cos - (x - ox) * sin];
  const [, farY] = moved(room['far-right']);
  const up = farY > 0 ? -1 : 1;
  const place = (corner: Corner): Point => {
    const [x, y] = moved(room[corner]);
    return [x, up * y + 0];
  };
  return {
    'near-left': [0, 0],
    'near-right': [Math.hypot(bx - ox, by - oy), 0],
    'far-right': place('far-right'),
    'far-left': place('far-left'),
  };
}

/**
 * The room of four corners from five of its six lengths, all corners pointing outwards: two triangles on the line between the two
 * corners that `missing` does not join (the two-circle construction). Undefined where one of them cannot be.
 * @param lengths mm, above 0; that of `missing` is not looked at
 */
export function fromFive(lengths: Lengths, missing: Reading): Room | undefined {
  const [i, j] = ENDS[missing];
  const [k, l] = CORNERS.filter((corner) => corner !== i && corner !== j) as [Corner, Corner];
  const length = (a: Corner, b: Corner): number => lengths[readingBetween(a, b)]!;
  const base = length(k, l);
  const first = apex(base, length(k, i), length(l, i));
  const second = apex(base, length(k, j), length(l, j));
  if (!first || !second) return undefined;
  const side = isWall(readingBetween(k, l)) ? 1 : -1;
  return posed({ [i]: first, [j]: [second[0], side * second[1]], [k]: [0, 0], [l]: [base, 0] } as unknown as Room);
}

/**
 * The angle inside each corner, radians from 0 to 2 pi, in the order of `CORNERS`. They add up to 2 pi, unless walls cross;
 * a corner that points inwards has more than pi.
 */
export function cornerAngles(room: Room): number[] {
  return CORNERS.map((corner, at) => {
    const [x0, y0] = room[CORNERS[(at + 3) % 4]!];
    const [x1, y1] = room[corner];
    const [x2, y2] = room[CORNERS[(at + 1) % 4]!];
    const turn = Math.atan2(y2 - y1, x2 - x1) - Math.atan2(y0 - y1, x0 - x1);
    return turn < 0 ? turn + 2 * Math.PI : turn;
  });
}
