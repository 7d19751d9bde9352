import type { Point } from './path.ts';

/** So many sides of an outline to a row, about. */
const SIDES = 4;

/**
 * Whether points lie inside a closed polygon (even-odd), for many of them: its sides are sorted into rows first, and a point is asked only of those in its row.
 * Says of every point what `isInside` says.
 */
export function insideRows(polygon: readonly Point[]): (x: number, y: number) => boolean {
  const count = Math.max(1, Math.floor(polygon.length / SIDES));
  let [top, bottom] = [Infinity, -Infinity];
  for (const [, y] of polygon) {
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  const scale = bottom > top ? count / (bottom - top) : 0;
  const rowAt = (y: number): number => Math.min(count - 1, Math.floor((y - top) * scale));
  const rows: number[][] = Array.from({ length: count }, () => []);
  let [x0, y0] = polygon[polygon.length - 1]!;
  for (const [x1, y1] of polygon) {
    const last = rowAt(Math.max(y0, y1));
    for (let row = rowAt(Math.min(y0, y1)); row <= last; row++) rows[row]!.push(x0, y0, x1, y1);
    [x0, y0] = [x1, y1];
  }
  return (x, y) => {
    if (!(y >= top && y <= bottom)) return false;
    const sides = rows[rowAt(y)]!;
    let inside = false;
    for (let at = 0; at < sides.length; at += 4) {
      const [y0, y1] = [sides[at + 1]!, sides[at + 3]!];
      if (y0 < y !== y1 < y && x < sides[at]! + ((y - y0) * (sides[at + 2]! - sides[at]!)) / (y1 - y0))
        inside = !inside;
    }
    return inside;
  };
}
