import { placeFlight } from '../stairs/flight.ts';
import { writeTape } from '../units/index.ts';
import type { Finished } from './finished.ts';
import { writeFlight } from './flight-drawing.ts';
import type { Block } from './job-sheet/block.ts';

/** What is painted on each step and where, for the job sheet. */
export async function flightBlocks({ job, layout, drawing }: Finished): Promise<Block[]> {
  const { stairs } = job;
  if (!stairs) return [];
  const steps = placeFlight(job, layout);
  const tape = (mm: number) => writeTape(mm, job.units, job.step);
  const risers = stairs.painted === 'risers';
  const { across, along } = layout.work;
  return [
    { kind: 'heading', level: 2, text: 'The flight' },
    {
      kind: 'figure',
      svg: await writeFlight(drawing, layout, job),
      says: `The ${stairs.painted} from the bottom up, each as it was measured, with its panel on the centre line.`,
      share: 0.8,
    },
    {
      kind: 'words',
      text: `The plan is the panel, ${tape(across)} by ${tape(along)}, the same on every step. Marks, sheets and passes below are for one panel: do them on every step. Mark the middle of each ${risers ? 'riser' : 'tread'} from its own two ends, then hold a string from the middle of the lowest to the middle of the highest. Where a mark lies off the string, follow the string: the eye sees the line, not the margins.`,
    },
    {
      kind: 'table',
      head: [
        'Step',
        risers ? 'Wide × high' : 'Wide × deep',
        'Centre line, from the left',
        'Panel, from the left',
        risers ? 'Panel, from the foot' : 'Panel, from the front',
      ],
      rows: steps.map((step) => [
        `${step.step}`,
        `${tape(step.across)} × ${tape(step.along)}`,
        tape(step.across / 2),
        `${tape(step.margins.sides)} to ${tape(step.margins.sides + across)}`,
        `${tape(step.margins.below)} to ${tape(step.margins.below + along)}`,
      ]),
      ticked: true,
    },
    {
      kind: 'words',
      text: risers
        ? 'Paint from the top down, working from the floor or a tread, never from a chair on the stairs.'
        : sayTreads(tape(stairs.nosing), stairs.nosing > 0),
    },
    {
      kind: 'words',
      text: 'The edge of every tread must stay easy to see from above, and nothing that can lift may lie over it. How high and how deep a step is, is ruled by your local code: change nothing of it. The label, local codes and licensed practice come first.',
    },
  ];
}

/** Treads are walked on: in two goes, with a plain front, and not slippery. */
const sayTreads = (nosing: string, isPlain: boolean): string =>
  `Paint every second tread first and mark the wet ones; the rest when those bear feet, so that there is always a way up and down. Paint on a tread wears where feet fall and is slippery: ${isPlain ? `the front ${nosing} stay plain` : 'better leave the front plain'}, and try a grip additive, wet, on one tread before you coat all.`;
