import Flatbush from 'flatbush';
import { flatten } from '../../geometry/flatten.ts';
import { isInside, pointInside } from '../../geometry/inside.ts';
import { ringArea, ringBox } from '../../geometry/measure.ts';
import type { Box, Point, Ring } from '../../geometry/path.ts';

/** Boxes that lie at most this far apart are near each other, mm: twice the usual bridge. */
const NEAR = 6;
/** A ring is small beside one of at least this many times its area. */
const LARGER = 4;

/** Flatter than cuts are written: only which ring lies in which is asked. */
const TOLERANCE = 0.05;

interface Known {
  box: Box;
  area: number;
}

const gap = (a: Box, b: Box): number =>
  Math.max(0, a.left - b.right, b.left - a.right, a.top - b.bottom, b.top - a.bottom);

const covers = (a: Box, b: Box): boolean =>
  a.left <= b.left && a.right >= b.right && a.top <= b.top && a.bottom >= b.bottom;

/**
 * The ring that each ring is cut before, itself followed by the one it is cut before, and so on; -1 for none.
 *
 * Inside before outside: that is the smallest ring round it. Small before large near each other: a ring that no further ring parts
 * from one of four times its area or more, with at most 6 mm between their boxes, is cut before the nearest such ring, while the film
 * round it is still whole. Of two equally near the smaller counts, then the one given first. Rings do not cross each other.
 */
export function cutBefore(rings: readonly Ring[]): Int32Array {
  const before = new Int32Array(rings.length).fill(-1);
  if (rings.length < 2) return before;
  const known: Known[] = rings.map((ring) => ({ box: ringBox(ring), area: Math.abs(ringArea(ring)) }));
  const index = new Flatbush(rings.length);
  for (const { box } of known) index.add(box.left, box.top, box.right, box.bottom);
  index.finish();
  const around = rings.map((ring, i) => smallestAround(ring, i, rings, known, index));
  for (let i = 0; i < rings.length; i++) {
    const large = nearestLarge(i, known, around, index);
    before[i] = large >= 0 ? large : around[i]!;
  }
  return before;
}

function smallestAround(ring: Ring, i: number, rings: readonly Ring[], known: Known[], index: Flatbush): number {
  const { box, area } = known[i]!;
  const round = index
    .search(box.left, box.top, box.right, box.bottom)
    .filter((j) => known[j]!.area > area && covers(known[j]!.box, box))
    .sort((a, b) => known[a]!.area - known[b]!.area || a - b);
  if (round.length === 0) return -1;
  const polygon = flatten(ring, TOLERANCE);
  const inside: Point = area > 0 ? pointInside(polygon) : polygon[0]!;
  return round.find((j) => isInside(flatten(rings[j]!, TOLERANCE), inside)) ?? -1;
}

function nearestLarge(i: number, known: Known[], around: readonly number[], index: Flatbush): number {
  const { box, area } = known[i]!;
  let found = -1;
  let least = NEAR;
  for (const j of index.search(box.left - NEAR, box.top - NEAR, box.right + NEAR, box.bottom + NEAR)) {
    const larger = known[j]!.area > area && known[j]!.area >= LARGER * area;
    if (!larger || around[j] !== around[i]) continue;
    const far = gap(box, known[j]!.box);
    const isLess = far < least || found < 0;
    const isTie = far === least && found >= 0;
    const first = () => known[j]!.area - known[found]!.area || j - found;
    if (isLess || (isTie && first() < 0)) [found, least] = [j, far];
  }
  return found;
}
