import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import { writeLength } from '../units/index.ts';
import { placeFlight } from './flight.ts';

/** `5/8"` or `1/2" to 3/4"`. */
function spanOf(values: number[], length: (mm: number) => string): string {
  const [least, most] = [Math.min(...values), Math.max(...values)].map(length) as [string, string];
  return least === most ? least : `${least} to ${most}`;
}

/** What stays plain round the panel on the steps of a flight; nothing for other work. */
export function sayFlight(job: Job, layout: Layout): string[] {
  const steps = placeFlight(job, layout);
  if (steps.length === 0 || !job.stairs) return [];
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const { work } = layout;
  const all = (key: 'sides' | 'below' | 'above') =>
    spanOf(
      steps.map(({ margins }) => margins[key]),
      length,
    );
  const risers = job.stairs.painted === 'risers';
  const ends = risers ? (['below', 'above'] as const) : (['in front', 'behind'] as const);
  const upright =
    all('below') === all('above')
      ? `${all('below')} ${ends[0]} and ${ends[1]}`
      : `${all('below')} ${ends[0]} and ${all('above')} ${ends[1]}`;
  return [
    `The panel is ${length(work.across)} by ${length(work.along)} on every step; left plain are ${all('sides')} at each side, ${upright}.`,
  ];
}
