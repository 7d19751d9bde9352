import { DRAWN } from '../claim.ts';
import type { Frame } from '../read/outline.ts';

/** The colour that each part of the field takes in exchange. */
export const EXCHANGED: Record<string, string> = { field: 'alternate', alternate: 'field' };

/** Whether something reaches over a line where two repeats meet; `x`, `y` is a corner of any repeat. Such a piece belongs to both and keeps its colour. */
export function isShared(
  { left, right, top, bottom }: Frame,
  [x, y]: readonly [number, number],
  pitch: { across: number; along: number },
): boolean {
  const cell = (at: number, from: number, by: number) => Math.floor((at - from) / by);
  return (
    cell(left + DRAWN, x, pitch.across) !== cell(right - DRAWN, x, pitch.across) ||
    cell(top + DRAWN, y, pitch.along) !== cell(bottom - DRAWN, y, pitch.along)
  );
}

/** Exchanges the colours of what lies within a repeat; `middle` is that of any repeat. */
export function exchangeAbout(
  middle: { x: number; y: number } | undefined,
  pitch: { across: number; along: number },
): (part: string, outline: { frame: Frame }) => string {
  const corner = middle && ([middle.x - pitch.across / 2, middle.y - pitch.along / 2] as const);
  return (part, { frame }) => (corner && isShared(frame, corner, pitch) ? part : (EXCHANGED[part] ?? part));
}
