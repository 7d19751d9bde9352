import type { FittedRoom } from '../room-pipeline.ts';
import { writeLength } from '../units/index.ts';
import type { Inks } from './inks.ts';
import { wrap, writeTable } from './table.ts';

const HEAD = ['', 'border', 'repeats', 'one repeat', 'strip off the walls'];

/** The best ways to lay a border round a room: a row of numbers, the line that explains it, and what the search covered. */
export function writeRoomFit(
  { job, site, fit }: Pick<FittedRoom, 'job' | 'site' | 'fit'>,
  inks: Inks,
  room: number,
): string {
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const between = (all: number[]): string => {
    const [least, most] = [Math.min(...all), Math.max(...all)];
    return most - least < 1e-6 ? length(least) : `${length(least)} to ${length(most)}`;
  };
  const rows = fit.layouts.map(({ rank, width, runs }) => {
    const landed = runs.filter(({ repeats }) => repeats > 0);
    return [
      `${rank}`,
      length(width),
      `${landed.reduce((sum, { repeats }) => sum + repeats, 0)}`,
      landed.length > 0 ? between(landed.map(({ pitch }) => pitch)) : 'none',
      between(runs.map(({ strip }) => strip)),
    ];
  });
  const [head = '', ...body] = writeTable([HEAD, ...rows], [0]);
  const lines = [inks.strong(job.title), ...site.notes.flatMap((note) => wrap(note, room, 0)), '', inks.faint(head)];
  for (const [at, layout] of fit.layouts.entries())
    lines.push(inks.strong(body[at]!), ...wrap(layout.says, room, 4).map(inks.faint));
  lines.push(
    '',
    `${fit.searched.toLocaleString('en')} combinations covered, every one of them priced or ruled out by a stated bound (${fit.proof}):`,
    'of the widths, pitches and strips that the tape shows, none lies better within the limits of the job than 1.',
  );
  return lines.join('\n');
}
