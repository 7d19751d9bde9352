import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import { placeFlight } from '../stairs/flight.ts';
import { marginAt } from '../stairs/room.ts';

/** What layout.json says of a flight: every step with its panel, in the coordinates of flight.svg, and the limits its margins keep to. Lengths in mm. */
export function flightEntries(job: Job, _site: unknown, layout: Layout): Record<string, unknown> {
  const { stairs } = job;
  if (!stairs) return {};
  const limits = (way: 'across' | 'along') => {
    const { from, to } = marginAt(way, stairs);
    return { from, to };
  };
  const steps = placeFlight(job, layout);
  return {
    flight: {
      painted: stairs.painted,
      stands: stairs.stands,
      nosing: stairs.painted === 'treads' ? stairs.nosing : 0,
      limits: { sides: limits('across'), ends: limits('along') },
      steps: steps.map(({ step, across, along, outline, panel, margins }) => ({
        step,
        across,
        along,
        outline,
        panel,
        margins,
      })),
    },
  };
}
