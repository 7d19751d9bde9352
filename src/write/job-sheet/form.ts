import type { Paper } from '../../job/job.ts';
import type { Block } from './block.ts';

/** A job sheet before it is written in one form or another. */
export interface JobSheet {
  title: string;
  /** What kind of work, as a heading. */
  kind: string;
  paper: Paper;
  /** The plan stands upright, so that there is room beside it. */
  tall: boolean;
  blocks: Block[];
}
