import type { Point } from '../geometry/path.ts';
import type { TapeNote } from './tape.ts';

/** One tape mark, measured from the datum of its line. Lengths in mm. */
export interface Mark {
  number: number;
  /** Where it truly is. */
  true: number;
  /** What the tape shows: `true` rounded on its own to the tape's step. */
  reads: number;
  /** What it is for, such as `field begins` or `repeat 4`. */
  for: string;
}

/** Part of a long line that two hands can hold a tape over, and what the tape shows from one mark to the other. */
export interface Span {
  /** Number of the mark it starts at; 0 is the datum. */
  from: number;
  to: number;
  /** From mark to mark as they were made, so that all spans of a line add up to its last reading, mm. */
  total: number;
}

/** A line that is marked, and the one point all its marks are measured from. */
export interface GuideLine {
  /** Short and stable, such as `axis`, `across-left`. */
  name: string;
  says: string;
  datum: string;
  /** `along` lines run from near to far, `near` ones the other way; lines across run to the left or right. */
  runs: 'along' | 'near' | 'left' | 'right';
  marks: Mark[];
  /** A long line in parts that can be handled, each with its known total. */
  spans?: Span[];
}

/** A distance that proves the corners square. */
export interface SquareCheck {
  says: string;
  true: number;
  reads: number;
  /** What to do when it is off. */
  otherwise: string;
  /** From point to point, in the coordinates of the work, where it is not one of the usual ones. */
  between?: [Point, Point][];
}

export interface Schedule {
  step: number;
  /** What the tape itself may be off by. */
  tape: TapeNote;
  lines: GuideLine[];
  checks: SquareCheck[];
  /** The corners of the room, in the coordinates of the work, where the work goes on to the walls. */
  room?: Point[];
}
