import type { Painted } from '../read/plan.ts';
import { centre } from './finder.ts';
import { gatherKinds, type Kind, type Period, placesOf, stepKey } from './kinds.ts';
import { liesIn, moved, type Window } from './window.ts';

/** How insets fill the rooms of a field. */
export interface Insets {
  kinds: Kind[];
  count: number;
  /** Pieces that are cut or differ from the others, and places where one is missing. */
  odd: Painted[];
  missing: number;
}

/**
 * Insets stand whole or not at all: a piece may be missing only where another piece of the same inset, within half a period, would not lie
 * wholly in the window.
 */
export function lookAtInsets(pieces: readonly Painted[], window: Window, period: Period): Insets {
  const { kinds, odd } = gatherKinds(pieces, window, period);
  /** Places where a piece must be, filled or not. */
  const due = (kind: Kind): boolean[] =>
    [...placesOf(kind, period, window)]
      .filter(({ dx, dy, lies }) => {
        const [x, y] = centre(moved(kind.outline.frame, dx, dy));
        return lies === 'inside' && !kinds.all.some((other) => isCutNear(other, x, y, window, period));
      })
      .map(({ i, j }) => kind.drawn.has(stepKey(i, j)));
  const found: Insets = { kinds: [], count: 0, odd, missing: 0 };
  for (const kind of kinds.all) {
    const places = due(kind);
    const filled = places.filter((isThere) => isThere).length;
    if (places.length > 0 && 2 * filled <= places.length) found.odd.push(...kind.drawn.values());
    else {
      found.kinds.push(kind);
      found.count += kind.drawn.size;
      found.missing += places.length - filled;
    }
  }
  return found;
}

/** Whether the piece of a kind that lies nearest to a point is not wholly in the window. */
function isCutNear({ outline: { frame }, at }: Kind, x: number, y: number, window: Window, period: Period): boolean {
  const dx = Math.round((x - at[0]) / period.across) * period.across;
  const dy = Math.round((y - at[1]) / period.along) * period.along;
  return liesIn(moved(frame, dx, dy), window) !== 'inside';
}
