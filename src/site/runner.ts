import type { Job } from '../job/job.ts';
import { writeLength } from '../units/index.ts';
import { coveringWidth } from './cover.ts';
import { sayRuns } from './runs.ts';
import type { Site } from './site.ts';

interface Openings {
  near: number;
  far: number;
}

/** A runner lies from threshold to threshold, or without a run ends freely; unless the job fixes its width, its field covers both openings. */
export function runnerSite(job: Job, run?: number): Site {
  const { openings, runs } = job.site;
  const fixed = job.overall.across !== undefined || job.field.size.across !== undefined;
  const cover = openings && !fixed ? coveringWidth([openings.near, openings.far], job.system) : undefined;
  return {
    surface: 'runner',
    across: cover === undefined ? {} : { cover },
    along: run === undefined ? {} : { space: run },
    notes: [...(openings ? notes(job, openings, cover) : []), ...(runs ? sayRuns(runs, job) : [])],
  };
}

function notes(job: Job, { near, far }: Openings, cover: number | undefined): string[] {
  const write = (mm: number): string => writeLength(mm, job.units, job.step);
  const said: string[] = [];
  const unequal = Math.abs(near - far) >= job.step / 2;
  if (unequal)
    said.push(
      `The openings differ: the near one is ${write(near)} wide, the far one ${write(far)}. The axis runs from the centre of one to the centre of the other.`,
    );
  if (cover === undefined) return said;
  const rule = job.system === 'inch' ? 'the first even whole inch' : 'the first whole 2 cm';
  const beyond = (opening: number): string => write((cover - opening) / 2);
  if (unequal)
    said.push(
      `The field is ${write(cover)} wide, ${rule} that covers both: ${beyond(near)} more than the near opening on each side, ${beyond(far)} more than the far one.`,
    );
  else if (cover - near >= job.step / 2)
    said.push(`The field is ${write(cover)} wide, ${rule} that covers openings of ${write(near)}.`);
  return said;
}
