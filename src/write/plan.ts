import type { Motifs } from '../compose/compose.ts';
import type { Drawing } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import { boxHeight, boxWidth, joinBoxes } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import type { FloorRoom } from '../site/floor-room.ts';
import { drawBeyond, drawCrossing, drawFloorWalls } from './floor/beyond.ts';
import { paperFor } from './ink.ts';
import { loadLettering } from './label.ts';
import { drawDimensions } from './plan-dimensions.ts';
import { coloursUsed, drawKey } from './plan-key.ts';
import { inkGroup, writePage } from './plan-page.ts';
import { paintGroup } from './plan-paint.ts';
import { clearOf, drawAxis, drawEnds, drawOutlines, drawSides, drawThresholds } from './plan-place.ts';
import { describePlan } from './plan-says.ts';
import { Sketch } from './sketch.ts';

export interface PlanChoice {
  /** The title, the line that explains the layout, the colours and the scale under the drawing; wanted unless told otherwise. */
  key?: boolean;
  /** How many lines of lettering the longer side of the work stands for; fewer lines are larger. */
  lines?: number;
  /** The room of a floor from wall to wall, which is drawn across what is laid. */
  floor?: FloorRoom | undefined;
}

/** Beside a long narrow work there is room to its right; otherwise the title goes below. */
function roomForKey(reach: Box, work: Box, size: number): Pick<Box, 'left' | 'right' | 'top'> {
  const narrow = boxHeight(reach) > 1.8 * boxWidth(reach);
  if (narrow) return { left: work.right + 4 * size, right: work.right + 26 * size, top: work.top + size };
  return { left: reach.left, right: Math.max(reach.right, reach.left + 24 * size), top: reach.bottom + size };
}

/**
 * The painted floor to scale with its dimensions, as SVG text: one user unit is 1 mm, the origin lies at the centre of the
 * work, y runs down, the near end is at the bottom. Every label is an outline and keeps its text in `data-label`.
 */
export async function writePlan(
  drawing: Drawing,
  layout: Layout,
  job: Job,
  motifs: Motifs,
  { key = true, lines = 70, floor }: PlanChoice = {},
): Promise<string> {
  const lettering = await loadLettering();
  const { work } = drawing;
  const gaps = job.surface === 'runner' ? layout.gaps : { near: 0, far: 0 };
  const ends: Box = { ...work, top: work.top - gaps.far, bottom: work.bottom + gaps.near };
  const size = Math.max(work.right - work.left, ends.bottom - ends.top) / lines;
  const clear = clearOf(job, size);
  const [outlines, axis, dimensions, words, title] = Array.from({ length: 5 }, () => new Sketch(lettering, size)) as [
    Sketch,
    Sketch,
    Sketch,
    Sketch,
    Sketch,
  ];
  drawOutlines(outlines, drawing);
  drawThresholds(outlines, ends, job);
  drawAxis(axis, ends, clear);
  const [beyond, walls] = [new Sketch(lettering, size), new Sketch(lettering, size)];
  if (floor) {
    drawBeyond(beyond, work, floor);
    drawFloorWalls(walls, floor);
    drawCrossing(axis, work);
  }
  const short = drawDimensions(dimensions, { layout, job, drawing, field: motifs.field, ends, clear });
  const above = Math.min(dimensions.box.top, axis.box.top) - 1.2 * size;
  const below = Math.max(dimensions.box.bottom, axis.box.bottom) + 1.2 * size;
  drawEnds(words, above, below, layout, job);
  const { left, right } = dimensions.box;
  drawSides(words, { left, right: { free: work.right, beyond: right, short } }, layout, job);

  const reach = [outlines, ...(floor ? [walls] : []), axis, dimensions, words].map(({ box }) => box).reduce(joinBoxes);
  if (key) {
    drawKey(title, { layout, job, drawing, room: roomForKey(reach, work, size) });
    reach.bottom = Math.max(reach.bottom, title.box.bottom);
    reach.right = Math.max(reach.right, title.box.right);
  }
  return writePage(lettering, {
    reach,
    paper: paperFor(coloursUsed(drawing, job).map(({ colour }) => job.palette[colour]!)),
    size,
    title: `${job.title}: plan`,
    says: describePlan(drawing, layout, job),
    groups: [
      paintGroup(drawing, job),
      ...(floor ? [inkGroup('beyond', beyond), inkGroup('walls', walls)] : []),
      inkGroup('outlines', outlines),
      inkGroup('axis', axis),
      inkGroup('dimensions', dimensions),
      inkGroup('words', words),
      ...(key ? [inkGroup('key', title)] : []),
    ],
  });
}
