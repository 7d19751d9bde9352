import type { Point } from '../geometry/path.ts';

/** A frame turned with the work: the axis runs straight up in it, lengths stay as they are. `turn`: radians, to the right. */
export interface Frame {
  into(point: Point): Point;
  outOf(point: Point): Point;
}

export function frameOf(turn: number): Frame {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return {
    into: ([x, y]) => [x * cos + y * sin, y * cos - x * sin],
    outOf: ([x, y]) => [x * cos - y * sin, y * cos + x * sin],
  };
}
