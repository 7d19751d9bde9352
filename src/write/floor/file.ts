import { clipToPattern } from '../../compose/floor.ts';
import { clipToFloor } from '../../compose/room-clip.ts';
import { cutsOf } from '../../fit/floor/cuts.ts';
import { sayCut } from '../../fit/floor/says.ts';
import type { FloorRoom } from '../../site/floor-room.ts';
import { outlineOf, WALLS, wallLength } from '../../site/walls.ts';
import { writeLength } from '../../units/index.ts';
import type { Finished } from '../finished.ts';
import { pathText } from '../path.ts';
import { coloursUsed } from '../plan-key.ts';
import { paintRegions } from '../plan-paint.ts';
import { writeRoom } from '../room.ts';
import { element } from '../svg.ts';
import { viewOfFloor } from './view.ts';

/** The floor as it will be: the ground from wall to wall, the pattern cut at the walls and round what stands in the room. */
async function paintOf({ drawing, job }: Finished, floor: FloorRoom): Promise<string> {
  const ground = await clipToFloor(
    outlineOf(floor.room),
    floor.obstacles.map(({ outline }) => outline),
  );
  const pattern = await clipToPattern(floor);
  const regions = paintRegions(pattern.regions(drawing.regions), job, 'room-paint');
  const d = ground.floor.map((piece) => pathText(piece)).join('');
  return element(
    'g',
    { id: 'paint' },
    [element('path', { id: 'ground', fill: job.palette[job.colours.ground]!, d }), ...regions].join('\n'),
  );
}

/** The numbers of the floor in sentences. */
function describe({ job, layout, motifs }: Finished, floor: FloorRoom): string {
  const length = (mm: number): string => writeLength(mm, job.units, job.step);
  const { walls } = cutsOf(floor, layout, motifs.field);
  return [
    'The floor as it will be, to scale, one unit to the millimetre, the near wall at the bottom.',
    `Walls: ${WALLS.map((wall) => `${wall} ${length(wallLength(floor.room, wall))}`).join(', ')}.`,
    `Repeats cut at the walls: ${WALLS.map((wall) => `${wall} ${sayCut(walls[wall], length)}`).join(', ')}.`,
    ...(floor.obstacles.length > 0 ? [`In the room: ${floor.obstacles.map(({ name }) => name).join(', ')}.`] : []),
  ].join(' ');
}

const drawn = new WeakMap<Finished['drawing'], Promise<string>>();

/** `room.svg` of a floor, drawn once: the job sheet shows it too. */
export function floorFile(finished: Finished): Promise<string> {
  const known = drawn.get(finished.drawing) ?? drawFloor(finished);
  drawn.set(finished.drawing, known);
  return known;
}

async function drawFloor(finished: Finished): Promise<string> {
  const { job, site, drawing } = finished;
  const floor = site.floor!;
  return writeRoom({
    job,
    view: viewOfFloor(floor),
    paint: await paintOf(finished, floor),
    colours: coloursUsed(drawing, job).map(({ colour }) => colour),
    says: [describe(finished, floor), ...site.notes].join(' '),
  });
}

export const floorFiles = async (finished: Finished): Promise<ReadonlyMap<string, string>> =>
  new Map([['room.svg', await floorFile(finished)]]);
