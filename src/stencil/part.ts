import type { Box, Point } from '../geometry/path.ts';
import { quarterTurn } from '../geometry/transform.ts';
import { type Axis, SAME_PLACE } from './patch.ts';

/**
 * What one sheet carries of shapes that are split: what lies between the lines of `box`, infinite where no line is, and half
 * the lap beyond each line. Lengths in mm.
 */
export interface Part {
  /** The same for all parts that come of one split. */
  of: object;
  box: Box;
  lap: number;
  /** Middles of the match keys. */
  match: Point[];
  number: number;
  count: number;
}

export const EVERYWHERE: Box = { left: -Infinity, top: -Infinity, right: Infinity, bottom: Infinity };

/** What the windows of a part reach at most. */
export const lapped = ({ left, top, right, bottom }: Box, lap: number): Box => ({
  left: left - lap / 2,
  top: top - lap / 2,
  right: right + lap / 2,
  bottom: bottom + lap / 2,
});

/** Quarter turns about the origin, then a shift. */
export function movedPart(part: Part, turns: number, [dx, dy]: Point): Part {
  const turn = quarterTurn(turns);
  const move = (point: Point): Point => {
    const [x, y] = turn(point);
    return [x + dx, y + dy];
  };
  const { left, top, right, bottom } = part.box;
  const [a, b] = [move([left, top]), move([right, bottom])];
  const box: Box = {
    left: Math.min(a[0], b[0]),
    top: Math.min(a[1], b[1]),
    right: Math.max(a[0], b[0]),
    bottom: Math.max(a[1], b[1]),
  };
  return { ...part, box, match: part.match.map(move) };
}

const SIDES = [
  ['left', 0],
  ['right', 0],
  ['top', 1],
  ['bottom', 1],
] as const;

const apart = (axis: Axis, from: number, to: number): number => {
  const off = to - from;
  return Math.abs(axis.repeats ? off - Math.round(off / axis.pitch) * axis.pitch : off);
};

/** Whether one sheet can serve as both: the same lines, the same match keys. Both as the cells of one pattern see them. */
export function sameParts(a: Part | undefined, b: Part | undefined, x: Axis, y: Axis): boolean {
  if (a === undefined || b === undefined) return a === b;
  const axes = [x, y] as const;
  return (
    a.lap === b.lap &&
    a.match.length === b.match.length &&
    SIDES.every(([side, way]) => {
      const [one, other] = [a.box[side], b.box[side]];
      return one === other || apart(axes[way], one, other) <= SAME_PLACE;
    }) &&
    a.match.every((one) =>
      b.match.some(
        (other) => apart(x, one[0], other[0]) <= 2 * SAME_PLACE && apart(y, one[1], other[1]) <= 2 * SAME_PLACE,
      ),
    )
  );
}
