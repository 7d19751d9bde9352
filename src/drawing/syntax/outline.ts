import type { Point, Ring, Side } from '../../geometry/path.ts';
import { type Matrix, moved } from './matrix.ts';

/** One line of the drawing as the file gives it, open or closed. A closed one ends on its start. */
export interface Outline {
  start: Point;
  sides: Side[];
  closed: boolean;
}

const same = (a: Point, b: Point): boolean => a[0] === b[0] && a[1] === b[1];

/** A quadratic Bézier as the cubic that draws the same line. */
export function parabola(from: Point, handle: Point, to: Point): Side {
  const third = (end: Point): Point => [
    end[0] + (2 / 3) * (handle[0] - end[0]),
    end[1] + (2 / 3) * (handle[1] - end[1]),
  ];
  return { kind: 'curve', out: third(from), into: third(to), to };
}

export function moveOutline({ start, sides, closed }: Outline, matrix: Matrix): Outline {
  const move = (point: Point) => moved(matrix, point);
  return {
    start: move(start),
    sides: sides.map((side) =>
      side.kind === 'line'
        ? { kind: 'line', to: move(side.to) }
        : { kind: 'curve', out: move(side.out), into: move(side.into), to: move(side.to) },
    ),
    closed,
  };
}

/** The ring that a fill fills: the outline, closed by a straight line where it is open. Nothing when it has no sides. */
export function ringOf({ start, sides }: Outline): Ring | undefined {
  const last = sides.at(-1)?.to;
  if (last === undefined) return undefined;
  return { start, sides: same(last, start) ? sides : [...sides, { kind: 'line', to: start }] };
}

export const pointsOf = ({ start, sides }: Outline): Point[] => [
  start,
  ...sides.flatMap((side) => (side.kind === 'line' ? [side.to] : [side.out, side.into, side.to])),
];
