import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import { type PlacedStep, placeFlight } from '../stairs/flight.ts';
import { marksAt } from './place.ts';
import type { GuideLine } from './schedule.ts';

const WORDS = {
  riser: { rises: 'up', foot: 'the foot', top: 'the top', lower: 'lower', upper: 'upper' },
  tread: { rises: 'back', foot: 'the front', top: 'the back', lower: 'front', upper: 'back' },
} as const;

/** Where the panel stands on every step: across from its left end, up from its foot (on a tread: back from its front). */
export const flightLines = (layout: Layout, job: Job): GuideLine[] =>
  placeFlight(job, layout).flatMap((step) => linesOn(step, job));

function linesOn({ kind, step, across, along, panel, margins }: PlacedStep, job: Job): GuideLine[] {
  const { rises, foot, top, lower, upper } = WORDS[kind];
  const width = panel.right - panel.left;
  const name = `${kind}-${step}`;
  const up = [
    { at: margins.below, for: `${lower} edge of the panel` },
    { at: along - margins.above, for: `${upper} edge of the panel` },
    { at: along, for: top },
  ].filter(({ at }) => at > 1e-6);
  return [
    {
      name: `${name}-across`,
      says: `Across ${kind} ${step}. The centre line of the flight runs through its middle.`,
      datum: `the left end of ${kind} ${step}`,
      runs: 'right',
      marks: marksAt(
        [
          { at: margins.sides, for: 'left edge of the panel' },
          { at: across / 2, for: 'the centre line' },
          { at: margins.sides + width, for: 'right edge of the panel' },
          { at: across, for: 'the right end' },
        ].filter(({ at }) => at > 1e-6),
        job.step,
      ),
    },
    {
      name: `${name}-${rises}`,
      says: kind === 'riser' ? `Up riser ${step}, on the centre line.` : `Back over tread ${step}, on the centre line.`,
      datum: `${foot} of ${kind} ${step}`,
      runs: 'along',
      marks: marksAt(up, job.step),
    },
  ];
}
