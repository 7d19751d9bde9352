import type { Point, Ring, Side } from '../../geometry/path.ts';

/** The ends of a ring's sides, its start first, each once: where a blade may go in. */
export function ringEnds({ start, sides }: Ring): Point[] {
  const ends = [start, ...sides.map((side) => side.to)];
  const [x, y] = ends.at(-1)!;
  if (ends.length > 1 && x === start[0] && y === start[1]) ends.pop();
  return ends;
}

/** The same ring, begun at another of its ends (an index into `ringEnds`). Its sides are the same, curves untouched. */
export function startedAt(ring: Ring, end: number): Ring {
  if (end === 0) return ring;
  const { start, sides } = ring;
  const [x, y] = sides.at(-1)!.to;
  const closing: Side[] = x === start[0] && y === start[1] ? [] : [{ kind: 'line', to: start }];
  return { start: sides[end - 1]!.to, sides: [...sides.slice(end), ...closing, ...sides.slice(0, end)] };
}

/**
 * The entry on every ring that makes the way from `home` through the rings in this order and back the shortest there is
 * (dynamic programming along the order).
 * @param ends where each ring may be entered, at least one point each, in the order of cutting
 * @returns an index into the ends of each ring
 */
export function bestEntries(ends: readonly (readonly Point[])[], home: Point): number[] {
  let reached: number[] = [0];
  let from: readonly Point[] = [home];
  const came: Int32Array[] = [];
  for (const here of [...ends, [home]]) {
    const best = here.map(() => Infinity);
    const by = new Int32Array(here.length);
    for (let j = 0; j < here.length; j++) {
      const [x, y] = here[j]!;
      for (let i = 0; i < from.length; i++) {
        const [dx, dy] = [from[i]![0] - x, from[i]![1] - y];
        const far = reached[i]! + Math.sqrt(dx * dx + dy * dy);
        if (far < best[j]!) {
          best[j] = far;
          by[j] = i;
        }
      }
    }
    came.push(by);
    reached = best;
    from = here;
  }
  const chosen: number[] = [];
  for (let at = ends.length, end = 0; at > 0; at--) {
    end = came[at]![end]!;
    chosen.push(end);
  }
  return chosen.reverse();
}
