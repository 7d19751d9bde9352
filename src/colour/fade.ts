import { fromOklch, oklchOf } from './difference.ts';

/** Where fading ends: a pale warm grey, as light as old boards. */
const PALE = 0.82;

/**
 * A colour after so much fading, 0 to 1. A rule of thumb, no source: on the way to pale grey it loses all of that share of its chroma, and half of that
 * share of what its lightness is away from pale.
 */
export function faded(hex: string, share: number): string {
  const { l, c, h } = oklchOf(hex);
  return fromOklch({ l: l + (PALE - l) * share * 0.5, c: c * (1 - share), h });
}
