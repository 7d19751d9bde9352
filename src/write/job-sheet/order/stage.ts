import type { Job } from '../../../job/job.ts';
import type { Sheet } from '../../../stencil/sheet.ts';
import type { TapedPart } from '../../../stencil/taped.ts';

/** A part of the work with its steps, in the order they are done. */
export interface Stage {
  title: string;
  steps: string[];
}

/** What the order of work is made from. Lengths in mm. */
export interface Work {
  job: Job;
  sheets: readonly Sheet[];
  /** What the sheets are cut from, in pieces. */
  films: number;
  /** Parts that are painted without a sheet. */
  taped: readonly TapedPart[];
  /** Guide lines, and the marks on all of them. */
  marks: { lines: number; marks: number };
  /** What one works across, and along, before one is out of the way; over everything. */
  size: { across: number; along: number };
  /** A plain strip is left at the ends of a runner. */
  gaps: boolean;
  /** Steps of marking, where it does not go by one axis. */
  marking?: readonly string[] | undefined;
  /** Steps for the lettering; none where there is none. */
  lettering: readonly string[];
}
