/** Red, green and blue of sRGB, each 0 to 1, gamma-coded as a screen takes them, or linear as light adds up. */
export type Rgb = readonly [red: number, green: number, blue: number];

/** The bytes of `#rrggbb`, 0 to 1. */
export function rgbOf(hex: string): Rgb {
  const value = Number.parseInt(hex.slice(1), 16);
  return [(value >> 16) / 255, ((value >> 8) & 255) / 255, (value & 255) / 255];
}

const clamped = (share: number): number => Math.min(1, Math.max(0, share));

/** `#rrggbb`; what no screen can show is brought to the nearest that it can, channel by channel. */
export const hexOf = (rgb: Rgb): string =>
  `#${rgb
    .map((share) =>
      Math.round(clamped(share) * 255)
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;

// IEC 61966-2-1. WCAG prints 0.03928 for the knee; no byte value lies between the two.
const toLinear = (share: number): number => (share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4);
const toCoded = (share: number): number => (share <= 0.0031308 ? 12.92 * share : 1.055 * share ** (1 / 2.4) - 0.055);

export const linear = ([red, green, blue]: Rgb): Rgb => [toLinear(red), toLinear(green), toLinear(blue)];
export const coded = (rgb: Rgb): Rgb => rgb.map((share) => toCoded(clamped(share))) as unknown as Rgb;
