import Flatbush from 'flatbush';
import type { Region } from '../../compose/drawing.ts';
import type { Piece, Point, Side } from '../../geometry/path.ts';

/** Finds what can be measured from: the nearest point within reach, mm; nothing where there is none. */
export type Snap = (aim: Point, reach: number) => Point | undefined;

/** The middle of a side that begins at `from`. */
function middleOf([x0, y0]: Point, side: Side): Point {
  const [x3, y3] = side.to;
  if (side.kind === 'line') return [(x0 + x3) / 2, (y0 + y3) / 2];
  const [x1, y1] = side.out;
  const [x2, y2] = side.into;
  return [(x0 + 3 * (x1 + x2) + x3) / 8, (y0 + 3 * (y1 + y2) + y3) / 8];
}

/** The corners of pieces and the middles of their sides, as x0, y0, x1, y1, … */
function pointsOf(pieces: readonly Piece[]): number[] {
  const found: number[] = [];
  for (const piece of pieces)
    for (const { start, sides } of piece) {
      let from = start;
      for (const side of sides) {
        found.push(...side.to, ...middleOf(from, side));
        from = side.to;
      }
      // A ring whose last side does not come back is closed by a straight line.
      if (Math.hypot(from[0] - start[0], from[1] - start[1]) > 1e-9)
        found.push(...start, ...middleOf(from, { kind: 'line', to: start }));
    }
  return found;
}

interface Shape {
  /** Number of its first place among all. */
  first: number;
  at: Float64Array;
  points: number[];
}

/** Made once for a drawing, on first use. @param others points that are measured from besides: marks, walls, edges */
export function snapTo(regions: readonly Region[], others: readonly Point[]): Snap {
  const shapes: Shape[] = [];
  let count = 0;
  for (const { pieces, at } of regions) {
    shapes.push({ first: count, at, points: pointsOf(pieces) });
    count += at.length / 2;
  }
  const loose: Shape = { first: count, at: new Float64Array(others.flat()), points: [0, 0] };
  const all = [...shapes, loose].filter((shape) => shape.points.length > 0 && shape.at.length > 0);
  let total = 0;
  for (const shape of all) {
    shape.first = total;
    total += shape.at.length / 2;
  }
  if (total === 0) return () => undefined;
  const index = new Flatbush(total);
  for (const { at, points } of all) {
    let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
    for (let n = 0; n < points.length; n += 2) {
      [left, right] = [Math.min(left, points[n]!), Math.max(right, points[n]!)];
      [top, bottom] = [Math.min(top, points[n + 1]!), Math.max(bottom, points[n + 1]!)];
    }
    for (let n = 0; n < at.length; n += 2)
      index.add(at[n]! + left, at[n + 1]! + top, at[n]! + right, at[n + 1]! + bottom);
  }
  index.finish();

  const shapeOf = (item: number): Shape => {
    let [low, high] = [0, all.length - 1];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (all[middle]!.first <= item) low = middle;
      else high = middle - 1;
    }
    return all[low]!;
  };

  return ([x, y], reach) => {
    let best = reach * reach;
    let found: Point | undefined;
    for (const item of index.search(x - reach, y - reach, x + reach, y + reach)) {
      const { first, at, points } = shapeOf(item);
      const [dx, dy] = [at[2 * (item - first)]!, at[2 * (item - first) + 1]!];
      for (let n = 0; n < points.length; n += 2) {
        const [px, py] = [points[n]! + dx, points[n + 1]! + dy];
        const far = (px - x) ** 2 + (py - y) ** 2;
        if (far > best) continue;
        best = far;
        found = [px, py];
      }
    }
    return found;
  };
}
