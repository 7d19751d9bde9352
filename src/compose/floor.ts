import { cutsOf, lastLines } from '../fit/floor/cuts.ts';
import type { Layout } from '../fit/layout.ts';
import type { Box } from '../geometry/path.ts';
import type { Motif } from '../motif/motif.ts';
import type { FloorRoom } from '../site/floor-room.ts';
import { outlineOf } from '../site/walls.ts';
import { type Clip, clipToFloor } from './room-clip.ts';

/** Cuts painting to what is patterned of a floor: the room less the plain strip at the walls and what stands in it. */
export const clipToPattern = ({ painted, obstacles }: FloorRoom): Promise<Clip> =>
  clipToFloor(
    outlineOf(painted),
    obstacles.map(({ outline }) => outline),
  );

/** The lines between repeats that are marked on a floor: as far as the last before each wall. */
export function markedOn(floor: FloorRoom, layout: Layout, field: Motif): Box {
  const { left, right, far, near } = lastLines(floor, cutsOf(floor, layout, field));
  return { left: -left, right, top: -far, bottom: near };
}
