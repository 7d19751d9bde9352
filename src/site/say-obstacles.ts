import type { Point } from '../geometry/path.ts';
import { writeLength } from '../units/index.ts';
import type { Tape } from './corners.ts';
import type { Placing } from './placing.ts';
import { CORNERS, nameOf, type Room, WALLS } from './walls.ts';

/** What reaches no farther past a wall is within the readings, mm: 1/2 in. Our own choice. */
const WITHIN = 12.7;

/** How far a point lies beyond each wall, mm; below 0 where it lies inside. */
function beyond(room: Room, [x, y]: Point): { wall: (typeof WALLS)[number]; far: number }[] {
  const middle = CORNERS.reduce<Point>(
    ([sx, sy], corner) => [sx + room[corner][0] / 4, sy + room[corner][1] / 4],
    [0, 0],
  );
  return WALLS.map((wall, at) => {
    const [[ax, ay], [bx, by]] = [room[CORNERS[at]!], room[CORNERS[(at + 1) % 4]!]];
    const side = (px: number, py: number): number =>
      ((bx - ax) * (py - ay) - (by - ay) * (px - ax)) / Math.hypot(bx - ax, by - ay);
    return { wall, far: side(x, y) * (side(...middle) > 0 ? -1 : 1) };
  });
}

/** What stands in the room and, as it was measured, reaches into a wall: a reading to look at again. */
export function sayObstacles(
  { room, obstacles, into }: Pick<Placing, 'room' | 'obstacles' | 'into'>,
  tape: Tape,
): string[] {
  return obstacles.flatMap(({ name, outline }) => {
    const most = outline
      .flatMap((point) => beyond(room, into(point)))
      .reduce((one, other) => (other.far > one.far ? other : one));
    if (most.far <= WITHIN) return [];
    const far = writeLength(most.far, tape.units, tape.step);
    return [
      `The ${name} reaches ${far} past ${nameOf(most.wall)}, as both were measured: look at its reading again. Only what of it lies in the room is kept clear.`,
    ];
  });
}
