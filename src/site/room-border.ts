import { good, type Result } from '../issue.ts';
import type { Job } from '../job/job.ts';
import type { Site } from './site.ts';

/** A border along the walls of a room. */
export function roomBorderSite(_job: Job): Result<Site> {
  return good({ surface: 'room-border', across: {}, along: {}, notes: [] });
}
