import { harmOf, type Whole } from './harm.ts';
import type { Candidate, Stretch } from './lines.ts';

/** Lines tried, evenly and symmetrically, besides those between windows. */
const EVEN = 240;

/** Where a line may lie: evenly over the stretch, in its middle, and halfway between edges of windows. Each with its harm. */
export function candidatesAlong(wholes: readonly Whole[], way: 0 | 1, stretch: Stretch, bridge: number): Candidate[] {
  const { low, high, repeats, pitch } = stretch;
  const [from, long] = repeats ? [low, pitch] : [low, high - low];
  const places: number[] = [];
  for (let n = repeats ? 0 : 1; n < EVEN; n++) places.push(from + (long * n) / EVEN);
  const edges = wholes
    .flatMap(({ box }) => (way === 0 ? [box.left, box.right] : [box.top, box.bottom]))
    .sort((a, b) => a - b);
  for (let n = 1; n < edges.length; n++) {
    const [a, b] = [edges[n - 1]!, edges[n]!];
    const middle = (a + b) / 2;
    if (b - a < bridge / 2 || middle <= from || middle >= from + long) continue;
    places.push(middle, 2 * from + long - middle);
  }
  const sorted = places
    .sort((a, b) => a - b)
    .filter((at, n, all) => (n === 0 || at - all[n - 1]! > 1e-6) && at < from + long - 1e-9);
  return sorted.map((at) => ({ at, harm: harmOf(wholes, way, at, bridge) }));
}
