import { ringArea } from '../../geometry/measure.ts';
import type { Ring } from '../../geometry/path.ts';
import { reversedRing } from '../../geometry/transform.ts';
import type { Drawn, Part } from '../motif.ts';
import { isStraight } from './curve.ts';
import type { Edge } from './edge.ts';
import { distance } from './vector.ts';

function edgesOf(ring: Ring, part: Part, within: number): Edge[] {
  const edges: Edge[] = [];
  let from = ring.start;
  for (const side of [...ring.sides, { kind: 'line' as const, to: ring.start }]) {
    const points = side.kind === 'line' ? [from, side.to] : [from, side.out, side.into, side.to];
    // What is too short to see is left out; the next side takes over its start.
    if (points.every((point) => distance(point, from) <= within)) continue;
    if (side.kind === 'line' || isStraight(points, within))
      edges.push({ kind: 'straight', part, points: [from, side.to], half: 0 });
    else edges.push({ kind: 'curve', part, points, half: 0 });
    from = side.to;
  }
  return edges;
}

/** All edges drawn, the paint on the same side of each, whichever way their rings run. */
export function gather(drawn: readonly Drawn[], within: number): Edge[] {
  return drawn.flatMap(({ part, pieces }) =>
    pieces.flatMap((piece) =>
      piece.flatMap((ring, at) => {
        const outer = at === 0;
        return edgesOf(ringArea(ring) > 0 === outer ? ring : reversedRing(ring), part, within);
      }),
    ),
  );
}
