import { compose } from '../../src/compose/compose.ts';
import type { Drawing } from '../../src/compose/drawing.ts';
import { composeLettering } from '../../src/compose/lettering.ts';
import type { Layout } from '../../src/fit/layout.ts';
import type { Issue } from '../../src/issue.ts';
import { faceFinder } from '../../src/lettering/faces.ts';
import { type Fitted, fitJob } from '../../src/pipeline.ts';
import { cutSheets } from '../../src/stencil/cut.ts';
import type { Sheet } from '../../src/stencil/sheet.ts';

/** What a small job of the walk may say; the rest is a floor cloth with a plain band. Lengths in mm. Invented. */
export interface WalkWish {
  field?: string;
  repeats?: [across: number, along: number];
  /** Length of a repeat over its width. */
  ratio?: number;
  /** Width of a repeat; the cloth is cut to suit. */
  pitch?: number;
  /** More keys of the field. */
  more?: string;
  border?: string;
  /** What border and reserves take on each side. */
  around?: number;
  /** Further lines of the job. */
  rest?: string;
}

/** A job file for so many repeats true to shape. */
export function walkText({
  field = 'diamond',
  repeats: [across, along] = [4, 6],
  ratio = 1,
  pitch = 120,
  more = '',
  border = '{ motif: plain-band, width: 60 }',
  around = 60,
  rest = '',
}: WalkWish = {}): string {
  const size = [across * pitch, along * pitch * ratio].map((length) => Math.round(length) + 2 * around);
  return `evenfield: 1
title: Walk
units: mm
surface: floor-cloth
overall: { across: ${size[0]}, along: ${size[1]} }
field: { motif: ${field}, repeats: { across: ${across}, along: ${along} }, stretch: 0.9 to 1.1${more && `, ${more}`} }
border: ${border}
${rest}
`;
}

export interface Walked extends Pick<Fitted, 'job' | 'motifs'> {
  layout: Layout;
  drawing: Drawing;
  sheets: Sheet[];
}

/** Carries a job's text as far as its sheets, or to the first stage that finds fault with it. */
export async function walk(text: string): Promise<{ walked?: Walked; issues: Issue[] }> {
  const fitted = await fitJob(text, 'walk.job.yaml', 1);
  if (!fitted.ok) return { issues: fitted.issues };
  const { job, motifs, fit } = fitted.value;
  const layout = fit.layouts[0]!;
  const lettered = await composeLettering(await compose(layout, job, motifs), layout, job, motifs, faceFinder());
  if (!lettered.ok) return { issues: lettered.issues };
  const drawing = lettered.value;
  const cut = await cutSheets(drawing, layout, job, motifs);
  if (!cut.ok) return { issues: cut.issues };
  return { walked: { job, motifs, layout, drawing, sheets: cut.value }, issues: [] };
}

/** The same, for a job that is known to be cut. */
export async function walkThrough(wish: WalkWish): Promise<Walked> {
  const { walked, issues } = await walk(walkText(wish));
  if (!walked) throw new Error(issues.map(({ code, says }) => `${code}: ${says}`).join('\n'));
  return walked;
}
