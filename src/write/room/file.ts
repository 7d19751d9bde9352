import type { Job } from '../../job/job.ts';
import { viewOf } from '../../site/placed.ts';
import type { RoomView } from '../../site/room-view.ts';
import { WALLS, wallLength } from '../../site/walls.ts';
import { writeLength } from '../../units/index.ts';
import type { Finished } from '../finished.ts';
import { coloursUsed } from '../plan-key.ts';
import { paintGroup } from '../plan-paint.ts';
import { writeRoom } from '../room.ts';

/** The numbers of the room in sentences. */
function describe({ corners, openings, obstacles }: RoomView, job: Job): string {
  const length = (mm: number): string => writeLength(mm, job.units, job.step);
  const walls = WALLS.map((wall) => `${wall} ${length(wallLength(corners, wall))}`);
  return [
    'The room with the work in it, to scale, one unit to the millimetre, the near wall at the bottom.',
    `Walls: ${walls.join(', ')}.`,
    ...(openings.length > 0 ? [`Openings in: ${openings.map(({ wall }) => `the ${wall} wall`).join(', ')}.`] : []),
    ...(obstacles.length > 0 ? [`In the room: ${obstacles.map(({ name }) => name).join(', ')}.`] : []),
  ].join(' ');
}

/** `room.svg` of a rug or a runner whose room was measured; undefined without one. */
export async function roomFile({ job, site, layout, drawing }: Finished): Promise<string | undefined> {
  const view = viewOf(site, job, layout);
  if (!view) return undefined;
  return writeRoom({
    job,
    view,
    paint: paintGroup(drawing, job),
    colours: coloursUsed(drawing, job).map(({ colour }) => colour),
    work: drawing.work,
    ...(site.placing?.ends ? { field: drawing.field } : {}),
    says: [describe(view, job), ...site.notes].join(' '),
  });
}

export async function roomFiles(finished: Finished): Promise<ReadonlyMap<string, string>> {
  const text = await roomFile(finished);
  return new Map(text === undefined ? [] : [['room.svg', text]]);
}
