import type { Point, Side } from '../geometry/path.ts';
import { polygonBox } from './gap.ts';
import { type CutKey, KEY } from './key.ts';

/** A square on its point: its corners show where the split line runs, its outline is pencilled through. */
export function matchKey([x, y]: Point): CutKey {
  const half = KEY / 2;
  const polygon: Point[] = [
    [x, y - half],
    [x + half, y],
    [x, y + half],
    [x - half, y],
  ];
  const sides = [...polygon.slice(1), polygon[0]!].map((to): Side => ({ kind: 'line', to }));
  return {
    key: { kind: 'match', point: [x, y], piece: [{ start: polygon[0]!, sides }] },
    cut: { polygon, box: polygonBox(polygon) },
  };
}
