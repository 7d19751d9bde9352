import type { Surface } from '../job/job.ts';
import type { Finished } from './files.ts';

/** What a surface writes beside the files that all have: name to content. */
type Writer = (finished: Finished) => Promise<ReadonlyMap<string, string | Uint8Array>>;

const NONE: Writer = async () => new Map();

const WRITERS: Record<Surface, Writer> = {
  runner: NONE,
  rug: NONE,
  'floor-cloth': NONE,
  floor: NONE,
  'room-border': NONE,
  stairs: NONE,
};

export const writeSurfaceFiles: Writer = (finished) => WRITERS[finished.job.surface](finished);
