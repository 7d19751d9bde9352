import { centre } from './finder.ts';
import { onwardKey } from './kinds.ts';
import type { Repeating } from './repeating.ts';
import type { Way } from './symmetry.ts';

/** How pieces of a pattern follow each other in one direction. */
export interface Onward {
  /** Pieces whose next one, a period on, is drawn too, and how far on it lies on average, mm. */
  pairs: number;
  mean: number;
  /** Places wholly inside that are empty. */
  lost: number;
}

/** The mean over all pairs telescopes, so that rounding of single points does not add up. */
export function onward({ kinds, lost }: Repeating, way: Way): Onward {
  const axis = way === 'across' ? 0 : 1;
  let [pairs, sum] = [0, 0];
  for (const { drawn } of kinds) {
    for (const [key, piece] of drawn) {
      const next = drawn.get(onwardKey(key, way));
      if (!next) continue;
      pairs += 1;
      sum += centre(next.outline.frame)[axis] - centre(piece.outline.frame)[axis];
    }
  }
  return { pairs, mean: pairs > 0 ? sum / pairs : 0, lost: lost.length };
}
