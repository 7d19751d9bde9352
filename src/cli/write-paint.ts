import type { Job } from '../job/job.ts';
import { sayDays, sayPaint } from '../paint/says.ts';
import type { PaintPlan } from '../paint/whole.ts';
import { writeDuration } from '../units/duration.ts';
import { DAYS_HEAD, dayRows, PAINT_HEAD, paintRows } from '../write/paint.ts';
import type { Inks } from './inks.ts';
import { wrap, writeTable } from './table.ts';

const lower = (head: string[]): string[] => head.map((name) => name.toLowerCase());

/** The paint of a job as a person reads it in a terminal. @param room how many characters a line may hold */
export function writePaintPlan(plan: PaintPlan, job: Job, inks: Inks, room: number): string {
  const [head = '', ...rows] = writeTable([lower(PAINT_HEAD), ...paintRows(plan, job)], [2, 3]);
  const [dayHead = '', ...days] = writeTable([lower(DAYS_HEAD), ...dayRows(plan)], [0, 3]);
  return [
    inks.strong(job.title),
    '',
    inks.faint(head),
    ...rows,
    '',
    ...sayPaint(plan, job).flatMap((line) => wrap(line, room, 0)),
    '',
    ...wrap(
      `Day by day, with ${writeDuration(plan.days.recoat)} between coats and ${writeDuration(plan.days.placement)} for each time a sheet is laid:`,
      room,
      0,
    ),
    inks.faint(dayHead),
    ...days,
    '',
    ...wrap(sayDays(plan), room, 0),
  ].join('\n');
}
