import type { Point } from '../../geometry/path.ts';
import type { Job } from '../../job/job.ts';
import { writeTape } from '../../units/index.ts';

/** What a tape shows between two points, in inches and in millimetres, the job's own way first. */
export interface Reading {
  length: string;
  across: string;
  along: string;
}

/** Steps of the tape in the system that the job is not in, mm. */
const SIXTEENTH = 25.4 / 16;

export function bothWays(mm: number, { system, units, step }: Pick<Job, 'system' | 'units' | 'step'>): string {
  const inch = writeTape(mm, 'in', system === 'inch' ? step : SIXTEENTH);
  const metric = writeTape(mm, system === 'metric' ? units : 'mm', system === 'metric' ? step : 1);
  return system === 'inch' ? `${inch} · ${metric}` : `${metric} · ${inch}`;
}

export function readingOf([x0, y0]: Point, [x1, y1]: Point, job: Pick<Job, 'system' | 'units' | 'step'>): Reading {
  return {
    length: bothWays(Math.hypot(x1 - x0, y1 - y0), job),
    across: bothWays(Math.abs(x1 - x0), job),
    along: bothWays(Math.abs(y1 - y0), job),
  };
}
