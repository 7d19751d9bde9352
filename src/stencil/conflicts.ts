import type { Conflict } from './classes.ts';
import { comesWithin } from './gap.ts';
import type { Axis, Kind } from './patch.ts';
import type { Shape } from './shape.ts';

/** Nearer than the bridge by less than this still counts as the bridge, mm. */
const SLACK = 1e-6;

/** Cells from `low` to `high` in which a box of the second kind can come within reach of the first. */
function range(axis: Axis, between: number, reach: number): [number, number] {
  if (!axis.repeats) return [0, 0];
  return [Math.ceil((-reach - between) / axis.pitch), Math.floor((reach - between) / axis.pitch)];
}

/** All pairs of pieces, by kinds and cells apart, that lie closer to each other than the bridge. Each pair once. */
export function findConflicts(kinds: Kind[], shapes: Shape[], x: Axis, y: Axis, bridge: number): Conflict[] {
  const found: Conflict[] = [];
  for (let from = 0; from < kinds.length; from++) {
    for (let to = from; to < kinds.length; to++) {
      const [a, b] = [kinds[from]!, kinds[to]!];
      const [one, other] = [shapes[a.shape]!, shapes[b.shape]!];
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const [firstI, lastI] = range(x, dx, one.box.right + other.box.right + bridge);
      const [firstJ, lastJ] = range(y, dy, one.box.bottom + other.box.bottom + bridge);
      for (let di = firstI; di <= lastI; di++) {
        for (let dj = firstJ; dj <= lastJ; dj++) {
          if (from === to && (di < 0 || (di === 0 && dj <= 0))) continue;
          const [sx, sy] = [dx + di * x.pitch, dy + dj * y.pitch];
          if (comesWithin(bridge - SLACK, one, other, sx, sy)) found.push({ from, to, di, dj });
        }
      }
    }
  }
  return found;
}
