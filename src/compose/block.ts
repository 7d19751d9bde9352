import { landingAt } from '../fit/ways.ts';
import type { Lines } from '../motif/motif.ts';

/** Nearer than this, in repeats, two lines are one. */
const SAME = 1e-9;

/**
 * Half-sizes of the blocks about a centre line whose two edges cut no piece, smallest first, up to `most`. All in repeats.
 * A pattern that is cut wherever it ends gives blocks of whole repeats.
 * @param centre where the centre line lies, from the beginning of a repeat
 * @param turned the pattern beyond the centre line is the mirror image of the one before it
 */
export function blocksAbout(centre: number, lines: Lines, most: number, turned = false): number[] {
  const ends = (shares: number[]): number[] =>
    shares
      .flatMap((share) => {
        const first = (((share - centre) % 1) + 1) % 1;
        return Array.from({ length: Math.max(0, Math.floor(most - first + SAME) + 1) }, (_, n) => first + n);
      })
      .filter((half) => half > SAME && (turned || landingAt(centre - half, { ...lines, whole: shares }) === 'whole'))
      .sort((a, b) => a - b);
  const clean = ends(lines.whole);
  if (clean.length > 0) return clean;
  const whole = ends([0]);
  if (whole.length > 0) return whole;
  return Array.from({ length: Math.max(0, Math.floor(2 * most + SAME)) }, (_, n) => (n + 1) / 2);
}
