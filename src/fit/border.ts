import { POINTS } from './cost.ts';
import type { Edging } from './problem.ts';

/** Whole repeats of a border on the two pairs of sides. */
export interface BorderRun {
  across: number;
  along: number;
  cost: number;
}

/** Whole repeats on one pair of sides. `stretch` is the natural logarithm of drawn over true pitch. */
export interface SideRun {
  count: number;
  stretch: number;
  cost: number;
}

/** Length of the near and far sides (`across`) or of the left and right ones that the repeats have, corners left out. */
export const sideIn = ({ butt }: Edging, direction: 'across' | 'along', work: number, width: number): number =>
  butt && direction === 'across' ? work : work - 2 * width;

/** The counts allowed on a side of this length, mm: from, to, and the step between them. */
export function countsOn(edging: Edging, side: number, width: number): { from: number; to: number; by: number } {
  const by = edging.even ? 2 : 1;
  if (typeof edging.ratio === 'string') return { from: 1, to: side > 0 || width === 0 ? 1 : 0, by: 1 };
  const natural = width * edging.ratio * by;
  const { from, to } = edging.stretch;
  return {
    from: by * Math.max(1, Math.ceil(side / (natural * to) - 1e-9)),
    to: side > 0 ? by * Math.floor(side / (natural * from) + 1e-9) : 0,
    by,
  };
}

const NO_BORDER: SideRun = { count: 0, stretch: 0, cost: 0 };
const ONE_PIECE: SideRun = { count: 1, stretch: 0, cost: 0 };

const costOf = (stretch: number): number => POINTS.borderStretch * Math.abs(stretch);

function sideRun(count: number, side: number, natural: number): SideRun {
  const stretch = Math.log(side / count / natural);
  return { count, stretch, cost: costOf(stretch) };
}

/** What a side of this length takes, cheapest first; empty when nothing fits. */
export function sideRuns(edging: Edging, side: number, width: number): SideRun[] {
  const { from, to, by } = countsOn(edging, side, width);
  if (edging.ratio === 'none') return [NO_BORDER];
  if (edging.ratio === 'plain') return to >= from ? [ONE_PIECE] : [];
  const natural = width * edging.ratio;
  const runs: SideRun[] = [];
  for (let count = from; count <= to; count += by) runs.push(sideRun(count, side, natural));
  return runs.sort((a, b) => a.cost - b.cost);
}

/** The cost of the first of `sideRuns`, without the rest: one of the two counts round the true one. Endless where there is none. */
export function leastSideCost(edging: Edging, side: number, width: number): number {
  const { ratio } = edging;
  if (ratio === 'none') return 0;
  const { from, to, by } = countsOn(edging, side, width);
  if (to < from) return Number.POSITIVE_INFINITY;
  if (ratio === 'plain') return 0;
  const fits = side / (width * ratio);
  const below = by * Math.floor(fits / by);
  const fewer = fits / Math.min(to, Math.max(from, below));
  const more = fits / Math.min(to, Math.max(from, below + by));
  return costOf(Math.log(Math.min(Math.max(fewer, 1 / fewer), Math.max(more, 1 / more))));
}

/** The cheapest pair of counts: each side's own stretch, and the difference between them. Both lists hold at least one. */
export function bestBorder(across: readonly SideRun[], along: readonly SideRun[]): BorderRun {
  let [x, y] = [across[0]!, along[0]!];
  let least = Number.POSITIVE_INFINITY;
  for (const a of across) {
    if (a.cost + along[0]!.cost > least) break;
    for (const b of along) {
      if (a.cost + b.cost > least) break;
      const cost = a.cost + b.cost + POINTS.borderUnlike * Math.abs(a.stretch - b.stretch);
      const fewer = a.count - x.count || b.count - y.count;
      if (cost < least || (cost === least && fewer < 0)) [x, y, least] = [a, b, cost];
    }
  }
  return { across: x.count, along: y.count, cost: least };
}
