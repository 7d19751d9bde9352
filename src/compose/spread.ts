import { TOUCH } from '../geometry/clip.ts';

/**
 * Repeats along one direction that meet its two edges in the same way.
 * `low` and `high` are the edges as seen from the repeat's centre; infinite where they take nothing away.
 */
export interface Band {
  low: number;
  high: number;
  centres: number[];
}

/**
 * Sorts a row of repeats into bands by what the edges of the field take from a shape that reaches from `from` to `to` about
 * the centre of its repeat. Repeats that nothing is left of belong to no band. At most one band has no infinite end.
 */
export function spread(centres: number[], from: number, to: number, lowEdge: number, highEdge: number): Band[] {
  const bands = new Map<string, Band>();
  for (const centre of centres) {
    const [low, high] = [lowEdge - centre, highEdge - centre];
    if (to <= low + TOUCH || from >= high - TOUCH) continue;
    const lowCut = from < low - TOUCH ? low : -Infinity;
    const highCut = to > high + TOUCH ? high : Infinity;
    const key = `${Math.round(lowCut / TOUCH)} ${Math.round(highCut / TOUCH)}`;
    const band = bands.get(key);
    if (band === undefined) bands.set(key, { low: lowCut, high: highCut, centres: [centre] });
    else band.centres.push(centre);
  }
  return [...bands.values()];
}

/** Every pairing of the two bands' centres, row by row: x0, y0, x1, y1, … */
export function pairs(across: Band, along: Band): Float64Array {
  const [xs, ys] = [across.centres, along.centres];
  const at = new Float64Array(2 * xs.length * ys.length);
  let i = 0;
  for (const y of ys) {
    for (const x of xs) {
      at[i++] = x;
      at[i++] = y;
    }
  }
  return at;
}
