import type { Drawing } from '../../compose/drawing.ts';
import type { Motifs } from '../../fit/problem.ts';
import type { Job } from '../../job/job.ts';
import { type PaintInput, type PaintPlan, planWhole } from '../../paint/whole.ts';
import type { RoomOutline } from '../../site/walls-outline.ts';
import { floorArea } from './ground.ts';

interface RoomWork extends Pick<PaintInput, 'sheets'> {
  job: Job;
  motifs: Partial<Motifs>;
  outline: RoomOutline;
  drawing: Drawing;
}

/** The paint of a border round a room: its ground is the whole floor. */
export const paintOfRoom = (
  { job, motifs, outline, drawing, sheets }: RoomWork,
  films: PaintInput['films'],
): PaintPlan => planWhole({ job, motifs, regions: drawing.regions, ground: floorArea(outline), sheets, films });
