import type { Look } from '../../engine/look.ts';

/** What a small drawing shows of the plan, mm of the plan. */
export interface Window {
  left: number;
  top: number;
  across: number;
  along: number;
  /** The near end only, of work that is much longer than wide. */
  isPart: boolean;
}

/** Work so much longer than wide is shown at its near end, as high as this. */
const LONG = 2;
const SHOWN = 1.3;

export function windowOf({ lines: { ground } }: Look): Window {
  const [xs, ys] = [ground.map(([x]) => x), ground.map(([, y]) => y)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const [across, along] = [right - left, bottom - top];
  if (along > LONG * across) return { left, top: bottom - SHOWN * across, across, along: SHOWN * across, isPart: true };
  return { left, top, across, along, isPart: false };
}
