import { cutsOf } from '../../fit/floor/cuts.ts';
import type { Layout } from '../../fit/layout.ts';
import type { Job } from '../../job/job.ts';
import type { Motif } from '../../motif/motif.ts';
import type { FloorRoom } from '../../site/floor-room.ts';
import { outlineOf } from '../../site/walls.ts';
import { scheduleOf } from '../marks.ts';
import type { Schedule } from '../schedule.ts';
import { floorChecks } from './checks.ts';
import { floorLines } from './lines.ts';

/** Every mark of a floor from wall to wall: the centre lines from the walls, and from their crossing outwards. No mark lies beyond a wall. */
export const scheduleFloor = (layout: Layout, job: Job, floor: FloorRoom, field: Motif): Schedule => ({
  ...scheduleOf(floorLines(layout, job, floor, field), floorChecks(job, floor, cutsOf(floor, layout, field)), job),
  room: outlineOf(floor.room),
});
