import { flatten } from './flatten.ts';
import { isInside, pointInside } from './inside.ts';
import { boxesMeet, ringArea, ringBox } from './measure.ts';
import type { Box, Piece, Point, Ring } from './path.ts';
import { reversedRing } from './transform.ts';

/** The ring, run so that its area has the sign asked for. */
const directed = (ring: Ring, positive: boolean): Ring => (ringArea(ring) > 0 === positive ? ring : reversedRing(ring));

/** A ring with its box and size. Most never come near enough to another for more, so the rest is found when it is asked for. */
class Known {
  readonly box: Box;
  readonly size: number;
  #polygon?: Point[];
  #inside?: Point;

  constructor(readonly ring: Ring) {
    this.box = ringBox(ring);
    this.size = Math.abs(ringArea(ring));
  }
  get polygon(): Point[] {
    this.#polygon ??= flatten(this.ring);
    return this.#polygon;
  }
  get inside(): Point {
    this.#inside ??= pointInside(this.polygon);
    return this.#inside;
  }
}

/**
 * Sorts rings that do not cross each other into pieces by how they lie in one another: a ring in an even number of others is
 * an outer ring, a ring in an odd number is a hole of the smallest ring round it. Directions are set to match.
 * Pieces keep the order of their outer rings, holes the order given. Rings may touch.
 */
export function nestRings(rings: Ring[]): Piece[] {
  if (rings.length === 1) return [[directed(rings[0]!, true)]];
  const known = rings.map((ring) => new Known(ring));
  // A ring lies in another when the other is larger and holds any point of its inside; touching outlines do not disturb that.
  const around = known.map((small) =>
    known
      .filter(
        (large) => large.size > small.size && boxesMeet(large.box, small.box) && isInside(large.polygon, small.inside),
      )
      .sort((a, b) => a.size - b.size),
  );
  const pieces = new Map<Ring, Piece>();
  known.forEach(({ ring }, i) => {
    if (around[i]!.length % 2 === 0) pieces.set(ring, [directed(ring, true)]);
  });
  known.forEach(({ ring }, i) => {
    if (around[i]!.length % 2 === 1) pieces.get(around[i]![0]!.ring)!.push(directed(ring, false));
  });
  return [...pieces.values()];
}
