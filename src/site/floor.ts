import { good, type Result } from '../issue.ts';
import type { Job } from '../job/job.ts';
import type { Site } from './site.ts';

/** A floor from wall to wall. */
export function floorSite(_job: Job): Result<Site> {
  return good({ surface: 'floor', across: {}, along: {}, notes: [] });
}
