import type { Point } from '../geometry/path.ts';
import type { Corner, Diagonal, Wall } from '../job/job.ts';

/** The corners in the order of the walls: the near wall runs from the first to the second, and so on round. */
export const CORNERS = ['near-left', 'near-right', 'far-right', 'far-left'] as const satisfies Corner[];

export const WALLS = ['near', 'right', 'far', 'left'] as const satisfies Wall[];

export const DIAGONALS = ['near-left to far-right', 'near-right to far-left'] as const satisfies Diagonal[];

/** A length measured between two corners: a wall or a diagonal. */
export type Reading = Wall | Diagonal;

export const READINGS: readonly Reading[] = [...WALLS, ...DIAGONALS];

/** Where the corners lie, mm, y down and the near wall at the bottom. */
export type Room = Record<Corner, Point>;

export const outlineOf = (room: Room): Point[] => CORNERS.map((corner) => room[corner]);

/** Between which corners a reading was taken. Side walls run from near to far, the others from left to right. */
export const ENDS: Record<Reading, readonly [Corner, Corner]> = {
  near: ['near-left', 'near-right'],
  right: ['near-right', 'far-right'],
  far: ['far-left', 'far-right'],
  left: ['near-left', 'far-left'],
  'near-left to far-right': ['near-left', 'far-right'],
  'near-right to far-left': ['near-right', 'far-left'],
};

export const readingBetween = (a: Corner, b: Corner): Reading =>
  READINGS.find((reading) => ENDS[reading].includes(a) && ENDS[reading].includes(b))!;

export const isWall = (reading: Reading): reading is Wall => (WALLS as readonly string[]).includes(reading);

/** `the near wall`, or `the diagonal from near left to far right`. */
export const nameOf = (reading: Reading): string =>
  isWall(reading) ? `the ${reading} wall` : `the diagonal from ${reading.replaceAll('-', ' ')}`;

/** `the near left corner`. */
export const nameCorner = (corner: Corner): string => `the ${corner.replace('-', ' ')} corner`;

export const distance = ([x0, y0]: Point, [x1, y1]: Point): number => Math.hypot(x1 - x0, y1 - y0);

/** Corner `at` of a wall that is named by the wall it meets there: the near wall's `left` end is the near left corner. */
export const cornerAt = (wall: Wall, end: Wall): Corner | undefined =>
  ENDS[wall].find((corner) => corner.split('-').includes(end));

/** The point so far along a wall from one of its corners. */
export function alongWall(room: Room, wall: Wall, from: Corner, mm: number): Point {
  const to = ENDS[wall].find((corner) => corner !== from)!;
  const [[x0, y0], [x1, y1]] = [room[from], room[to]];
  const share = mm / distance(room[from], room[to]);
  return [x0 + share * (x1 - x0), y0 + share * (y1 - y0)];
}

/** Length of a wall, mm. */
export const wallLength = (room: Room, wall: Wall): number => distance(room[ENDS[wall][0]], room[ENDS[wall][1]]);
