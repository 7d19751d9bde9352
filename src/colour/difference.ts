import {
  converter,
  differenceCiede2000,
  modeLab65,
  modeLch65,
  modeOklab,
  modeOklch,
  modeRgb,
  toGamut,
  useMode,
} from 'culori/fn';
import { hexOf, rgbOf } from './rgb.ts';

for (const mode of [modeRgb, modeLab65, modeLch65, modeOklab, modeOklch]) useMode(mode);

const toLab = converter('lab65');
const toOklch = converter('oklch');
const toScreen = toGamut('rgb', 'oklch');
const apart = differenceCiede2000();

const asRgb = (hex: string) => {
  const [r, g, b] = rgbOf(hex);
  return { mode: 'rgb' as const, r, g, b };
};

/** CIELAB of the daylight D65: lightness 0 to 100, and two hues. */
export type Lab = readonly [lightness: number, a: number, b: number];

export function labOf(hex: string): Lab {
  const { l, a, b } = toLab(asRgb(hex));
  return [l, a, b];
}

/** CIEDE2000 of two colours in CIELAB (G. Sharma, W. Wu, E. N. Dalal 2005); 1 is about the least that an eye sees side by side. */
export const difference = ([l, a, b]: Lab, [l2, a2, b2]: Lab): number =>
  apart({ mode: 'lab65', l, a, b }, { mode: 'lab65', l: l2, a: a2, b: b2 });

/** Lightness 0 to 1, chroma from 0, hue in degrees. */
export interface Oklch {
  l: number;
  c: number;
  h: number;
}

export function oklchOf(hex: string): Oklch {
  const { l, c, h } = toOklch(asRgb(hex));
  return { l, c, h: h ?? 0 };
}

/** The nearest that a screen can show, the hue and the lightness kept as far as can be. */
export function fromOklch({ l, c, h }: Oklch): string {
  const { r, g, b } = toScreen({ mode: 'oklch', l, c, h });
  return hexOf([r, g, b]);
}
