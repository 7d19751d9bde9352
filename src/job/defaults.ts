import { inches, MM_PER_INCH, type System } from '../units/index.ts';
import type { Cutting, Job, Paper, Range } from './job.ts';

/** Values that hold where the job says nothing, in mm. Each is stated in the schema. */
export const STEP: Record<System, number> = { inch: MM_PER_INCH / 16, metric: 1 };
export const STRETCH: Range = { from: 0.95, to: 1.05 };
export const BORDER_STRETCH: Range = { from: 0.85, to: 1.15 };
/** Share of its room that a motif inside the motif takes. */
export const INSET = 0.7;
export const NOTHING: Range = { from: 0, to: 0 };
/** Room for the ends of a runner whose squares must stay square. */
export const END_GAP: Record<System, Range> = { inch: { from: 0, to: inches(6) }, metric: { from: 0, to: 150 } };
/** Common practice, no source. */
export const BRIDGE = 3;
/** Common practice, no source. */
export const WINDOW = 1.5;

/** How far what fills the gaps of bridges laps over the paint. Common practice, no source. */
export const LAP = 1;
export const EDGE_TO_EDGE: Job['stencil']['meeting'] = { way: 'edge to edge', by: 0 };
/** Colours are our own. */
export const CUTTING: Cutting = {
  outline: 'cut',
  mirrored: false,
  overcut: 0,
  entry: 'free',
  files: 'one a sheet',
  lines: { cut: '#000000', draw: '#0066cc', crease: '#cc3300' },
};
export const SHEET = { across: inches(18), along: inches(24), rim: inches(1) };

/** A printer that is true. */
export const MEASURED = inches(10);
/** Common practice, no source. */
export const OVERLAP: Record<System, number> = { inch: inches(1 / 2), metric: 12 };
export const PAPER: Record<System, Paper> = { inch: 'letter', metric: 'A4' };

/** In inches or in mm. `full`: the width of work from which these hold; `grain`: what narrower ones are rounded to. */
const BORDER = {
  inch: { from: 2, to: 4, wish: 3, full: 24, grain: 1 / 4, mm: inches },
  metric: { from: 50, to: 100, wish: 75, full: 600, grain: 5, mm: (value: number): number => value },
};

/** Width of a border nobody wished for: narrower in proportion on work that is narrower than 24 in (60 cm). */
export function borderWidth(system: System, across: number | undefined): Required<Range> {
  const { from, to, wish, full, grain, mm } = BORDER[system];
  const share = Math.min(1, (across ?? mm(full)) / mm(full));
  const scaled = (width: number): number =>
    mm(share === 1 ? width : Math.max(1, Math.round((width * share) / grain)) * grain);
  return { from: scaled(from), to: scaled(to), wish: scaled(wish) };
}
