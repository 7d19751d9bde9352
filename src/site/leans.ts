import type { Wall } from '../job/job.ts';
import { writeLength } from '../units/index.ts';
import { listed } from '../words.ts';
import type { Tape } from './corners.ts';
import { ENDS, type Room, WALLS } from './walls.ts';

/**
 * How far each wall runs away from the work over its length, mm; below zero where it closes in on it. Side walls from near to far, the
 * others from left to right.
 * @param room in the frame of the axis
 */
export function leansOf(room: Room): Record<Wall, number> {
  const lean = (wall: Wall): number => {
    const [from, to] = ENDS[wall].map((corner) => room[corner]) as [[number, number], [number, number]];
    const [x, y] = [to[0] - from[0], to[1] - from[1]];
    return { left: -x, right: x, near: y, far: -y }[wall] + 0;
  };
  return Object.fromEntries(WALLS.map((wall) => [wall, lean(wall)])) as Record<Wall, number>;
}

/** `The left wall runs away from the work by 7/16" over its length, from near to far.` Walls that a tape cannot tell from true are named together. */
export function sayLeans(room: Room, { units, step }: Tape): string[] {
  const leans = leansOf(room);
  const isTrue = (wall: Wall) => Math.abs(leans[wall]) < step / 2;
  const straight = WALLS.filter(isTrue);
  const said = WALLS.filter((wall) => !isTrue(wall)).map((wall) => {
    const way = leans[wall] > 0 ? 'runs away from' : 'closes in on';
    const run = wall === 'left' || wall === 'right' ? 'from near to far' : 'from left to right';
    return `The ${wall} wall ${way} the work by ${writeLength(Math.abs(leans[wall]), units, step)} over its length, ${run}.`;
  });
  if (straight.length === 0) return said;
  const together =
    straight.length === 4
      ? 'All four walls run true with the work.'
      : `The ${listed(straight)} wall${straight.length > 1 ? 's run' : ' runs'} true with the work.`;
  return [...said, together];
}
