import type { Surface } from '../job/job.ts';
import { clothFiles } from './cloth-files.ts';
import type { Finished } from './finished.ts';
import { flightFiles } from './flight-files.ts';
import { floorFiles } from './floor/file.ts';
import { roomFiles } from './room/file.ts';

/** What a surface writes beside the files that all have: name to content. */
type Writer = (finished: Finished) => Promise<ReadonlyMap<string, string | Uint8Array>>;

const NONE: Writer = async () => new Map();

const WRITERS: Record<Surface, Writer> = {
  runner: roomFiles,
  rug: roomFiles,
  'floor-cloth': clothFiles,
  floor: floorFiles,
  'room-border': NONE,
  stairs: flightFiles,
};

export const writeSurfaceFiles: Writer = (finished) => WRITERS[finished.job.surface](finished);
