import type { Surface } from '../../job/job.ts';
import { clothBlocks } from '../cloth-blocks.ts';
import type { Finished } from '../finished.ts';
import { flightBlocks } from '../flight-blocks.ts';
import { floorBlocks } from '../floor/blocks.ts';
import { roomBlocks } from '../room/blocks.ts';
import type { Block } from './block.ts';

/** What a surface adds to the job sheet, after the plan: figures, tables and words of its own. */
type Blocks = (finished: Finished) => Promise<Block[]>;

const NONE: Blocks = async () => [];

const BLOCKS: Record<Surface, Blocks> = {
  runner: roomBlocks,
  rug: roomBlocks,
  'floor-cloth': clothBlocks,
  floor: floorBlocks,
  'room-border': NONE,
  stairs: flightBlocks,
};

export const surfaceBlocks: Blocks = (finished) => BLOCKS[finished.job.surface](finished);
