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

function sideRun(count: number, side: number, natural: number): SideRun {
  const stretch = Math.log(side / count / natural);
  return { count, stretch, cost: POINTS.borderStretch * Math.abs(stretch) };
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

/** The cost of the first of `sideRuns`, without the rest: one of the two counts round the true one. */
export function leastSideCost(edging: Edging, side: number, width: number): number {
  const { from, to, by } = countsOn(edging, side, width);
  if (to < from) return Number.POSITIVE_INFINITY;
  if (typeof edging.ratio === 'string') return 0;
  const natural = width * edging.ratio;
  const within = (count: number) => Math.min(to, Math.max(from, count));
  const below = by * Math.floor(side / (natural * by));
  return Math.min(sideRun(within(below), side, natural).cost, sideRun(within(below + by), side, natural).cost);
}

/** The cheapest pair of counts: each side's own stretch, and the difference between them. Both lists hold at least one. */
export function bestBorder(across: SideRun[], along: SideRun[]): BorderRun {
  let best: BorderRun = { across: 0, along: 0, cost: Number.POSITIVE_INFINITY };
  for (const a of across) {
    if (a.cost + along[0]!.cost > best.cost) break;
    for (const b of along) {
      if (a.cost + b.cost > best.cost) break;
      const cost = a.cost + b.cost + POINTS.borderUnlike * Math.abs(a.stretch - b.stretch);
      const fewer = a.count - best.across || b.count - best.along;
      if (cost < best.cost || (cost === best.cost && fewer < 0)) best = { across: a.count, along: b.count, cost };
    }
  }
  return best;
}
