import { isInside } from '../../geometry/inside.ts';
import type { Point } from '../../geometry/path.ts';
import { KEY, keepsClear, movedCut } from '../key.ts';
import { matchKey } from '../match-key.ts';
import type { Whole } from './harm.ts';

/** How far apart places along a line are tried, mm. */
const STEP = 1;
/** So far apart, mm, two keys hold a sheet well; farther, they would only make it larger. Our own measure. */
const ENOUGH = 150;

/** Along which a run of places for match keys is looked for: on a line (`way` 0: x = `at`), from one place to another. */
export interface Run {
  way: 0 | 1;
  at: number;
  from: number;
  to: number;
  /** Whether nothing is painted beyond that end. */
  openBefore: boolean;
  openAfter: boolean;
}

/**
 * Where match keys stand on one run of a split line: clear of every window by the bridge, and one at either end, so that they lie far
 * apart; at an open end as near to the windows as may be. None where the run lies in windows all along.
 */
export function matchPlaces(run: Run, wholes: readonly Whole[], chosen: readonly Point[], bridge: number): Point[] {
  const { way, at, from, to, openBefore, openAfter } = run;
  const blank = matchKey([0, 0]).cut;
  const near = wholes.filter(({ box }) =>
    way === 0
      ? box.left < at + KEY + bridge && box.right > at - KEY - bridge
      : box.top < at + KEY + bridge && box.bottom > at - KEY - bridge,
  );
  const place = (along: number): Point => (way === 0 ? [at, along] : [along, at]);
  const steps = Math.max(1, Math.round((to - from) / STEP));
  const places = Array.from({ length: steps + 1 }, (_, n) => place(from + ((to - from) * n) / steps));
  const clear = places.map(
    (point) =>
      keepsClear(movedCut(blank, ...point), near, bridge) && !near.some(({ polygon }) => isInside(polygon, point)),
  );
  const first = clear.indexOf(true);
  if (first < 0) return [];
  const last = clear.lastIndexOf(true);
  // From an open end inwards, as far as it stays clear.
  const inwards = (start: number, by: 1 | -1): number => {
    let n = start;
    while (clear[n + by]) n += by;
    return n + by < 0 || n + by > steps ? start : n;
  };
  const ends = [openBefore ? inwards(first, 1) : first, openAfter ? inwards(last, -1) : last];
  const [before, after] = [clear.indexOf(false, ends[0]), clear.lastIndexOf(false, ends[1])];
  if (before >= 0 && before < ends[1]! && !openAfter) {
    while (ends[1]! - 1 > after && (ends[1]! - 1 - ends[0]!) * STEP >= ENOUGH) ends[1]!--;
  }
  if (before >= 0 && before < ends[1]! && !openBefore) {
    while (ends[0]! + 1 < before && (ends[1]! - ends[0]! - 1) * STEP >= ENOUGH) ends[0]!++;
  }
  const found: Point[] = [];
  for (const n of ends) {
    const point = places[n]!;
    const apart = [...chosen, ...found].every(
      (other) => Math.max(Math.abs(other[0] - point[0]), Math.abs(other[1] - point[1])) >= KEY + bridge,
    );
    if (apart) found.push(point);
  }
  return found;
}
