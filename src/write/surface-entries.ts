import type { Layout } from '../fit/layout.ts';
import type { Job, Surface } from '../job/job.ts';
import type { Site } from '../site/site.ts';

/** What layout.json says of a surface beside what all have: key to value, lengths in mm. */
type Entries = (job: Job, site: Site, layout: Layout) => Record<string, unknown>;

const NONE: Entries = () => ({});

const ENTRIES: Record<Surface, Entries> = {
  runner: NONE,
  rug: NONE,
  'floor-cloth': NONE,
  floor: NONE,
  'room-border': NONE,
  stairs: NONE,
};

export const surfaceEntries: Entries = (job, site, layout) => ENTRIES[job.surface](job, site, layout);
