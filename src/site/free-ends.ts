import type { Job } from '../job/job.ts';

/** A runner that lies in a hall and ends where its length ends, not at thresholds. */
export const hasFreeEnds = ({ surface, site, overall }: Pick<Job, 'surface' | 'site' | 'overall'>): boolean =>
  surface === 'runner' && site.run === undefined && overall.along !== undefined;

/** A runner between two thresholds of a room measured all round; these need not be square to it. */
export const isBetweenMeasured = (job: Pick<Job, 'surface' | 'site' | 'overall'>): boolean =>
  job.surface === 'runner' && job.site.measured !== undefined && !hasFreeEnds(job);
