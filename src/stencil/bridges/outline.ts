import { flatten } from '../../geometry/flatten.ts';
import { ringBox } from '../../geometry/measure.ts';
import type { Box, Piece, Point, Ring, Side } from '../../geometry/path.ts';

/** One ring of a window, ready to be probed. */
export interface Outline {
  /** Chords within 0.01 mm of the curve. */
  points: Point[];
  box: Box;
  /** Where its direction turns by more than 25 degrees at once: tips, notches, ends of curves. */
  corners: Point[];
  /** Signed, mm². */
  area: number;
  centre: Point;
  /** Length of its edge, mm. */
  round: number;
  hole: boolean;
  /** Index of the window it belongs to. */
  piece: number;
}

const SHARP = Math.cos((25 * Math.PI) / 180);

const distinct = (from: Point, ...points: Point[]): Point =>
  points.find(([x, y]) => Math.abs(x - from[0]) + Math.abs(y - from[1]) > 1e-9) ?? from;

function leaving(from: Point, side: Side): Point {
  const [x, y] = side.kind === 'line' ? side.to : distinct(from, side.out, side.into, side.to);
  return [x - from[0], y - from[1]];
}

function arriving(from: Point, side: Side): Point {
  const [x, y] = side.kind === 'line' ? from : distinct(side.to, side.into, side.out, from);
  return [side.to[0] - x, side.to[1] - y];
}

function cornersOf({ start, sides }: Ring): Point[] {
  const last = sides[sides.length - 1]!.to;
  const closed =
    Math.abs(last[0] - start[0]) + Math.abs(last[1] - start[1]) > 1e-9
      ? [...sides, { kind: 'line', to: start } as const]
      : sides;
  const froms = [start, ...closed.map(({ to }) => to)];
  return closed.flatMap((side, at): Point[] => {
    const previous = (at + closed.length - 1) % closed.length;
    const [ax, ay] = arriving(froms[previous]!, closed[previous]!);
    const [bx, by] = leaving(froms[at]!, side);
    const long = Math.sqrt((ax * ax + ay * ay) * (bx * bx + by * by));
    return long === 0 || (ax * bx + ay * by) / long > SHARP ? [] : [froms[at]!];
  });
}

/** Area, centre and length of a closed polygon. */
function measured(points: Point[]): { area: number; centre: Point; round: number } {
  let [twice, sx, sy, round] = [0, 0, 0, 0];
  const [ox, oy] = points[0]!;
  let [x0, y0] = [points[points.length - 1]![0] - ox, points[points.length - 1]![1] - oy];
  for (const [px, py] of points) {
    const [x, y] = [px - ox, py - oy];
    const cross = x0 * y - x * y0;
    twice += cross;
    sx += (x0 + x) * cross;
    sy += (y0 + y) * cross;
    round += Math.sqrt((x - x0) * (x - x0) + (y - y0) * (y - y0));
    x0 = x;
    y0 = y;
  }
  return { area: twice / 2, centre: [ox + sx / (3 * twice), oy + sy / (3 * twice)], round };
}

/** Every ring of every window, outer rings before their holes. */
export const outlinesOf = (windows: Piece[]): Outline[] =>
  windows.flatMap((rings, piece) =>
    rings.map((ring, at): Outline => {
      const points = flatten(ring, 0.01);
      return { points, box: ringBox(ring), corners: cornersOf(ring), ...measured(points), hole: at > 0, piece };
    }),
  );

/** The centre of what is painted: any symmetry of it leaves this point where it is. */
export function centreOf(outlines: Outline[]): Point {
  const area = outlines.reduce((sum, one) => sum + one.area, 0);
  const along = (axis: 0 | 1) => outlines.reduce((sum, one) => sum + one.area * one.centre[axis], 0) / area;
  return [along(0), along(1)];
}
