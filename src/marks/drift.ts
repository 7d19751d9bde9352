import type { System } from '../units/index.ts';

/** How far out a placement comes: the same every time, and at random about that. Lengths in mm. */
export interface Placing {
  bias: number;
  /** Standard deviation. */
  spread: number;
}

/** A careful hand with a stencil or a template: 1/64 in and 1/32 in, or 0.4 and 0.8 mm. Common practice, no source. */
export const PLACING: Record<System, Placing> = {
  inch: { bias: 25.4 / 64, spread: 25.4 / 32 },
  metric: { bias: 0.4, spread: 0.8 },
};

/** How far work may creep before it is a nuisance, mm: 1/8 in or 3 mm. Common practice, no source. */
export const DRIFT_LIMIT: Record<System, number> = { inch: 25.4 / 8, metric: 3 };

/**
 * How far step-and-repeat has crept by the last repeat, where each repeat is set from the one before it, mm.
 * Errors of one sign add up; random ones grow with the square root of their number.
 * @param bias   the same error at every placement, mm
 * @param spread standard deviation of the random error at a placement, mm
 */
export const stepDrift = (count: number, bias: number, spread: number): number =>
  count * Math.abs(bias) + Math.sqrt(count) * spread;

/** How far any repeat lies from true where each is set to a mark of its own, mm: half a tape step, and one placement. */
export const datumError = ({ bias, spread }: Placing, step: number): number => step / 2 + stepDrift(1, bias, spread);

/**
 * How many repeats may be stepped off from one control mark to the next so that the drift stays within a limit:
 * the largest whole n with step / 2 + n e + √n s ≤ limit; the control mark is itself right to half a tape step.
 * @param limit mm
 * @returns 0 where even a single placement goes beyond it, Infinity where placements are never out
 */
export function controlEvery({ bias, spread }: Placing, limit: number, step: number): number {
  const [e, left] = [Math.abs(bias), limit - step / 2];
  const room = left * (1 + 1e-12);
  if (left < 0) return 0;
  if (e === 0) return spread === 0 ? Number.POSITIVE_INFINITY : Math.floor((room / spread) ** 2);
  const root = (-spread + Math.sqrt(spread * spread + 4 * e * room)) / (2 * e);
  return Math.floor(root * root + 1e-9);
}

/** One repeat of a run and how far out it comes: stepped off from the first, set to its own mark, and stepped off from the last control mark. Lengths in mm. */
export interface DriftPoint {
  repeat: number;
  stepped: number;
  marked: number;
  controlled: number;
}

/**
 * The drift along a run of so many placements, from 0 on.
 * @param every how many repeats from one control mark to the next, 1 or more
 */
export function driftCurve(count: number, placing: Placing, step: number, every: number): DriftPoint[] {
  const { bias, spread } = placing;
  return Array.from({ length: count + 1 }, (_, repeat) => {
    const since = repeat === 0 ? 0 : ((repeat - 1) % every) + 1;
    return {
      repeat,
      stepped: stepDrift(repeat, bias, spread),
      marked: repeat === 0 ? 0 : datumError(placing, step),
      controlled: repeat === 0 ? 0 : step / 2 + stepDrift(since, bias, spread),
    };
  });
}
