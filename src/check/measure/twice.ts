import Flatbush from 'flatbush';
import type { Outline } from '../read/outline.ts';
import { flat } from './flat.ts';

/** Chords lie this close to curves, and lines that coincide this close to each other, mm. */
const FINE = 0.002;
const SAME = 0.01;
/** Tips so narrow that their sides come within `SAME` of each other do so for less than this, mm. */
const TIP = 0.5;

/** Two lines that run along each other, by index, and how far they do, mm; the worst there is, or nothing. */
export function cutTwice(lines: readonly Outline[][]): { one: number; other: number; long: number } | undefined {
  const sides: number[] = [];
  const owner: number[] = [];
  lines.forEach((outlines, line) => {
    for (const outline of outlines) {
      const points = flat(outline, FINE);
      for (let i = 0, j = points.length - 2; i < points.length; j = i, i += 2) {
        sides.push(points[j]!, points[j + 1]!, points[i]!, points[i + 1]!);
        owner.push(line);
      }
    }
  });
  if (owner.length === 0) return undefined;
  const index = new Flatbush(owner.length);
  for (let side = 0; side < owner.length; side++) {
    const [ax, ay, bx, by] = sides.slice(4 * side, 4 * side + 4) as [number, number, number, number];
    index.add(Math.min(ax, bx), Math.min(ay, by), Math.max(ax, bx), Math.max(ay, by));
  }
  index.finish();
  const shared = new Map<number, number>();
  for (let side = 0; side < owner.length; side++) {
    const [ax, ay, bx, by] = sides.slice(4 * side, 4 * side + 4) as [number, number, number, number];
    const near = index.search(
      Math.min(ax, bx) - SAME,
      Math.min(ay, by) - SAME,
      Math.max(ax, bx) + SAME,
      Math.max(ay, by) + SAME,
      (other) => other > side,
    );
    for (const other of near) {
      const long = together(sides, 4 * side, 4 * other);
      if (long === 0) continue;
      const [one, two] = [owner[side]!, owner[other]!].sort((a, b) => a - b) as [number, number];
      const pair = one * lines.length + two;
      shared.set(pair, (shared.get(pair) ?? 0) + long);
    }
  }
  const worst = [...shared].filter(([, long]) => long > TIP).sort((a, b) => b[1] - a[1] || a[0] - b[0])[0];
  if (!worst) return undefined;
  const [pair, long] = worst;
  return { one: Math.floor(pair / lines.length), other: pair % lines.length, long };
}

/** How long two straight sides, at places in a list of x, y, x, y, run along each other, mm. */
function together(sides: readonly number[], one: number, other: number): number {
  const [ax, ay] = [sides[one]!, sides[one + 1]!];
  const [ux, uy] = [sides[one + 2]! - ax, sides[one + 3]! - ay];
  const long = Math.sqrt(ux * ux + uy * uy);
  if (long === 0) return 0;
  const place = (at: number): [along: number, aside: number] => {
    const [px, py] = [sides[at]! - ax, sides[at + 1]! - ay];
    return [(px * ux + py * uy) / long, (px * uy - py * ux) / long];
  };
  const [[s, p], [t, q]] = [place(other), place(other + 2)];
  const [from, to] = [Math.max(0, Math.min(s, t)), Math.min(long, Math.max(s, t))];
  if (to <= from || s === t) return 0;
  const aside = (at: number) => p + ((q - p) * (at - s)) / (t - s);
  return Math.abs(aside(from)) <= SAME && Math.abs(aside(to)) <= SAME ? to - from : 0;
}
