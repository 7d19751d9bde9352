import { good, type Result } from '../issue.ts';
import type { Job } from '../job/job.ts';
import type { Site } from './site.ts';

/** A flight of stairs. */
export function stairsSite(_job: Job): Result<Site> {
  return good({ surface: 'stairs', across: {}, along: {}, notes: [] });
}
