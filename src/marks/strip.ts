import type { Layout } from '../fit/layout.ts';
import type { Place } from './place.ts';

/**
 * What lies between the edge of the work and the field: the inner edge of the border and both edges of the inner border.
 * `at` is the distance from the edge of the work inwards, mm.
 */
export function stripPlaces({ border, inner }: Layout, direction: 'across' | 'along'): Place[] {
  const places: Place[] = [];
  if (border > 0) places.push({ at: border, for: 'inner edge of the border' });
  if (inner) {
    const outer = border + inner.offset[direction];
    places.push({ at: outer, for: 'outer edge of the inner border' });
    places.push({ at: outer + inner.width, for: 'inner edge of the inner border' });
  }
  return places;
}

/** Half of the room of a medallion, mm; nothing without one. */
export function halfRoom(
  { pitch }: Layout,
  medallion: { repeats: { across: number; along: number } } | undefined,
  direction: 'across' | 'along',
): number | undefined {
  return medallion && (medallion.repeats[direction] * pitch[direction]) / 2;
}
