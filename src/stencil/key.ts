import { isInside } from '../geometry/inside.ts';
import { growBox } from '../geometry/measure.ts';
import type { Box, Point } from '../geometry/path.ts';
import { shiftedBox } from '../geometry/transform.ts';
import { comesWithin } from './gap.ts';
import type { Key } from './sheet.ts';

/** Size of a key, mm: large enough to see a pencil line or a painted corner through, small enough to stay off the work. */
export const KEY = 5;

/** Least material between a key and the edge of the sheet, mm, where the least bridge asks for less. */
export const MARGIN = 3;

/** Anything cut out of a sheet, as a polygon and its box. */
export interface Cut {
  polygon: Point[];
  box: Box;
}

/** A key and the opening it makes. */
export interface CutKey {
  key: Key;
  cut: Cut;
}

/** Whether something would keep the least bridge from everything cut so far, and lie in none of it. */
export function keepsClear(one: Cut, cuts: readonly Cut[], bridge: number): boolean {
  return cuts.every(
    (cut) =>
      !comesWithin(bridge - 1e-6, one, cut) &&
      !isInside(cut.polygon, one.polygon[0]!) &&
      !isInside(one.polygon, cut.polygon[0]!),
  );
}

export const movedCut = ({ polygon, box }: Cut, dx: number, dy: number): Cut => ({
  polygon: polygon.map(([x, y]): Point => [x + dx, y + dy]),
  box: shiftedBox(box, dx, dy),
});

/** The sheet's outline: windows with the rim round them, keys with the margin round them. */
export function outlineOf(windows: Box, keys: Cut[], rim: number, margin: number): Box {
  const outline: Box = {
    left: windows.left - rim,
    top: windows.top - rim,
    right: windows.right + rim,
    bottom: windows.bottom + rim,
  };
  for (const { box } of keys) {
    growBox(outline, box.left - margin, box.top - margin);
    growBox(outline, box.right + margin, box.bottom + margin);
  }
  return outline;
}
