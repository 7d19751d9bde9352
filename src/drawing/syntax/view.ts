import { type Matrix, shift, stretch, times } from './matrix.ts';
import { readNumbers } from './number.ts';

/** A rectangle in the drawing's own units. */
export interface View {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** The size that shares in per cent are of: that of the nearest view. */
export interface Frame {
  width: number;
  height: number;
}

/** Four numbers, or nothing when they are none. The sizes may be 0 or less. */
export function readView(text: string): View | undefined {
  const { numbers, whole } = readNumbers(text);
  if (!whole || numbers.length !== 4 || !numbers.every(Number.isFinite)) return undefined;
  return { x: numbers[0]!, y: numbers[1]!, width: numbers[2]!, height: numbers[3]! };
}

/** How a view is set into a frame of another shape. */
export interface Setting {
  /** `none`: stretched to fill it; `meet`: all of it shows; `slice`: it fills the frame and is cropped. */
  how: 'none' | 'meet' | 'slice';
  /** Share of the room left over that lies before it: 0, 0.5 or 1. */
  across: number;
  along: number;
}

const SHARES: Record<string, number> = { Min: 0, Mid: 0.5, Max: 1 };

/** Reads `preserveAspectRatio`; what cannot be read is the usual: all of it, in the middle. */
export function readSetting(text = ''): Setting {
  const found = /^(?:defer\s+)?(?:(none)|x(Min|Mid|Max)Y(Min|Mid|Max))(?:\s+(meet|slice))?$/.exec(text.trim());
  if (found === null) return { how: 'meet', across: 0.5, along: 0.5 };
  if (found[1]) return { how: 'none', across: 0, along: 0 };
  return { how: found[4] === 'slice' ? 'slice' : 'meet', across: SHARES[found[2]!]!, along: SHARES[found[3]!]! };
}

/** Moves the view into the frame. */
export function fitView(view: View, frame: View, setting: Setting): Matrix {
  let sx = frame.width / view.width;
  let sy = frame.height / view.height;
  if (setting.how !== 'none') sx = sy = setting.how === 'meet' ? Math.min(sx, sy) : Math.max(sx, sy);
  const dx = (frame.width - view.width * sx) * setting.across;
  const dy = (frame.height - view.height * sy) * setting.along;
  return times(shift(frame.x + dx, frame.y + dy), times(stretch(sx, sy), shift(-view.x, -view.y)));
}
