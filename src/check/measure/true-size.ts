import { type Claim, stated } from '../claim.ts';
import type { Svg } from '../read/svg.ts';

/** Width and height are written to 1 µm at best, mm. */
const SIZE = 0.002;

/** The stated width and height are those of the viewBox, so that one unit of the drawing is one millimetre. */
export function trueSize(file: string, claim: string, svg: Svg): Claim {
  const { width, height, view } = svg;
  const off = Math.max(Math.abs(width - view.width), Math.abs(height - view.height));
  const size = (a: number, b: number) => `${Number(a.toFixed(3))} × ${Number(b.toFixed(3))} mm`;
  return stated(file, claim, off <= SIZE, size(width, height), size(view.width, view.height));
}
