import type { PlacementEntry, SheetEntry } from '../read/layout.ts';
import type { Frame } from '../read/outline.ts';
import { movePoint, placing } from './move.ts';

/** Beyond any drawing, mm. */
const FAR = 1e6;

/** The lines between which a sheet of a split carries its shapes, as they lie on the floor at one placement; far off where there is none. */
export function partOnFloor({ part }: SheetEntry, { turn, x, y }: PlacementEntry): Frame | undefined {
  if (!part) return undefined;
  const move = placing(turn, x, y);
  const [a, b] = [
    movePoint(move, part.left ?? -FAR, part.top ?? -FAR),
    movePoint(move, part.right ?? FAR, part.bottom ?? FAR),
  ];
  return {
    left: Math.min(a[0], b[0]),
    top: Math.min(a[1], b[1]),
    right: Math.max(a[0], b[0]),
    bottom: Math.max(a[1], b[1]),
  };
}

export const isLine = (at: number): boolean => Math.abs(at) < FAR / 2;

export const grownFrame = ({ left, top, right, bottom }: Frame, by: number): Frame => ({
  left: left - by,
  top: top - by,
  right: right + by,
  bottom: bottom + by,
});
