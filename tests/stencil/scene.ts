import { compose, type Motifs } from '../../src/compose/compose.ts';
import type { Drawing, Region } from '../../src/compose/drawing.ts';
import type { Layout } from '../../src/fit/layout.ts';
import type { Piece, Point } from '../../src/geometry/path.ts';
import { shifted } from '../../src/geometry/transform.ts';
import { findMotif } from '../../src/motif/library.ts';
import type { Motif, Part } from '../../src/motif/motif.ts';
import { type CutJob, cutSheets } from '../../src/stencil/cut.ts';
import type { Placement, Sheet } from '../../src/stencil/sheet.ts';
import { type LayoutWish, makeLayout } from '../support/layout.ts';

/** A floor to cut sheets for: motifs by name, a layout, and what of the job matters. Invented. Lengths in mm. */
export interface Wish extends Partial<LayoutWish> {
  field: string;
  side?: string;
  corner?: string;
  bridge?: number;
  window?: number;
  sheet?: { across: number; along: number; rim: number };
  colours?: Partial<Record<Part, string>>;
}

export interface Scene {
  drawing: Drawing;
  layout: Layout;
  job: CutJob;
  motifs: { field: Motif; border?: Motif; corner?: Motif };
}

export const SHEET = { across: 457.2, along: 609.6, rim: 25.4 };

const COLOURS: Record<Part, string> = {
  ground: 'cream',
  field: 'navy',
  alternate: 'brick',
  border: 'navy',
  'border-alternate': 'brick',
  corner: 'brick',
  'corner-alternate': 'navy',
  'inner-border': 'brick',
  'inner-border-alternate': 'navy',
  inset: 'brick',
  medallion: 'navy',
  'medallion-alternate': 'brick',
  lettering: 'navy',
};

const settingsOf = (motif?: Motif): Record<string, number> =>
  Object.fromEntries(Object.entries(motif?.parameters ?? {}).map(([name, { default: value }]) => [name, value]));

export async function makeScene(wish: Wish): Promise<Scene> {
  const motifs: Scene['motifs'] = { field: findMotif(wish.field)! };
  if (wish.side) motifs.border = findMotif(wish.side)!;
  if (wish.corner) motifs.corner = findMotif(wish.corner)!;
  const layout = makeLayout(wish);
  const drawing = await compose(
    layout,
    {
      field: { settings: settingsOf(motifs.field) },
      border: { settings: settingsOf(motifs.border), corner: { settings: settingsOf(motifs.corner) } },
    },
    motifs,
  );
  const job: CutJob = {
    units: 'in',
    step: 25.4 / 16,
    colours: { ...COLOURS, ...wish.colours },
    stencil: { bridge: wish.bridge ?? 3, window: wish.window ?? 1.5, sheet: wish.sheet ?? SHEET },
  };
  return { drawing, layout, job, motifs };
}

export async function cutOf(scene: Scene): Promise<Sheet[]> {
  const cut = await cutSheets(scene.drawing, scene.layout, scene.job, scene.motifs);
  if (!cut.ok) throw new Error(cut.issues.map(({ code, says }) => `${code}: ${says}`).join('\n'));
  return cut.value;
}

/** Sheet point to floor, by the rotation matrix of the quarter turn (clockwise on the page, y down). */
export function lay({ turn, x, y }: Placement): (point: Point) => Point {
  const [cos, sin] = [Math.round(Math.cos((turn * Math.PI) / 2)), Math.round(Math.sin((turn * Math.PI) / 2))];
  return ([px, py]) => [px * cos - py * sin + x, px * sin + py * cos + y];
}

export interface Painted {
  colour: string;
  element: string;
  piece: Piece;
}

/** The motif that painted a region, as the job has it. */
function motifOf({ element, part }: Region, job: Pick<CutJob, 'border' | 'inner'>, motifs: Motifs): Motif | undefined {
  const turns = (way: CutJob['border']) => way?.turn !== undefined && way.turn !== 'block';
  if (part === 'inset') return motifs.inset;
  if (element === 'field') return motifs.field;
  if (element === 'medallion') return motifs.medallion;
  if (element === 'corner') return turns(job.border) ? motifs.border : motifs.corner;
  if (element === 'inner-corner') return turns(job.inner) ? motifs.inner : motifs.innerCorner;
  return element.startsWith('inner-') ? motifs.inner : motifs.border;
}

/** Every piece of the drawing that no tape masks, one by one where it is painted. */
export function paintedPieces({
  drawing,
  job,
  motifs,
}: {
  drawing: Drawing;
  job: Pick<CutJob, 'border' | 'inner' | 'colours'>;
  motifs: Motifs;
}): Painted[] {
  return drawing.regions.flatMap((region) => {
    if (region.element !== 'lettering' && motifOf(region, job, motifs)?.made !== 'sheet') return [];
    const { element, part, pieces, at } = region;
    const all: Painted[] = [];
    for (let n = 0; n < at.length; n += 2) {
      for (const piece of pieces)
        all.push({ colour: job.colours[part], element, piece: shifted(piece, at[n]!, at[n + 1]!) });
    }
    return all;
  });
}
