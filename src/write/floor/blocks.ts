import { cutsOf } from '../../fit/floor/cuts.ts';
import { sayCut } from '../../fit/floor/says.ts';
import { reachesOf } from '../../site/floor-room.ts';
import { WALLS } from '../../site/walls.ts';
import { writeLength } from '../../units/index.ts';
import type { Finished } from '../finished.ts';
import type { Block } from '../job-sheet/block.ts';
import { floorFile } from './file.ts';

/** What a floor adds to the job sheet: how it will look, what each wall cuts, and what to do there. */
export async function floorBlocks(finished: Finished): Promise<Block[]> {
  const { job, site, layout, motifs } = finished;
  const { floor } = site;
  if (!floor) return [];
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const { each } = motifs.field.counts ?? { each: 'repeat' };
  const cuts = cutsOf(floor, layout, motifs.field);
  const reaches = reachesOf(floor.room);
  const strips = {
    left: floor.strip.across,
    right: floor.strip.across,
    near: floor.strip.along,
    far: floor.strip.along,
  };
  const hasStrip = floor.strip.across > 0 || floor.strip.along > 0;
  const unit = {
    left: cuts.spacing.across.unit,
    right: cuts.spacing.across.unit,
    near: cuts.spacing.along.unit,
    far: cuts.spacing.along.unit,
  };
  const rows = WALLS.map((wall) => [
    `${wall} wall`,
    length(reaches[wall].centre),
    ...(hasStrip ? [length(strips[wall])] : []),
    cuts.walls[wall].whole
      ? `a whole ${each}, ${length(unit[wall])}`
      : `${sayCut(cuts.walls[wall], length)} of ${length(unit[wall])}`,
  ]);
  const standing = floor.obstacles.map(({ name }) => name);
  return [
    { kind: 'heading', level: 2, text: 'From wall to wall' },
    {
      kind: 'figure',
      svg: await floorFile(finished),
      says: 'The floor as it will be. The sheets go on past the walls; what falls beyond them falls on the mask.',
      share: 1,
    },
    {
      kind: 'table',
      head: ['', 'From the crossing', ...(hasStrip ? ['Plain strip'] : []), `Last ${each}, cut to`],
      rows,
    },
    {
      kind: 'words',
      text: `The floor is laid from the crossing of its two centre lines, so opposite walls cut alike and none leaves less than half a ${each}. A cut that is not the same all along shows how crooked the wall is; that is right, and nothing to be mended by moving the lines.`,
    },
    {
      kind: 'ticks',
      items: [
        hasStrip
          ? 'Mask along the edge of the plain strip, and cover the floor and the baseboard beyond it with paper.'
          : 'Mask the baseboard and the casings down to the floor, tape pressed into the corner, with paper above it as high as a sheet bends up.',
        'At a wall let the sheet bend up against it, a cloth pressed into the corner; or cut a second copy of the sheet and trim that to the wall, never the first.',
        'Where the wall strays, trim the second copy for the place where the cut is narrowest and mask the rest.',
        ...(standing.length > 0 ? [`Mask round the ${standing.join(', the ')} in the same way.`] : []),
        'Begin at the crossing and work outwards, the cut places last. Keep the way to the door till the end.',
      ],
    },
  ];
}
