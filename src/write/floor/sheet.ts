import { clipToFloor } from '../../compose/room-clip.ts';
import { cutsOf } from '../../fit/floor/cuts.ts';
import { sayCut } from '../../fit/floor/says.ts';
import { pieceArea } from '../../geometry/measure.ts';
import { reachesOf } from '../../site/floor-room.ts';
import { outlineOf } from '../../site/walls.ts';
import { halves, upper } from '../../words.ts';
import type { Finished } from '../finished.ts';
import { planFigure } from '../job-sheet/plan-figure.ts';
import { plainReadings } from '../job-sheet/reading.ts';
import type { JobSheetInput } from '../job-sheet.ts';
import { layOnFloor } from './lay.ts';

/** What a job sheet says otherwise of a floor from wall to wall than of work with edges of its own. */
export async function floorSheet({ job, site, layout, motifs, drawing }: Finished): Promise<Partial<JobSheetInput>> {
  const { floor } = site;
  if (!floor) return {};
  const readings = plainReadings(job);
  const { length } = readings;
  const by = (one: string, other: string) => `${one} × ${other}`;
  const { left, right, near, far } = reachesOf(floor.room);
  const { walls } = cutsOf(floor, layout, motifs.field);
  const { counts } = motifs.field;
  const { each, many } = counts ?? { each: 'repeat', many: 'repeats' };
  const per = { across: counts?.across ?? 1, along: counts?.along ?? 1 };
  const ground = await clipToFloor(
    outlineOf(floor.room),
    floor.obstacles.map(({ outline }) => outline),
  );
  return {
    plan: await planFigure(drawing, layout, job, motifs, floor),
    numbers: {
      kind: 'numbers',
      items: [
        {
          name: 'Wall to wall, across × along',
          value: by(length(left.centre + right.centre), length(near.centre + far.centre)),
        },
        {
          name: `${upper(many)}, cut ones too`,
          value: by(halves(layout.repeats.across * per.across), halves(layout.repeats.along * per.along)),
        },
        {
          name: `Each ${each}`,
          value: by(length(layout.pitch.across / per.across), length(layout.pitch.along / per.along)),
        },
        { name: 'Cut, left, right', value: `${sayCut(walls.left, length)}, ${sayCut(walls.right, length)}` },
        { name: 'Cut, near, far', value: `${sayCut(walls.near, length)}, ${sayCut(walls.far, length)}` },
      ],
    },
    ground: ground.floor.reduce((sum, piece) => sum + pieceArea(piece), 0),
    marking: [
      'Along each wall pull the mark of its centre line from the corner named, and snap both centre lines from wall to wall with pale chalk: red and blue chalk stain.',
      'Prove them square to each other with the 3-4-5 at their crossing; turn the line across until they are.',
      'From the crossing make every mark out to each wall. The last one is the wall itself: where it is more than a mark of the tape out, measure the room again.',
      'Square off a second line near each wall, make the same marks on it, and snap every line between repeats through its two marks.',
    ],
    lay: (sheet) => layOnFloor(sheet, readings),
  };
}
