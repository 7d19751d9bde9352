import { joinBoxes } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import type { RoomView } from '../site/room-view.ts';
import { paperFor } from './ink.ts';
import { loadLettering } from './label.ts';
import { inkGroup, writePage } from './plan-page.ts';
import { drawRoomAxis } from './room/axis.ts';
import { drawCasings } from './room/casings.ts';
import { drawAxisGaps, drawClearances } from './room/clearances.ts';
import { drawObstacles, drawTables } from './room/obstacles.ts';
import { drawWallDimensions } from './room/wall-dimensions.ts';
import { drawWalls } from './room/walls.ts';
import { Sketch } from './sketch.ts';

/** Everything that the drawing of a room shows. Lengths in mm, the origin at the centre of the work, y down. */
export interface RoomDrawing {
  job: Pick<Job, 'title' | 'units' | 'step' | 'palette'>;
  view: RoomView;
  /** The group `paint` as SVG text, in the same coordinates. */
  paint: string;
  /** Names of the colours that are painted. */
  colours: string[];
  /** The rectangle whose distances from the walls are told; left out where the work goes on to the walls. */
  work?: Box;
  /** The field of work that lies between two openings: what shows of it at their casings is told. */
  field?: Box;
  /** Further groups as SVG text, laid over the paint. */
  over?: string[];
  /** How far those groups reach, if further than the room. */
  reach?: Box;
  /** What the drawing shows in words, for those who hear it read out. */
  says: string;
}

/** How many lines of lettering the longer side of the room stands for. */
const LINES = 72;

/** The room true to size: one user unit is 1 mm, the near wall at the bottom. SVG text. */
export async function writeRoom({
  job,
  view,
  paint,
  colours,
  work,
  field,
  over = [],
  reach,
  says,
}: RoomDrawing): Promise<string> {
  const lettering = await loadLettering();
  const corners = Object.values(view.corners);
  const spread = (axis: 0 | 1) =>
    Math.max(...corners.map((point) => point[axis])) - Math.min(...corners.map((point) => point[axis]));
  const size = Math.max(spread(0), spread(1)) / LINES;
  const sketch = () => new Sketch(lettering, size);
  const [obstacles, tables, walls, axis, dimensions] = [sketch(), sketch(), sketch(), sketch(), sketch()];
  drawObstacles(obstacles, view);
  drawTables(tables, view);
  drawWalls(walls, view);
  drawWallDimensions(dimensions, view, job, field ? 2.8 : undefined);
  if (field) drawCasings(dimensions, view, field, job);
  if (work) {
    drawClearances(dimensions, view, work, job);
    drawAxisGaps(dimensions, view, work, job);
  }
  drawRoomAxis(axis, view, dimensions.box);
  const boxes = [obstacles, tables, walls, axis, dimensions].map(({ box }) => box);
  return writePage(lettering, {
    reach: [...boxes, ...(reach ? [reach] : [])].reduce(joinBoxes),
    paper: paperFor(colours.map((colour) => job.palette[colour]!)),
    size,
    title: `${job.title}: the room`,
    says,
    groups: [
      inkGroup('obstacles', obstacles),
      paint,
      ...over,
      inkGroup('tables', tables),
      inkGroup('walls', walls),
      inkGroup('axis', axis),
      inkGroup('dimensions', dimensions),
    ],
  });
}
