import { MM_PER_INCH, writeLength } from '../units/index.ts';
import type { Tape } from './corners.ts';
import { type FloorRoom, reachesOf } from './floor-room.ts';
import { WALLS } from './walls.ts';

/** A wall that strays from the pattern by more than this over its length shows where the pattern is cut along it. Common practice, no source. */
const SHOWS = MM_PER_INCH / 2;

/** Where the centre lines lie, as a tape finds them, and how far it is from wall to wall on them. */
export function sayCentreLines({ room, centred }: FloorRoom, { units, step }: Tape): string[] {
  const write = (mm: number): string => writeLength(mm, units, step);
  const { left, right, near, far } = reachesOf(room);
  const across = centred.across
    ? `it is ${write(left.centre)} to the left wall and as much to the right one`
    : `it is ${write(left.centre)} to the left wall and ${write(right.centre)} to the right one, since the axis is laid elsewhere than midway: the cuts at the two differ`;
  return [
    `The floor is laid from where its two centre lines cross: from there ${across}, ${write(near.centre)} to the near wall and ${Math.abs(near.centre - far.centre) < step / 2 ? 'as much' : write(far.centre)} to the far one.`,
  ];
}

/** A warning for each wall along which the cut is seen to grow or shrink, with the remedies. */
export function sayFloorTapers({ painted }: FloorRoom, { units, step }: Tape): string[] {
  const write = (mm: number): string => writeLength(mm, units, step);
  const reaches = reachesOf(painted);
  return WALLS.filter((wall) => reaches[wall].most - reaches[wall].least > SHOWS + 1e-6).map((wall) => {
    const { ends } = reaches[wall];
    const [from, to] = wall === 'left' || wall === 'right' ? ['near', 'far'] : ['left', 'right'];
    const wide = ends[0] > ends[1] ? from : to;
    return (
      `Along the ${wall} wall the cut grows by ${write(Math.abs(ends[1] - ends[0]))} towards the ${wide} end: more than ${write(SHOWS)} shows in a straight pattern. ` +
      `Leave a plain strip at the walls (reserve: ${write(2 * MM_PER_INCH)}), paint a room border set off the wall, or lay the axis parallel to that wall.`
    );
  });
}
