import { cutsOf } from '../../fit/floor/cuts.ts';
import type { Layout } from '../../fit/layout.ts';
import type { Motifs } from '../../fit/problem.ts';
import type { Job } from '../../job/job.ts';
import { reachesOf } from '../../site/floor-room.ts';
import type { Site } from '../../site/site.ts';
import { WALLS } from '../../site/walls.ts';

/**
 * What layout.json says of a floor from wall to wall, in the coordinates of the plan, whose origin is the crossing of the centre lines: the room, what is patterned
 * of it, what stands in it, the lines between repeats, and how each wall cuts them. Lengths in mm.
 */
export function floorEntries(_job: Job, { floor }: Site, layout: Layout, motifs?: Motifs): Record<string, unknown> {
  if (!floor) return {};
  const { room, painted, strip, openings, obstacles, centred } = floor;
  const { spacing, walls } = cutsOf(floor, layout, motifs?.field ?? {});
  const reaches = reachesOf(room);
  const lines = (way: 'across' | 'along') => {
    const { unit, first } = spacing[way];
    return { unit, first, centre: first === 0 ? 'between repeats' : 'middle of a repeat', midway: centred[way] };
  };
  return {
    floor: {
      corners: room,
      pattern: painted,
      strip,
      openings,
      obstacles,
      lines: { across: lines('across'), along: lines('along') },
      walls: Object.fromEntries(WALLS.map((wall) => [wall, { distance: reaches[wall].centre, cut: walls[wall] }])),
    },
  };
}
