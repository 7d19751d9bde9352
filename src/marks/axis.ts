import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import type { RoomView } from '../site/room-view.ts';
import { marksAt } from './place.ts';
import { roomLines } from './room.ts';
import type { GuideLine } from './schedule.ts';

/**
 * Where the axis itself is found: in a room measured all round along its near and far wall, otherwise at the centre of each opening, or at the
 * middle of the work measured from the left wall.
 */
export function axisLines(layout: Layout, job: Job, view?: RoomView): GuideLine[] {
  const { openings, room } = job.site;
  if (job.site.measured && view) return roomLines(layout, job, view);
  if (job.surface === 'runner' && openings) {
    return (['near', 'far'] as const).map((end) => ({
      name: `${end}-opening`,
      says: `Across the ${end} opening, to find the axis.`,
      datum: `the left side of the ${end} opening`,
      runs: 'right',
      marks: marksAt([{ at: openings[end] / 2, for: 'the axis' }], job.step),
    }));
  }
  if (job.surface === 'rug' && room) {
    const { left, right } = layout.gaps;
    const places = [
      { at: left, for: 'edge of the work' },
      { at: left + layout.overall.across / 2, for: 'the axis' },
      { at: left + layout.overall.across, for: 'edge of the work' },
      { at: left + layout.overall.across + right, for: 'the right wall' },
    ];
    return [
      {
        name: 'room',
        says: 'Across the room at each end of the work, to find the axis.',
        datum: 'the left wall',
        runs: 'right',
        marks: marksAt(places, job.step),
      },
    ];
  }
  return [];
}
