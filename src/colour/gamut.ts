import { linearOfOklab, oklabOfLinear } from './oklab.ts';
import type { Rgb } from './rgb.ts';

/** What rounded values may lie beyond a screen's reach: one step of 255. */
const BELOW = -1 / 255 / 12.92;
const ABOVE = ((256 / 255 + 0.055) / 1.055) ** 2.4;

/** Whether a screen can show a colour of linear sRGB, but for one step of rounding. */
export const isShown = (rgb: Rgb): boolean => rgb.every((share) => share >= BELOW && share <= ABOVE);

const EXACT = 1e-6;
const isInside = (rgb: Rgb): boolean => rgb.every((share) => share >= -EXACT && share <= 1 + EXACT);

/** The nearest that a screen can show, in linear sRGB: hue and lightness of OKLab are kept, and the chroma is brought down. */
export function broughtIn(rgb: Rgb): Rgb {
  const [lightness, a, b] = oklabOfLinear(rgb);
  const l = Math.min(1, Math.max(0, lightness));
  let [inside, outside] = [0, 1];
  for (let step = 0; step < 40; step++) {
    const share = (inside + outside) / 2;
    if (isInside(linearOfOklab([l, share * a, share * b]))) inside = share;
    else outside = share;
  }
  return linearOfOklab([l, inside * a, inside * b]);
}
