import type { Surface } from '../../job/job.ts';
import type { Finished } from '../files.ts';
import type { Block } from './block.ts';

/** What a surface adds to the job sheet, after the plan: figures, tables and words of its own. */
type Blocks = (finished: Finished) => Promise<Block[]>;

const NONE: Blocks = async () => [];

const BLOCKS: Record<Surface, Blocks> = {
  runner: NONE,
  rug: NONE,
  'floor-cloth': NONE,
  floor: NONE,
  'room-border': NONE,
  stairs: NONE,
};

export const surfaceBlocks: Blocks = (finished) => BLOCKS[finished.job.surface](finished);
