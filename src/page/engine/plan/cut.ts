import type { Drawing, Region } from '../../../compose/drawing.ts';
import type { Finish } from '../../../compose/finish.ts';
import { composeWork } from '../../../compose/work.ts';
import { loadBooleans } from '../../../geometry/booleans.ts';
import type { Piece } from '../../../geometry/path.ts';
import { good, type Result } from '../../../issue.ts';
import type { Job } from '../../../job/job.ts';
import { faceFinder } from '../../../lettering/faces.ts';
import type { Assets } from '../../../pipeline.ts';
import { loadBridging } from '../../../stencil/bridges/bridging.ts';
import { ASKED, fitOnce } from '../fitted.ts';

/** The work as it is cut: what the knife goes round, and what is left standing in between. */
export interface CutView {
  /** Every window, its bridges left out. */
  windows: Region[];
  /** The bridges. */
  bridges: Region[];
}

const keyOf = ({ element, part, at }: Region): string => `${element} ${part} ${at.join(' ')}`;

/** What of the shapes as drawn is no window. Shapes are told apart by where they stand; one that has no fellow there has no bridges. */
async function between(whole: Drawing, windows: readonly Region[]): Promise<Region[]> {
  const { subtract } = await loadBooleans();
  const standing = new Map<string, Piece[]>();
  for (const window of windows) {
    const key = keyOf(window);
    standing.set(key, [...(standing.get(key) ?? []), ...window.pieces]);
  }
  return whole.regions.flatMap((region): Region[] => {
    const open = standing.get(keyOf(region));
    if (!open || JSON.stringify(open) === JSON.stringify(region.pieces)) return [];
    const pieces = subtract(region.pieces, open);
    return pieces.length > 0 ? [{ ...region, pieces }] : [];
  });
}

async function view(job: Job, draw: (finish: Finish) => Promise<Result<Drawing>>): Promise<Result<CutView>> {
  const { whole, bridged } = await loadBridging(job.stencil, job.colours);
  const [met, cut] = [await draw(whole), await draw(bridged)];
  if (!met.ok) return met;
  if (!cut.ok) return cut;
  return good({ windows: cut.value.regions, bridges: await between(met.value, cut.value.regions) });
}

/** The windows and bridges of the layout that is chosen, counted from 0; the last of them where there are fewer. */
export async function cutViewOf(text: string, chosen: number, assets?: Assets): Promise<Result<CutView>> {
  const fitted = await fitOnce(text, ASKED, assets);
  if (!fitted.ok) return fitted;
  if (fitted.value.kind === 'room border') {
    const { composeRoom } = await import('../../../room-border/compose.ts');
    const { job, outline, motifs, fit } = fitted.value.value;
    const layout = fit.layouts[chosen] ?? fit.layouts.at(-1)!;
    return view(job, async (finish) => good(await composeRoom(outline, layout, job, motifs, finish)));
  }
  const { job, motifs, fit } = fitted.value.value;
  const layout = fit.layouts[chosen] ?? fit.layouts.at(-1)!;
  const find = faceFinder(assets);
  return view(job, (finish) => composeWork(layout, job, motifs, find, finish));
}
