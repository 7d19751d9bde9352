import type { Point } from '../../geometry/path.ts';
import type { Dimension } from '../engine/plan/dimensions.ts';
import type { Inks } from './inks.ts';
import type { Onto } from './regions.ts';
import type { RoomFor } from './room-for.ts';
import { HIGH, line, words } from './strokes.ts';
import { toScreen } from './view.ts';

/** From a dimension line to the plan, and from one to the next, pixels. */
const OFF = 15;
const NEXT = 19;

/** The part of a stretch that is in sight, as shares of it; nothing where none is. */
function inSight([x0, y0]: Point, [x1, y1]: Point, width: number, height: number): [number, number] | undefined {
  let [from, to] = [0, 1];
  for (const [at, way, low, high] of [
    [x0, x1 - x0, 0, width],
    [y0, y1 - y0, 0, height],
  ] as const) {
    if (Math.abs(way) < 1e-9) {
      if (at < low || at > high) return undefined;
      continue;
    }
    const [a, b] = [(low - at) / way, (high - at) / way].sort((p, q) => p - q) as [number, number];
    [from, to] = [Math.max(from, a), Math.min(to, b)];
  }
  return to > from ? [from, to] : undefined;
}

/** A length beside the plan; its words stand in the middle of what is seen of it. */
export function drawDimension(onto: Onto, { from, to, tier, texts }: Dimension, inks: Inks, taken: RoomFor): void {
  const { pen, view, size } = onto;
  const [a, b] = [toScreen(view, from), toScreen(view, to)];
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (long < 2) return;
  const [dx, dy] = [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
  const off = OFF + tier * NEXT;
  const out = ([x, y]: Point, by: number): Point => [x + dy * by, y - dx * by];
  const [p, q] = [out(a, off), out(b, off)];
  const seen = inSight(p, q, size.width, size.height);
  if (!seen) return;
  for (const [end, on] of [
    [a, p],
    [b, q],
  ] as const) {
    line(onto, [out(end, 3), out(end, off + 5)], inks.soft, 1, inks);
    line(
      onto,
      [
        [on[0] - 4, on[1] + 4],
        [on[0] + 4, on[1] - 4],
      ],
      inks.ink,
      1.5,
      inks,
    );
  }
  line(onto, [p, q], inks.ink, 1, inks);
  const share = (seen[0] + seen[1]) / 2;
  const middle: Point = [p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1])];
  const stands = Math.abs(dy) > Math.abs(dx);
  const room = (seen[1] - seen[0]) * long - 12;
  const fits = texts.find((text) => pen.measureText(text).width <= room);
  if (fits) {
    const half = pen.measureText(fits).width / 2;
    const [w, h] = stands ? [HIGH / 2, half] : [half, HIGH / 2];
    if (taken.take(middle[0] - w, middle[1] - h, middle[0] + w, middle[1] + h))
      words(onto, fits, middle, inks.ink, inks, { turned: stands });
    return;
  }
  // Too short for its words: they stand beside it where there is room for them.
  const isLeft = stands && dy < 0;
  for (const text of texts) {
    const wide = pen.measureText(text).width;
    const [x, y]: Point = stands ? [middle[0] + (isLeft ? -9 : 9), middle[1]] : [Math.max(p[0], q[0]) + 8, middle[1]];
    const left = stands && isLeft ? x - wide : x;
    if (left < 0 || left + wide > size.width) continue;
    if (!taken.take(left, y - HIGH / 2, left + wide, y + HIGH / 2)) continue;
    words(onto, text, [left, y], inks.ink, inks, { align: 'left' });
    return;
  }
}
