import type { Point } from './path.ts';

/** Where the level line `y` crosses the closed polygon, left to right. No corner of the polygon may lie on `y`. */
function crossings(polygon: Point[], y: number): number[] {
  const found: number[] = [];
  let [x0, y0] = polygon[polygon.length - 1]!;
  for (const [x1, y1] of polygon) {
    if (y0 < y !== y1 < y) found.push(x0 + ((y - y0) * (x1 - x0)) / (y1 - y0));
    x0 = x1;
    y0 = y1;
  }
  return found.sort((a, b) => a - b);
}

/** Whether a point lies inside a closed polygon (even-odd). Points on the outline may fall either way. */
export function isInside(polygon: Point[], [x, y]: Point): boolean {
  let inside = false;
  let [x0, y0] = polygon[polygon.length - 1]!;
  for (const [x1, y1] of polygon) {
    if (y0 < y !== y1 < y && x < x0 + ((y - y0) * (x1 - x0)) / (y1 - y0)) inside = !inside;
    x0 = x1;
    y0 = y1;
  }
  return inside;
}

/** A point well inside a closed polygon that has area: the middle of its widest stretch, halfway between two corners' levels. */
export function pointInside(polygon: Point[]): Point {
  const levels = polygon.map(([, y]) => y).sort((a, b) => a - b);
  let y = Number.NaN;
  let tallest = 0;
  for (let i = 1; i < levels.length; i++) {
    const gap = levels[i]! - levels[i - 1]!;
    if (gap > tallest) {
      tallest = gap;
      y = (levels[i]! + levels[i - 1]!) / 2;
    }
  }
  const xs = crossings(polygon, y);
  let x = Number.NaN;
  let widest = -1;
  for (let i = 1; i < xs.length; i += 2) {
    const width = xs[i]! - xs[i - 1]!;
    if (width > widest) {
      widest = width;
      x = (xs[i]! + xs[i - 1]!) / 2;
    }
  }
  return [x, y];
}
