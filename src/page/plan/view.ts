import type { Box, Point } from '../../geometry/path.ts';

/** How the plan lies on the screen: `scale` pixels to the millimetre, its origin at (`x`, `y`), pixels. */
export interface View {
  scale: number;
  x: number;
  y: number;
}

export interface Size {
  width: number;
  height: number;
}

/** What is kept free round the plan, pixels. */
export interface Margins {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** Closest one can come: pixels to the millimetre. */
const CLOSEST = 8;

export const toScreen = ({ scale, x, y }: View, [px, py]: Point): Point => [px * scale + x, py * scale + y];

export const toPlan = ({ scale, x, y }: View, [px, py]: Point): Point => [(px - x) / scale, (py - y) / scale];

/** The whole of `reach` as large as it goes between the margins. */
export function wholeView(reach: Box, { width, height }: Size, margins: Margins): View {
  const wide = Math.max(1, width - margins.left - margins.right);
  const high = Math.max(1, height - margins.top - margins.bottom);
  const scale = Math.min(wide / (reach.right - reach.left), high / (reach.bottom - reach.top));
  return {
    scale,
    x: margins.left + wide / 2 - ((reach.left + reach.right) / 2) * scale,
    y: margins.top + high / 2 - ((reach.top + reach.bottom) / 2) * scale,
  };
}

export const moved = ({ scale, x, y }: View, dx: number, dy: number): View => ({ scale, x: x + dx, y: y + dy });

/** So many times as large; what lies under `about`, a point of the screen, stays there. */
export function zoomed({ scale, x, y }: View, factor: number, [ax, ay]: Point): View {
  return { scale: scale * factor, x: ax + (x - ax) * factor, y: ay + (y - ay) * factor };
}

/** What two fingers do that went from one pair of places to another: what lay midway between them lies midway still. */
export function pinched(view: View, before: readonly [Point, Point], after: readonly [Point, Point]): View {
  const middle = ([[ax, ay], [bx, by]]: readonly [Point, Point]): Point => [(ax + bx) / 2, (ay + by) / 2];
  const apart = ([[ax, ay], [bx, by]]: readonly [Point, Point]): number => Math.max(1, Math.hypot(bx - ax, by - ay));
  const [from, to] = [middle(before), middle(after)];
  return zoomed(moved(view, to[0] - from[0], to[1] - from[1]), apart(after) / apart(before), to);
}

/** Nothing further away than the whole, nothing closer than `CLOSEST`, and always some of the plan in the middle of the screen. */
export function within(view: View, whole: View, reach: Box, { width, height }: Size): View {
  if (view.scale <= whole.scale * 1.001) return whole;
  const middle: Point = [width / 2, height / 2];
  const most = Math.max(CLOSEST, whole.scale);
  const near = view.scale > most ? zoomed(view, most / view.scale, middle) : view;
  const [x, y] = toPlan(near, middle);
  const kept = toScreen(near, [
    Math.min(reach.right, Math.max(reach.left, x)),
    Math.min(reach.bottom, Math.max(reach.top, y)),
  ]);
  return moved(near, middle[0] - kept[0], middle[1] - kept[1]);
}
