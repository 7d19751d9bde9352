import type { Point } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import { writeLength } from '../units/index.ts';
import type { Tape } from './corners.ts';
import { coveringWidth } from './cover.ts';
import type { PlacedOpening } from './openings.ts';

/** How far the casing edges of an opening lie from the axis, square off it, mm. */
export interface Spread {
  wall: PlacedOpening['wall'];
  left: number;
  right: number;
}

/** @param into takes a point of the room into the frame of the work; @param middle where the axis lies in it */
export const spreadOf = ({ wall, casing }: PlacedOpening, into: (point: Point) => Point, middle: number): Spread => ({
  wall,
  left: middle - into(casing[0])[0],
  right: into(casing[1])[0] - middle,
});

/** The first width on a usual grain that covers every opening evenly, to either side of the axis. */
export const coverOf = (spreads: Spread[], system: Job['system']): number =>
  coveringWidth(
    spreads.flatMap(({ left, right }) => [2 * left, 2 * right]),
    system,
  );

/** What shows at each casing beside a field, or the whole work, of this width, centred on the axis. */
export function sayCasings(
  spreads: Spread[],
  width: number,
  { units, step }: Tape,
  what: 'field' | 'work' = 'field',
): string[] {
  const write = (mm: number): string => writeLength(mm, units, step);
  const at = (beyond: number, side: string): string => {
    if (Math.abs(beyond) < step / 2) return `ends at the ${side} casing`;
    return beyond > 0
      ? `runs ${write(beyond)} past the ${side} casing`
      : `leaves ${write(-beyond)} of plain floor inside the ${side} casing`;
  };
  return spreads.map(({ wall, left, right }) => {
    const [one, other] = [width / 2 - left, width / 2 - right];
    if (Math.abs(one - other) < step / 2)
      return `At the ${wall} opening the ${what} ${at(one, 'left')}, and as much at the right one.`;
    return `At the ${wall} opening the ${what} ${at(one, 'left')} and ${at(other, 'right')}.`;
  });
}

/** How the far opening lies to the near one, looking straight across from the near wall. @param into takes a point into a frame that is square to the near wall */
export function sayOpposite(
  near: PlacedOpening,
  far: PlacedOpening,
  into: (point: Point) => Point,
  { units, step }: Tape,
): string[] {
  const off = into(far.centre)[0] - into(near.centre)[0];
  if (Math.abs(off) < step / 2) return [];
  const side = off > 0 ? 'right' : 'left';
  return [
    `The openings are not opposite: the centre of the far one lies ${writeLength(Math.abs(off), units, step)} to the ${side} of straight across from the near one.`,
  ];
}
