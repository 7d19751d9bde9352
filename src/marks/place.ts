import { roundToStep } from '../units/index.ts';
import type { Mark } from './schedule.ts';

/** A place on a guide line, mm from its datum, and what it is for. */
export interface Place {
  at: number;
  for: string;
}

/** Places closer than this are one mark, mm. */
const SAME = 1e-6;

/** The places as numbered marks in order; places that coincide become one mark that says what it is for, each in turn as given. */
export function marksAt(places: Place[], step: number): Mark[] {
  const order = places.map((place, given) => ({ ...place, given })).sort((a, b) => a.at - b.at);
  const joined: (typeof order)[] = [];
  for (const place of order) {
    const last = joined.at(-1);
    if (last && place.at - last[0]!.at < SAME) last.push(place);
    else joined.push([place]);
  }
  return joined.map((together, index) => {
    const { at } = together[0]!;
    const reasons = together.sort((a, b) => a.given - b.given).map((place) => place.for);
    return { number: index + 1, true: at, reads: roundToStep(at, step), for: reasons.join(', ') };
  });
}
