import type { Wall } from '../../job/job.ts';
import type { Motif } from '../../motif/motif.ts';
import { type FloorRoom, reachesOf } from '../../site/floor-room.ts';
import { WALLS } from '../../site/walls.ts';
import type { Layout } from '../layout.ts';
import { type Cut, cutAt, type Spacing } from './cut.ts';
import { spacingOf } from './search.ts';

/** How a floor meets its walls. Lengths in mm. */
export interface FloorCuts {
  /** Lines between repeats (or between the pieces of one that the eye counts), from the centre lines. */
  spacing: { across: Spacing; along: Spacing };
  walls: Record<Wall, Cut>;
}

/** The cuts of a layout that was fitted to the room. @throws RangeError where it was fitted to another */
export function cutsOf(floor: FloorRoom, layout: Layout, { counts }: Pick<Motif, 'counts'>): FloorCuts {
  const spacing = (way: 'across' | 'along'): Spacing => {
    const found = spacingOf(layout.pitch[way], 2 * layout.repeats[way], layout.phase[way], counts?.[way] ?? 1);
    if (!found) throw new RangeError(`the lines ${way} are not alike on both sides of the centre`);
    return found;
  };
  const both = { across: spacing('across'), along: spacing('along') };
  const reaches = reachesOf(floor.painted);
  const cut = (wall: Wall): Cut => {
    const found = cutAt(reaches[wall], both[wall === 'left' || wall === 'right' ? 'across' : 'along']);
    if (!found) throw new RangeError(`the ${wall} wall crosses a line between repeats`);
    return found;
  };
  return { spacing: both, walls: Object.fromEntries(WALLS.map((wall) => [wall, cut(wall)])) as Record<Wall, Cut> };
}

/** How far the last line between repeats lies from the centre line on the way to each wall, mm. */
export function lastLines(floor: FloorRoom, { spacing, walls }: FloorCuts): Record<Wall, number> {
  const reaches = reachesOf(floor.painted);
  const last = (wall: Wall): number => {
    const { unit } = wall === 'left' || wall === 'right' ? spacing.across : spacing.along;
    return reaches[wall].centre - (walls[wall].whole ? unit : walls[wall].centre);
  };
  return Object.fromEntries(WALLS.map((wall) => [wall, last(wall)])) as Record<Wall, number>;
}
