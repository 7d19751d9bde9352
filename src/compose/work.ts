import type { Layout } from '../fit/layout.ts';
import type { Motifs } from '../fit/problem.ts';
import type { Result } from '../issue.ts';
import type { Job } from '../job/job.ts';
import type { FindFace } from '../lettering/faces.ts';
import { compose } from './compose.ts';
import type { Drawing } from './drawing.ts';
import type { Finish } from './finish.ts';
import { composeLettering } from './lettering.ts';

/** Draws everything there is to paint. Issues are those of the lettering. */
export const composeWork = async (
  layout: Layout,
  job: Job,
  motifs: Motifs,
  findFace: FindFace,
  finish: Finish,
): Promise<Result<Drawing>> =>
  composeLettering(await compose(layout, job, motifs, finish), layout, job, motifs, findFace, finish);
