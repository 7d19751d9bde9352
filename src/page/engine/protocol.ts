import type { Result } from '../../issue.ts';
import type { Tree } from '../../job/tree.ts';
import type { Look } from './look.ts';

/** The values of a job file, as typed. */
export type JobTree = { [key: string]: Tree };

/** A job to look at: the file it began as, what it says now, and which layout is chosen, counted from 0. */
export interface Ask {
  base: string;
  tree: JobTree;
  chosen: number;
}

/** A file that a job names, by its path as the job has it. */
export interface Asset {
  path: string;
  bytes: Uint8Array;
}

/** Every file of a job, and what was found. `proofs`: drawings of what does not hold, where sheets were refused. */
export interface MadeFiles {
  name: string;
  files: Map<string, string | Uint8Array>;
  says: string[];
}

/** What the page asks of the engine. Nothing here knows of the page. */
export interface Engine {
  /** The values of a job file, or why it cannot be read at all. */
  open(text: string): Promise<Result<JobTree>>;
  /** What the job file reads, and the plan it leads to. */
  look(ask: Ask): Promise<{ text: string; look: Result<Look> }>;
  /** Every file, as the command line writes them. */
  make(ask: Ask): Promise<{ text: string; made: Result<MadeFiles>; proofs?: MadeFiles }>;
  /** Takes the files that jobs name; those that were there before are forgotten. */
  keep(assets: Asset[]): Promise<void>;
}

/** What the engine needs that only a page has: a drawing as a PNG picture. */
export interface Page {
  picture(svg: string, longSide: number): Promise<Uint8Array>;
}

/** A call from one side, and the answer of the other. */
export type Message =
  | { call: number; name: string; args: unknown[] }
  | { answer: number; value: unknown }
  | { answer: number; error: string };
