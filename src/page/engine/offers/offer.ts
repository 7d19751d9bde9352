import type { Tree } from '../../../job/tree.ts';

export type Path = (string | number)[];
/** What a job says at a path from now on; nothing where it says no more. */
export type Change = [path: Path, value: Tree | undefined];

/** Something that helps where a job does not go on, already tried. */
export interface Offer {
  /** What is done, as on a button. */
  says: string;
  /** What comes of it: the layout that is then the first, or nothing where more is wrong. */
  leads?: string;
  changes: Change[];
  /** The place, from 0, of what it answers among the issues of the job. */
  issue: number;
  /** How much it changes, in points, for putting the least change first. */
  by: number;
}

/** Something to be tried. */
export type Trial = Pick<Offer, 'says' | 'changes' | 'by'>;
