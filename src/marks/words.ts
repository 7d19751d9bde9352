import type { Job } from '../job/job.ts';
import { hasFreeEnds, isBetweenMeasured } from '../site/free-ends.ts';

/** What the work is measured from and to, in words. */
export interface Limits {
  near: string;
  far: string;
  left: string;
  right: string;
}

const limits = (noun: string, plural = noun): Limits => ({
  near: `the near ${noun}`,
  far: `the far ${noun}`,
  left: `the left ${plural}`,
  right: `the right ${plural}`,
});

/** A runner lies between thresholds unless its ends are free, a rug between walls where the room was measured, anything else has only its own edges. */
export function limitsOf(job: Job): Limits {
  if (job.surface === 'runner') return hasFreeEnds(job) ? limits('edge of the work') : limits('threshold', 'wall');
  if (job.surface === 'rug' && job.site.room) return limits('wall');
  if (job.surface === 'stairs') {
    const [near, far] = job.stairs?.painted === 'treads' ? ['front', 'back'] : ['lower', 'upper'];
    const edge = (name: string) => `the ${name} edge of the panel`;
    return { near: edge(near!), far: edge(far!), left: edge('left'), right: edge('right') };
  }
  if (job.surface === 'floor') return limits('edge of what is laid');
  return limits(job.surface === 'floor-cloth' ? 'edge of the cloth' : 'edge of the work');
}

/**
 * What marks are pulled from. Thresholds of a room measured all round need not be square to the axis; there it is a base line, square to
 * it, that touches the threshold.
 */
export const datumsOf = (job: Job): Limits =>
  isBetweenMeasured(job) ? { ...limitsOf(job), ...limits('base line', 'wall') } : limitsOf(job);
