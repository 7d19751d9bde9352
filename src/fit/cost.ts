import type { Range } from '../job/job.ts';
import { hardToRead, type Tape } from './tape.ts';

/**
 * What counts against a layout, in points; 1 point is one per cent of stretch. Every term is zero or more and they add up.
 *
 * 1. `stretch`: 1 a per cent that the motif is pulled out of shape.
 * 2. `pitch`: 0.2 a per cent away from the wished pitch, each direction.
 * 3. `border`: 0.1 a per cent away from the wished border; `room` of the tape (0.5 an inch, 0.2 a cm) that a reserve, an end gap or the overall size is away from
 *    what was wished (for a reserve or a gap with no wish: from the least allowed).
 * 4. `half`: 0.5 for each pair of edges that shows half repeats instead of whole ones.
 * 5. `borderStretch`: 0.5 a per cent that border repeats are pulled, on each pair of sides; `borderUnlike`: 0.25 a per cent that the two pairs differ.
 * 6. `reading`: up to 0.1 for each of border and pitches that reads finer than a whole inch (or centimetre) on a tape; 0.15 where the two
 *    margins must differ by a step, 0.3 where marks must be rounded each on its own.
 */
export const POINTS = {
  stretch: 100,
  pitch: 20,
  border: 10,
  half: 0.5,
  borderStretch: 50,
  borderUnlike: 25,
  finest: 0.1,
  uneven: 0.15,
  rounded: 0.3,
} as const;

const offWish = (value: number, wish: number): number => Math.abs(Math.log(value / wish));

export const stretchCost = (stretch: number): number => POINTS.stretch * Math.abs(Math.log(stretch));

export const pitchCost = (pitch: number, allowed: Range): number =>
  allowed.wish === undefined ? 0 : POINTS.pitch * offWish(pitch, allowed.wish);

export const borderCost = (width: number, allowed: Range): number =>
  allowed.wish === undefined || width === 0 ? 0 : POINTS.border * offWish(width, allowed.wish);

/** For a strip of plain ground: the less the better, unless a width is wished for. */
export const stripCost = (width: number, allowed: Range, tape: Tape): number =>
  (tape.room * Math.abs(width - (allowed.wish ?? allowed.from))) / tape.unit;

export const sizeCost = (size: number, allowed: Range, tape: Tape): number =>
  allowed.wish === undefined ? 0 : (tape.room * Math.abs(size - allowed.wish)) / tape.unit;

/** Nothing for a whole inch or centimetre, `POINTS.finest` for what is finer than the tape. */
export const readingCost = (mm: number, tape: Tape): number => POINTS.finest * hardToRead(mm, tape);
