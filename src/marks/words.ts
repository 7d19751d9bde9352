import type { Job } from '../job/job.ts';

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

/** A runner lies between thresholds, a rug between walls where the room was measured, anything else has only its own edges. */
export function limitsOf(job: Job): Limits {
  if (job.surface === 'runner') return limits('threshold', 'wall');
  if (job.surface === 'rug' && job.site.room) return limits('wall');
  return limits(job.surface === 'floor-cloth' ? 'edge of the cloth' : 'edge of the work');
}
