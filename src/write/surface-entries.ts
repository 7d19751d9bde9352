import type { Layout } from '../fit/layout.ts';
import type { Motifs } from '../fit/problem.ts';
import type { Job, Surface } from '../job/job.ts';
import type { Site } from '../site/site.ts';
import { clothEntries } from './cloth-entry.ts';
import { flightEntries } from './flight-entry.ts';
import { floorEntries } from './floor/entry.ts';
import { roomEntries } from './room/entry.ts';

/** What layout.json says of a surface beside what all have: key to value, lengths in mm. */
type Entries = (job: Job, site: Site, layout: Layout, motifs?: Motifs) => Record<string, unknown>;

const NONE: Entries = () => ({});

const ENTRIES: Record<Surface, Entries> = {
  runner: roomEntries,
  rug: roomEntries,
  'floor-cloth': clothEntries,
  floor: floorEntries,
  'room-border': NONE,
  stairs: flightEntries,
};

export const surfaceEntries: Entries = (job, site, layout, motifs) => ENTRIES[job.surface](job, site, layout, motifs);
