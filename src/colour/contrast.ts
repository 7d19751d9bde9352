import { linear, rgbOf } from './rgb.ts';

/** Relative luminance, 0 to 1 (WCAG 2: 0.2126 R + 0.7152 G + 0.0722 B of linear sRGB). */
export function luminance(hex: string): number {
  const [red, green, blue] = linear(rgbOf(hex));
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast ratio of two colours, 1 to 21 (WCAG 2). Floor patterns are not text: the ratio is reported, and no conformance follows. */
export function contrast(one: string, other: string): number {
  const [a, b] = [luminance(one), luminance(other)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}
