import type { Point } from '../geometry/path.ts';
import type { Wall } from '../job/job.ts';
import { writeLength } from '../units/index.ts';
import type { Tape } from './corners.ts';
import { halfPlanesOf } from './half-planes.ts';
import type { Placing } from './placing.ts';
import { nameOf, outlineOf, type Room } from './walls.ts';

/** What reaches no farther past a wall is within the readings, mm: 1/2 in. Our own choice. */
const WITHIN = 12.7;

/** The walls clockwise on the page, the far left corner first. */
const CLOCKWISE = ['far', 'right', 'near', 'left'] as const;

/** How far a point lies beyond each wall, mm; below 0 where it lies inside. */
const beyond = (room: Room, [x, y]: Point): { wall: Wall; far: number }[] =>
  halfPlanesOf(outlineOf(room).reverse()).map(({ nx, ny, reach }, at) => ({
    wall: CLOCKWISE[at]!,
    far: nx * x + ny * y - reach,
  }));

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
