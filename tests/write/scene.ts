import { compose, type Motifs } from '../../src/compose/compose.ts';
import type { Drawing } from '../../src/compose/drawing.ts';
import type { Layout } from '../../src/fit/layout.ts';
import type { Job } from '../../src/job/job.ts';
import { findMotif } from '../../src/motif/library.ts';
import { fillSettings } from '../../src/motif/settings.ts';
import { makeJob, metric } from '../marks/job.ts';
import { type LayoutWish, makeLayout } from '../support/layout.ts';

const IN = 25.4;

/** A job carried as far as its drawing, with a layout that is given, not searched. */
export interface Scene {
  job: Job;
  layout: Layout;
  motifs: Motifs;
  drawing: Drawing;
}

const settled = (name: string) => {
  const filled = fillSettings(findMotif(name)!, {});
  if (!filled.ok) throw new Error(name);
  return { motif: name, settings: filled.value };
};

async function scene(
  names: { field: string; border?: string; corner?: string },
  wish: Partial<LayoutWish>,
  change: Partial<Job>,
  says: string,
  finish: (layout: Layout) => void = () => {},
): Promise<Scene> {
  const base = makeJob(change);
  const job: Job = { ...base, field: { ...base.field, ...settled(names.field) } };
  if (names.border) job.border = { ...base.border, ...settled(names.border), corner: settled(names.corner ?? 'plain') };
  const motifs: Motifs = { field: findMotif(names.field)! };
  if (names.border) {
    motifs.border = findMotif(names.border)!;
    motifs.corner = findMotif(names.corner ?? 'plain')!;
  }
  const layout = { ...makeLayout(wish), says };
  finish(layout);
  return { job, layout, motifs, drawing: await compose(layout, job, motifs) };
}

/** A 20 ft passage runner, 36 in over all, between openings of different width. */
export const runnerScene = (): Promise<Scene> =>
  scene(
    { field: 'diamond', border: 'sawtooth', corner: 'plain' },
    {
      repeats: { across: 5, along: 39 },
      pitch: { across: 6 * IN, along: (233.25 * IN) / 39 },
      border: 3 * IN,
      borderRepeats: { across: 10, along: 78 },
      endGap: 0.375 * IN,
    },
    {
      title: 'Passage runner',
      site: { run: 240 * IN, openings: { near: 34.375 * IN, far: 36 * IN } },
    },
    '5 × 39 whole repeats of diamond; each 6" across by 6" along, drawn in 0.3 % along; border 3" all round; 3/8" of plain floor at each end; marks rounded each on its own',
  );

/** A metric rug that lies in a room one step off centre. */
export const rugScene = (): Promise<Scene> =>
  scene(
    { field: 'eight-point-star', border: 'plain-band', corner: 'plain' },
    {
      repeats: { across: 9, along: 6 },
      pitch: { across: 240, along: 240 },
      border: 90,
      reserve: { across: 24, along: 40 },
    },
    {
      ...metric,
      title: 'Rug for the back room',
      surface: 'rug',
      site: { room: { across: 3612, along: 2845 } },
    },
    '9 × 6 whole repeats of eight-point-star; each 240 mm across by 240 mm along, true to shape; border 90 mm all round',
    (layout) => {
      layout.gaps = { near: 572, far: 573, left: 612, right: 612 };
    },
  );

/** A small floor cloth with half a repeat at each side. */
export const clothScene = (): Promise<Scene> =>
  scene(
    { field: 'lozenge' },
    { repeats: { across: 3, along: 4 }, pitch: { across: 150, along: 225 }, phase: { across: 0.5, along: 0 } },
    { ...metric, units: 'cm', title: 'Cloth by the stove', surface: 'floor-cloth' },
    '3 × 4 repeats of lozenge, half at the sides and whole at the ends; each 15 cm across by 22.5 cm along; no border',
  );

/** A hall 100 ft long, with many small squares, a narrow reserve and hardly any gap at its ends. */
const hallScene = (): Promise<Scene> =>
  scene(
    { field: 'checkerboard', border: 'sawtooth', corner: 'quarter-fan' },
    {
      repeats: { across: 4.5, along: 197.5 },
      pitch: { across: 6 * IN, along: 6 * IN },
      border: 2 * IN,
      reserve: { across: 0.25 * IN, along: 0.5 * IN },
      borderRepeats: { across: 14, along: 600 },
      endGap: 0.125 * IN,
    },
    { title: 'Long hall', units: 'ft', site: { run: 1190.25 * IN, openings: { near: 30 * IN, far: 60 * IN } } },
    '9 × 395 squares, whole at every edge; each 3" across by 3" along, true to shape; border 2" all round',
  );

/** One repeat, and nothing else. */
const tileScene = (): Promise<Scene> =>
  scene(
    { field: 'diamond' },
    { repeats: { across: 1, along: 1 }, pitch: { across: 80, along: 80 } },
    { ...metric, title: 'One tile', surface: 'floor-cloth' },
    '1 × 1 whole repeats of diamond; each 80 mm across by 80 mm along, true to shape; no border',
  );

export const SCENES = { runner: runnerScene, rug: rugScene, cloth: clothScene, hall: hallScene, tile: tileScene };
