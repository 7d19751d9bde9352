import { cubicAt } from '../geometry/measure.ts';
import type { Point, Ring, Side } from '../geometry/path.ts';
import { stretchOf } from '../geometry/split.ts';
import { formatMm } from './number.ts';

/** Sides of a ring with the last one back to the start, where that is left to be understood. */
function closedSides({ start, sides }: Ring): Side[] {
  const [x, y] = sides.at(-1)!.to;
  return x === start[0] && y === start[1] ? sides : [...sides, { kind: 'line', to: start }];
}

/** Even number of steps in which a curve's length is added up. */
const STEPS = 64;

/** Length of a side from its start to parameter `t`, mm (Simpson's rule over its speed). */
function lengthTo(from: Point, side: Side, t: number): number {
  if (side.kind === 'line') return t * Math.sqrt((side.to[0] - from[0]) ** 2 + (side.to[1] - from[1]) ** 2);
  // The speed of a cubic is a quadratic in three times the differences of its points, here written as a cubic.
  const speed = (s: number): number => {
    const along = ([0, 1] as const).map((i) => {
      const [a, b, c] = [side.out[i] - from[i], side.into[i] - side.out[i], side.to[i] - side.into[i]];
      return 3 * cubicAt(a, (a + 2 * b) / 3, (2 * b + c) / 3, c, s);
    });
    return Math.sqrt(along[0]! ** 2 + along[1]! ** 2);
  };
  let sum = speed(0) + speed(t);
  for (let k = 1; k < STEPS; k++) sum += (k % 2 === 1 ? 4 : 2) * speed((k * t) / STEPS);
  return (sum * t) / STEPS / 3;
}

/** The parameter at which a side has run for so long, mm; the side is longer than that. */
function parameterAt(from: Point, side: Side, long: number): number {
  let [low, high] = [0, 1];
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2;
    if (lengthTo(from, side, middle) < long) low = middle;
    else high = middle;
  }
  return high;
}

/** The first stretch of a ring, `long` mm of it, at most once round. The side it ends on is split, curves exactly. */
export function firstStretch(ring: Ring, long: number): Side[] {
  const taken: Side[] = [];
  let from = ring.start;
  let left = long;
  for (const side of closedSides(ring)) {
    if (left <= 0) break;
    const whole = lengthTo(from, side, 1);
    taken.push(whole <= left ? side : stretchOf(from, side, 0, parameterAt(from, side, left)).side);
    left -= whole;
    from = side.to;
  }
  return taken;
}

/** A ring as one open path that comes back to its start and runs on along its own first stretch, so that a trailing blade closes it. */
export function overcutText(ring: Ring, long: number, at: Point): string {
  const point = ([x, y]: Point): string => `${formatMm(x + at[0])} ${formatMm(y + at[1])}`;
  const sides = [...closedSides(ring), ...firstStretch(ring, long)].map((side) =>
    side.kind === 'line' ? `L${point(side.to)}` : `C${point(side.out)} ${point(side.into)} ${point(side.to)}`,
  );
  return `M${point(ring.start)}${sides.join('')}`;
}
