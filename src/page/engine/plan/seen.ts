import type { Drawing } from '../../../compose/drawing.ts';
import type { Layout } from '../../../fit/layout.ts';
import type { Job } from '../../../job/job.ts';
import type { Schedule } from '../../../marks/schedule.ts';
import type { RoomLayout } from '../../../room-border/layout.ts';
import type { RoomView } from '../../../site/room-view.ts';
import type { Site } from '../../../site/site.ts';
import type { RoomOutline } from '../../../site/walls-outline.ts';

/** A work of one rectangle as it is seen on the plan. */
export interface RectangleSeen {
  job: Job;
  layout: Layout;
  drawing: Drawing;
  site: Site;
  schedule: Schedule;
  view: RoomView | undefined;
}

/** A border round a room as it is seen on the plan. */
export interface RoomSeen {
  job: Job;
  layout: RoomLayout;
  outline: RoomOutline;
  drawing: Drawing;
  schedule: Schedule;
}
