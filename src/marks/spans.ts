import type { System } from '../units/index.ts';
import type { Mark, Span } from './schedule.ts';

/** Longest span, mm: 8 ft or 2.5 m, what two hands and a short tape can manage. Common practice, no source. */
export const LONGEST_SPAN: Record<System, number> = { inch: 2438.4, metric: 2500 };

/** Numbers of the marks at which a line is parted when no span may be longer than `most`; a longer gap between two marks stands alone. */
function partedAt(places: number[], most: number): number[] {
  const ends: number[] = [];
  let start = 0;
  for (let at = 1; at < places.length; at++) {
    const next = places[at + 1];
    if (next !== undefined && next - start <= most + 1e-9) continue;
    ends.push(at);
    start = places[at]!;
  }
  return ends;
}

/**
 * A long line in as few spans as can be, of about the same length; none where the whole line is no longer than one.
 * They are checked beside the marks, which are all pulled from the datum.
 * @param most longest span, mm
 */
export function spansOf(marks: Mark[], most: number): Span[] {
  const places = [0, ...marks.map((mark) => mark.reads)];
  const length = places.at(-1)!;
  if (length <= most + 1e-9) return [];
  const fewest = partedAt(places, most);
  let ends = fewest;
  for (let limit = length / fewest.length; limit < most; limit *= 1.01) {
    ends = partedAt(places, limit);
    if (ends.length <= fewest.length) break;
  }
  if (ends.length > fewest.length) ends = fewest;
  return ends.map((to, at) => {
    const from = at === 0 ? 0 : ends[at - 1]!;
    return { from, to, total: places[to]! - places[from]! };
  });
}

/** `from the datum to mark 5`, `from mark 5 to mark 9`. */
export const sayBounds = ({ from, to }: Pick<Span, 'from' | 'to'>): string =>
  `from ${from === 0 ? 'the datum' : `mark ${from}`} to mark ${to}`;
