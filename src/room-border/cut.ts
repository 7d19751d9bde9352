import type { Drawing } from '../compose/drawing.ts';
import type { Result } from '../issue.ts';
import type { Job } from '../job/job.ts';
import { cutWorks } from '../stencil/cut.ts';
import { islandIssue } from '../stencil/issues.ts';
import type { Sheet } from '../stencil/sheet.ts';
import { sheetWork } from '../stencil/work.ts';
import { type RoomFloor, roomAreas } from './areas.ts';

/** Cuts the border of a room into sheets: its runs, its inside corners, its outside corners. Issues are those of `cutSheets`. */
export const cutRoom = (drawing: Drawing, job: Job, floor: RoomFloor): Promise<Result<Sheet[]>> =>
  cutWorks(sheetWork(drawing, job, floor.motifs), job, (work, book) => ({
    islands: work.regions.some(({ pieces }) => pieces.some((piece) => piece.length > 1))
      ? islandIssue(work.name, work.path)
      : undefined,
    areas: () => roomAreas(floor, work, book),
  }));
