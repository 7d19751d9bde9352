import { CUTTING } from '../../src/job/defaults.ts';
import type { Job } from '../../src/job/job.ts';
import { PARTS } from '../../src/motif/motif.ts';

const OPEN = { from: 0, to: Number.POSITIVE_INFINITY };
const choice = (motif: string) => ({ motif, settings: {} });

/** A job whose ranges say nothing; only what marks and written files read from it is set. */
export function makeJob(change: Partial<Job> = {}): Job {
  return {
    name: 'hall-runner',
    title: 'Hall runner',
    units: 'in',
    system: 'inch',
    step: 25.4 / 16,
    surface: 'runner',
    site: {},
    overall: {},
    endGap: OPEN,
    field: { ...choice('diamond'), size: {}, repeats: {}, pitch: {}, stretch: OPEN, landing: 'either' },
    border: {
      ...choice('sawtooth'),
      width: OPEN,
      stretch: OPEN,
      corner: choice('plain'),
      turn: 'block',
      run: 'reverse',
    },
    reserve: { across: OPEN, along: OPEN },
    palette: { cream: '#efe6d2', 'barn red': '#8c2f26', 'lamp black': '#2a2724' },
    colours: Object.fromEntries(
      PARTS.map((part) => [part, part === 'ground' ? 'cream' : part.startsWith('field') ? 'barn red' : 'lamp black']),
    ) as Job['colours'],
    stencil: {
      bridge: 3,
      window: 3,
      touching: 'by turns',
      meeting: { way: 'edge to edge', by: 0 },
      corners: 'sharp',
      gaps: 'open',
      lap: 1,
      sheet: { across: 500, along: 700, rim: 30 },
      cutting: CUTTING,
    },
    print: { paper: 'letter', overlap: 12.7, sheets: true, plan: 'if few', tiles: 'pdf', measured: 254 },
    ...change,
  };
}

export const metric: Partial<Job> = { units: 'mm', system: 'metric', step: 1 };
