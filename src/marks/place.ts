import { roundToStep } from '../units/index.ts';
import type { Mark } from './schedule.ts';

/** A place on a guide line, mm from its datum, and what it is for. */
export interface Place {
  at: number;
  for: string;
}

/** Places closer than this are one mark, mm. */
const SAME = 1e-6;

/** The places as numbered marks in order; places that coincide become one mark that says what it is for, each in turn. */
export function marksAt(places: Place[], step: number): Mark[] {
  const joined: Place[] = [];
  for (const place of [...places].sort((a, b) => a.at - b.at)) {
    const last = joined.at(-1);
    if (last && place.at - last.at < SAME) last.for += `, ${place.for}`;
    else joined.push({ ...place });
  }
  return joined.map((place, index) => ({
    number: index + 1,
    true: place.at,
    reads: roundToStep(place.at, step),
    for: place.for,
  }));
}
