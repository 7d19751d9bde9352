import type { Point } from '../../../../src/geometry/path.ts';

/**
 * A length that no round trip through the points can be shorter than: the largest least-cost 1-tree that an ascent over penalties
 * finds (Held and Karp, The traveling-salesman problem and minimum spanning trees, parts I and II, 1970 and 1971; steps after
 * Volgenant and Jonker, 1982). Every 1-tree met is a bound, so stopping early only makes it lower.
 */
export function heldKarpBound(points: readonly Point[], steps = 120): number {
  const n = points.length;
  if (n < 3) return n < 2 ? 0 : 2 * Math.hypot(points[0]![0] - points[1]![0], points[0]![1] - points[1]![1]);
  const x = Float64Array.from(points, ([value]) => value);
  const y = Float64Array.from(points, ([, value]) => value);
  const penalty = new Float64Array(n);
  const before = new Float64Array(n);
  let best = -Infinity;
  let first = 0;
  for (let step = 1; step <= steps; step++) {
    const { length, degree } = oneTree(x, y, penalty);
    best = Math.max(best, length);
    if (step === 1) first = length / (2 * n);
    const share = (step - 1) / Math.max(1, steps - 1);
    const t = first * (1 - share) ** 2;
    let uneven = 0;
    for (let i = 0; i < n; i++) {
      const off = degree[i]! - 2;
      uneven += Math.abs(off);
      penalty[i]! += t * (0.7 * off + 0.3 * before[i]!);
      before[i] = off;
    }
    if (uneven === 0) break;
  }
  return best;
}

/** The least-cost tree over all points but the first, and the two cheapest ways to the first; less twice all penalties. */
function oneTree(x: Float64Array, y: Float64Array, penalty: Float64Array): { length: number; degree: Int32Array } {
  const n = x.length;
  const degree = new Int32Array(n);
  const cost = new Float64Array(n).fill(Infinity);
  const parent = new Int32Array(n);
  const left = Int32Array.from({ length: n - 1 }, (_, i) => i + 1);
  let count = n - 1;
  let length = 0;
  let at = 1;
  left[0] = left[--count]!;
  for (;;) {
    if (count === 0) break;
    let [nearest, where] = [Infinity, 0];
    for (let k = 0; k < count; k++) {
      const j = left[k]!;
      const [dx, dy] = [x[at]! - x[j]!, y[at]! - y[j]!];
      const far = Math.sqrt(dx * dx + dy * dy) + penalty[at]! + penalty[j]!;
      if (far < cost[j]!) {
        cost[j] = far;
        parent[j] = at;
      }
      if (cost[j]! < nearest) {
        nearest = cost[j]!;
        where = k;
      }
    }
    at = left[where]!;
    left[where] = left[--count]!;
    length += nearest;
    degree[at]!++;
    degree[parent[at]!]!++;
  }
  let [one, two, to, other] = [Infinity, Infinity, 0, 0];
  for (let j = 1; j < n; j++) {
    const far = Math.hypot(x[0]! - x[j]!, y[0]! - y[j]!) + penalty[0]! + penalty[j]!;
    if (far < one) [one, two, to, other] = [far, one, j, to];
    else if (far < two) [two, other] = [far, j];
  }
  degree[to]!++;
  degree[other]!++;
  degree[0] = 2;
  length += one + two;
  for (const value of penalty) length -= 2 * value;
  return { length, degree };
}
