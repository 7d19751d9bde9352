import type { Tree } from '../../job/tree.ts';

/** The values of a job file, as typed. */
export type JobTree = { [key: string]: Tree };

/** A job to look at: the file it began as, what it says now, and which layout is chosen, counted from 0. */
export interface Ask {
  base: string;
  tree: JobTree;
  chosen: number;
  /** What the job file is called, which names a job that has no title. */
  file?: string;
}

/** A file that a job names, by its path as the job has it. */
export interface Asset {
  path: string;
  bytes: Uint8Array;
}
