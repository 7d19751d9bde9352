import { planCloth } from '../cloth/plan.ts';
import type { Region } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import type { Motifs } from '../fit/problem.ts';
import type { Job } from '../job/job.ts';
import type { Film } from '../stencil/films.ts';
import type { Sheet } from '../stencil/sheet.ts';
import { tapedParts } from '../stencil/taped.ts';
import { inches } from '../units/index.ts';
import { paintedAreas, tapeLengths } from './areas.ts';
import { type Days, planDays } from './days.ts';
import { type Paint, planPaint, reserveOf } from './plan.ts';

/** Everything to buy and the days it takes. Lengths in mm, areas in mm², volumes in ml. */
export interface PaintPlan {
  reserve: number;
  /** How often the same panel is painted, as on the steps of a flight. */
  panels: number;
  paints: Paint[];
  /** Tape along all edges that are masked, and whole rolls of it. */
  tape?: { length: number; roll: number; width: number; rolls: number };
  films?: { count: number; across: number; along: number };
  canvas?: { roll: number; buy: number };
  days: Days;
}

export interface PaintInput {
  job: Job;
  motifs: Partial<Motifs>;
  /** As it is painted on the floor. */
  regions: readonly Region[];
  /** What a roller covers, mm². */
  ground: number;
  sheets: readonly Sheet[];
  films: readonly Film[];
  panels?: number;
  layout?: Layout;
}

/** How masking tape is sold: width and length of a roll, mm. Common practice, no source. */
const ROLL = { inch: { width: inches(1), roll: 60 * inches(36) }, metric: { width: 25, roll: 50_000 } };
/** Tape that overlaps at corners or is torn off crooked. Common practice, no source. */
const TORN = 1.1;
/** Whole rolls for so much edge, both in mm. */
export const rollsFor = (length: number, roll: number): number => Math.ceil((length * TORN) / roll - 1e-9);

/** Works out all paint, tape, film and canvas of a job, and the days. */
export function planWhole(input: PaintInput): PaintPlan {
  const { job, motifs, regions, sheets, films, panels = 1, layout } = input;
  const times = (by: ReadonlyMap<string, number>) => new Map([...by].map(([name, value]) => [name, value * panels]));
  const paints = planPaint(job, { ground: input.ground * panels, pattern: times(paintedAreas(regions, job)) });
  const tape = times(tapeLengths(regions, tapedParts(job, motifs)));
  const placements = new Map<string, number>();
  for (const { colour, passes } of sheets) {
    const laid = passes.reduce((sum, pass) => sum + pass.length, 0) * panels;
    placements.set(colour, (placements.get(colour) ?? 0) + laid);
  }
  const long = [...tape.values()].reduce((sum, length) => sum + length, 0);
  const { width, roll } = ROLL[job.system];
  const cloth = job.cloth && layout && planCloth(layout, job.cloth, job).choices[0];
  return {
    reserve: reserveOf(job),
    panels,
    paints,
    ...(long > 0 ? { tape: { length: long, roll, width, rolls: rollsFor(long, roll) } } : {}),
    ...(films[0] ? { films: { count: films.length, across: films[0].across, along: films[0].along } } : {}),
    ...(cloth ? { canvas: { roll: cloth.roll, buy: cloth.buy } } : {}),
    days: planDays(paints, job, { placements, tape }),
  };
}
