import type { Point, Side } from '../../geometry/path.ts';
import type { Outline } from './outline.ts';

const line = (...to: Point): Side => ({ kind: 'line', to });

/** Handle of a quarter circle of radius 1. */
const K = (4 / 3) * (Math.SQRT2 - 1);

/** A quarter of an ellipse from one point to another, bulging towards their corner. */
const quarter = (from: Point, corner: Point, to: Point): Side => ({
  kind: 'curve',
  out: [from[0] + K * (corner[0] - from[0]), from[1] + K * (corner[1] - from[1])],
  into: [to[0] + K * (corner[0] - to[0]), to[1] + K * (corner[1] - to[1])],
  to,
});

/** A rectangle with round corners where both radii are above 0; it starts where SVG starts it. */
export function rectangle(x: number, y: number, width: number, height: number, rx: number, ry: number): Outline {
  const [right, bottom] = [x + width, y + height];
  if (rx <= 0 || ry <= 0) {
    const sides = [line(right, y), line(right, bottom), line(x, bottom), line(x, y)];
    return { start: [x, y], sides, closed: true };
  }
  const sides = [
    line(right - rx, y),
    quarter([right - rx, y], [right, y], [right, y + ry]),
    line(right, bottom - ry),
    quarter([right, bottom - ry], [right, bottom], [right - rx, bottom]),
    line(x + rx, bottom),
    quarter([x + rx, bottom], [x, bottom], [x, bottom - ry]),
    line(x, y + ry),
    quarter([x, y + ry], [x, y], [x + rx, y]),
  ];
  return { start: [x + rx, y], sides, closed: true };
}

/** An ellipse as four cubics, from its east on. */
export function ellipse(cx: number, cy: number, rx: number, ry: number): Outline {
  const [east, south, west, north]: Point[] = [
    [cx + rx, cy],
    [cx, cy + ry],
    [cx - rx, cy],
    [cx, cy - ry],
  ] as const;
  const sides = [
    quarter(east!, [cx + rx, cy + ry], south!),
    quarter(south!, [cx - rx, cy + ry], west!),
    quarter(west!, [cx - rx, cy - ry], north!),
    quarter(north!, [cx + rx, cy - ry], east!),
  ];
  return { start: east!, sides, closed: true };
}
