import type { Range } from '../job/job.ts';
import type { Motif } from '../motif/motif.ts';
import type { Tape } from './tape.ts';
import type { Way } from './ways.ts';

/** The motifs of a job, found and ready. */
export interface Motifs {
  field: Motif;
  border?: Motif;
  corner?: Motif;
  inner?: Motif;
  innerCorner?: Motif;
  medallion?: Motif;
  inset?: Motif;
  /** What every second repeat shows instead. */
  other?: Motif;
}

/** One direction of the search. Lengths in mm. */
export interface AxisProblem {
  /** Exactly one of the two is set: the size over everything, or of the field alone. */
  overall?: Range;
  field?: Range;
  /** Inside the overall, at both ends. */
  endGap: Range;
  reserve: Range;
  /** Half-repeats. */
  halves: { from: number; to: number };
  pitch: Range;
  /** Pieces in one repeat that a person marks one by one, such as the squares of a checkerboard. */
  pieces: number;
  /** Ways to land by `halves % 4`. */
  ways: Way[][];
  /** From limit to limit of the place, where it was measured. */
  space?: number;
  /** The two end gaps may differ by one tape step, where that puts every mark on the tape. */
  mayDiffer: boolean;
  /** Marks of this direction are measured from the middle (across) or from the near end (along). */
  datum: 'middle' | 'end';
}

/** How a border repeats along its sides. */
export interface Edging {
  /** `none`, `plain` (one piece a side), or pitch over width when true to shape. */
  ratio: number | 'plain' | 'none';
  stretch: Range;
  /** It runs one way and reverses at the centre of each side, so only even counts land. */
  even: boolean;
  /** The near and far sides run through to the outer edge. */
  butt: boolean;
}

/** All that the search needs to know, in numbers. */
export interface FitProblem {
  tape: Tape;
  across: AxisProblem;
  along: AxisProblem;
  stretch: Range;
  ratio: number;
  /** Width of the border. */
  border: Range;
  edging: Edging;
  /** A second border of this width inside the first; its width and the strip between it and the field are part of the reserves. */
  inner?: Edging & { width: number; gap: number };
}
