import { hardToRead, type Tape } from '../fit/tape.ts';
import type { Range } from '../job/job.ts';

/**
 * What counts against a room border, in points; 1 point is one per cent of stretch. Every term is zero or more and they add up.
 *
 * 1. `stretch`: 1 a per cent that repeats are pulled out of shape; with a pitch for each wall, half of the mean and half of the most, and
 *    0.25 a per cent that the walls differ.
 * 2. `uneven`: 4 an inch (1.5 a cm) that the widest strip is wider than the narrowest.
 * 3. `width`: 0.1 a per cent away from the wished width; `room` of the tape (0.5 an inch, 0.2 a cm) that the mean of the strips is away from
 *    the wished one, or from the middle of what is allowed.
 * 4. `reading`: up to 0.1 for a width that reads finer than a whole inch (or centimetre) on a tape.
 */
export const POINTS = { stretch: 100, unlike: 25, width: 10, finest: 0.1, uneven: { inch: 4, metric: 1.5 } } as const;

export const stretchCost = (stretch: number): number => POINTS.stretch * Math.abs(Math.log(stretch));

export const widthCost = (width: number, allowed: Range, tape: Tape): number =>
  (allowed.wish === undefined ? 0 : POINTS.width * Math.abs(Math.log(width / allowed.wish))) +
  POINTS.finest * hardToRead(width, tape);

const isInch = ({ unit }: Tape): boolean => unit === 25.4;

export const unevenCost = (mm: number, tape: Tape): number =>
  (POINTS.uneven[isInch(tape) ? 'inch' : 'metric'] * mm) / tape.unit;

export const stripCost = (mean: number, allowed: Range, tape: Tape): number =>
  (tape.room * Math.abs(mean - (allowed.wish ?? (allowed.from + allowed.to) / 2))) / tape.unit;
