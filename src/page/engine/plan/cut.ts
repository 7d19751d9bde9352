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

/** The places of a region: x0, y0, x1, y1, … */
function placesOf({ at }: Region): { x: number; y: number; key: string }[] {
  const places: { x: number; y: number; key: string }[] = [];
  for (let n = 0; n < at.length; n += 2) places.push({ x: at[n]!, y: at[n + 1]!, key: `${at[n]} ${at[n + 1]}` });
  return places;
}

const kindOf = ({ element, part }: Region): string => `${element} ${part}`;

/** Windows by what they are of and where they stand, as their numbers. */
function standing(windows: readonly Region[]): Map<string, number[]> {
  const found = new Map<string, number[]>();
  for (const [number, window] of windows.entries())
    for (const { key } of placesOf(window)) {
      const place = `${kindOf(window)} ${key}`;
      found.set(place, [...(found.get(place) ?? []), number]);
    }
  return found;
}

/** What of the shapes as drawn is no window. A shape may be cut otherwise at some of its places; each such way is a region of its own. */
export async function bridgesBetween(whole: readonly Region[], windows: readonly Region[]): Promise<Region[]> {
  const { subtract } = await loadBooleans();
  const there = standing(windows);
  return whole.flatMap((region): Region[] => {
    const ways = new Map<string, { numbers: number[]; at: number[] }>();
    for (const { x, y, key } of placesOf(region)) {
      const numbers = there.get(`${kindOf(region)} ${key}`) ?? [];
      const way = ways.get(numbers.join(' '));
      if (way) way.at.push(x, y);
      else ways.set(numbers.join(' '), { numbers, at: [x, y] });
    }
    return [...ways.values()].flatMap(({ numbers, at }): Region[] => {
      const open = numbers.flatMap((number): Piece[] => windows[number]!.pieces);
      if (JSON.stringify(open) === JSON.stringify(region.pieces)) return [];
      const pieces = subtract(region.pieces, open);
      return pieces.length > 0 ? [{ ...region, pieces, at: new Float64Array(at) }] : [];
    });
  });
}

async function view(job: Job, draw: (finish: Finish) => Promise<Result<Drawing>>): Promise<Result<CutView>> {
  const { whole, bridged } = await loadBridging(job.stencil, job.colours);
  const [met, cut] = [await draw(whole), await draw(bridged)];
  if (!met.ok) return met;
  if (!cut.ok) return cut;
  return good({ windows: cut.value.regions, bridges: await bridgesBetween(met.value.regions, cut.value.regions) });
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
