import { writeCloth } from './cloth-drawing.ts';
import type { Finished } from './finished.ts';

/** What a floor cloth has beside what all work has: how to cut and fold it. */
export async function clothFiles({ job, layout }: Finished): Promise<ReadonlyMap<string, string>> {
  return new Map(job.cloth ? [['cloth.svg', await writeCloth(layout, job, job.cloth)]] : []);
}
