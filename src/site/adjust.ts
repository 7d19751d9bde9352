import type { Point } from '../geometry/path.ts';
import { ENDS, READINGS, type Reading, type Room } from './walls.ts';

/** The coordinates that are free once the near left corner is held and the near wall lies level. */
const FREE = [
  ['near-right', 0],
  ['far-right', 0],
  ['far-right', 1],
  ['far-left', 0],
  ['far-left', 1],
] as const;

/** Solves a small square system by elimination with pivots. */
function solve(matrix: number[][], right: number[]): number[] {
  const rows = matrix.map((row, at) => [...row, right[at]!]);
  const size = rows.length;
  for (let column = 0; column < size; column++) {
    let pivot = column;
    for (let at = column + 1; at < size; at++)
      if (Math.abs(rows[at]![column]!) > Math.abs(rows[pivot]![column]!)) pivot = at;
    [rows[column], rows[pivot]] = [rows[pivot]!, rows[column]!];
    for (let at = column + 1; at < size; at++) {
      const share = rows[at]![column]! / rows[column]![column]!;
      for (let k = column; k <= size; k++) rows[at]![k]! -= share * rows[column]![k]!;
    }
  }
  const found = new Array<number>(size).fill(0);
  for (let at = size - 1; at >= 0; at--) {
    let left = rows[at]![size]!;
    for (let k = at + 1; k < size; k++) left -= rows[at]![k]! * found[k]!;
    found[at] = left / rows[at]![at]!;
  }
  return found;
}

/** What a reading comes to in the room, and how it changes with each free coordinate. */
function linearised(room: Room, reading: Reading): { length: number; slopes: number[] } {
  const [a, b] = ENDS[reading];
  const [dx, dy] = [room[b][0] - room[a][0], room[b][1] - room[a][1]];
  const length = Math.hypot(dx, dy);
  const unit = [dx / length, dy / length];
  const slopes = FREE.map(([corner, axis]) => (corner === b ? unit[axis]! : corner === a ? -unit[axis]! : 0));
  return { length, slopes };
}

const MOST_ROUNDS = 60;
const SETTLED = 1e-10;

/**
 * The room whose six lengths are nearest to the readings: least squares by Gauss-Newton on the distances, each weighed by its doubt,
 * over eight coordinates less three for where the room stands.
 * @param start   a room near it, the near left corner at (0, 0) and the near right one at y = 0
 * @param lengths readings, mm
 * @param doubts  how far each may be from true, mm
 */
export function adjust(start: Room, lengths: Record<Reading, number>, doubts: Record<Reading, number>): Room {
  let room = start;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const normal = FREE.map(() => FREE.map(() => 0));
    const right = FREE.map(() => 0);
    for (const reading of READINGS) {
      const { length, slopes } = linearised(room, reading);
      const weight = 1 / doubts[reading] ** 2;
      slopes.forEach((slope, at) => {
        right[at]! += weight * slope * (lengths[reading] - length);
        slopes.forEach((other, k) => {
          normal[at]![k]! += weight * slope * other;
        });
      });
    }
    const step = solve(normal, right);
    const moved = (corner: (typeof FREE)[number][0]): Point => {
      const [x, y] = room[corner];
      const by = (axis: 0 | 1) => step[FREE.findIndex((free) => free[0] === corner && free[1] === axis)] ?? 0;
      return [x + by(0), y + by(1)];
    };
    room = {
      'near-left': room['near-left'],
      'near-right': moved('near-right'),
      'far-right': moved('far-right'),
      'far-left': moved('far-left'),
    };
    if (step.every((by) => Math.abs(by) < SETTLED)) break;
  }
  return room;
}
