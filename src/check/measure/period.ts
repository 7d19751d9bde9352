import { DRAWN } from '../claim.ts';
import type { Painted } from '../read/plan.ts';
import { centre } from './finder.ts';
import { shift } from './move.ts';
import { agreement, agrees, Pattern } from './pattern.ts';

/** How many whole repeats a side of the border holds, or why it holds none. */
export interface Repeats {
  count: number;
  says: string;
}

/**
 * Counts the repeats of a side by the least distance at which all its pieces fall on equal pieces.
 * @param low,high where the side begins and ends, mm
 * @param wished   count to try when one repeat fills the side
 */
export function countRepeats(
  pieces: readonly Painted[],
  way: 'across' | 'along',
  low: number,
  high: number,
  wished: number,
): Repeats {
  const at = (piece: Painted) => centre(piece.outline.frame)[way === 'across' ? 0 : 1];
  const ends = (piece: Painted) => {
    const { left, right, top, bottom } = piece.outline.frame;
    return way === 'across' ? ([left, right] as const) : ([top, bottom] as const);
  };
  const beyond = pieces.filter((piece) => ends(piece)[0] < low - DRAWN || ends(piece)[1] > high + DRAWN).length;
  if (beyond > 0) return { count: 0, says: `${beyond} pieces reach into a corner block` };
  const pattern = new Pattern(pieces);
  const row = [...pieces].sort((a, b) => at(a) - at(b));
  const steps = row.slice(1, 40).map((piece) => at(piece) - at(row[0]!));
  for (const step of [...steps, high - low]) {
    if (step < DRAWN) continue;
    const sources = pieces.filter((piece) => ends(piece)[1] + step <= high + DRAWN);
    const found = agreement(sources, pattern, way === 'across' ? shift(step, 0) : shift(0, step));
    const covers = sources.length > 0 || (pieces.length > 0 && wished === 1 && step === high - low);
    if (!covers || !agrees(found)) continue;
    // The mean over all pairs telescopes, so that rounding of single points does not add up.
    const pitch = found.count > 0 ? Math.abs(way === 'across' ? found.onward.x : found.onward.y) / found.count : step;
    const count = (high - low) / pitch;
    const isWhole = Math.abs(count - Math.round(count)) * pitch <= DRAWN;
    return {
      count: isWhole ? Math.round(count) : count,
      says: `${Number(count.toFixed(3))} of ${pitch.toFixed(3)} mm`,
    };
  }
  return { count: 0, says: 'pieces that do not repeat' };
}
