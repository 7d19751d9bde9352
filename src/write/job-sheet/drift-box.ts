import type { Job } from '../../job/job.ts';
import type { Schedule } from '../../marks/schedule.ts';
import { drawDrift, driftOf, errorStep } from '../drift.ts';
import type { Lettering } from '../lettering.ts';
import { type Block, heading, words } from './block.ts';
import { plainReadings } from './reading.ts';

/** How many repeats are set one after another down the axis, from the first one on. */
const placements = (schedule: Schedule): number =>
  schedule.lines.find((line) => line.name === 'axis')?.marks.filter((mark) => mark.for.startsWith('between')).length ??
  0;

/** What stepping a sheet along would come to beside what the marks come to, and how often a mark is needed at least. */
export function driftBox(schedule: Schedule, job: Job, lettering: Lettering): Block[] {
  const count = placements(schedule);
  if (count < 2) return [];
  const drift = driftOf(count, job);
  const fine = (mm: number) => plainReadings({ units: job.units, step: errorStep(job.system) }).length(mm);
  const { bias, spread, limit, stepped, marked, every } = drift;
  const control =
    every >= count
      ? `Over these ${count} it would stay within ${fine(limit)} all the same.`
      : every > 0
        ? `To stay within ${fine(limit)}, check against a mark at least every ${every === 1 ? 'repeat' : `${every} repeats`}.`
        : `No two repeats may be stepped off without a mark to stay within ${fine(limit)}.`;
  return [
    heading(3, 'Why not one from the other?'),
    words(
      `Placed ${fine(bias)} out the same way each time and ${fine(spread)} at random (a careful hand; common practice), repeats set one from the other may be ${fine(stepped)} out after ${count}. Set to marks, each is within ${fine(marked)}, the last like the first. ${control} If it has crept all the same, evenfield refit gives new marks for what is left.`,
    ),
    { kind: 'figure', svg: drawDrift(drift, job, lettering), says: `Drift over ${count} placements`, share: 1 },
  ];
}
