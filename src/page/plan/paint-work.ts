import type { Look } from '../engine/look.ts';
import type { CutView } from '../engine/plan/cut.ts';
import type { Inks } from './inks.ts';
import { atEach, fillRegions, inPlan, type Onto, trace } from './regions.ts';
import { shapeOf } from './shapes.ts';

function ground({ pen }: Onto, { lines }: Look, colour: string): void {
  pen.fillStyle = colour;
  pen.beginPath();
  trace(pen, lines.ground);
  pen.closePath();
  pen.fill();
}

/** The work as it is painted. With `bridged`, its bridges stay bare and are marked in that ink. */
export function paintWork(onto: Onto, look: Look, bridged?: { cut: CutView; ink: string }): void {
  const { job, drawing } = look;
  inPlan(onto);
  ground(onto, look, job.palette[job.colours.ground]!);
  fillRegions(onto, bridged?.cut.windows ?? drawing.regions, ({ part }) => job.palette[job.colours[part]]!);
  if (bridged) fillRegions(onto, bridged.cut.bridges, () => bridged.ink);
}

/** Shapes smaller than this on the screen are filled, not drawn round, pixels. */
const SMALL = 6;

/** The work as it is cut: windows drawn round in ink, bridges marked where they are wanted. */
export function paintCut(onto: Onto, look: Look, inks: Inks, { windows, bridges }: CutView, marked: boolean): void {
  const { view } = onto;
  inPlan(onto);
  ground(onto, look, inks.card);
  if (marked) fillRegions(onto, bridges, () => inks.oxide);
  for (const region of windows) {
    const shape = shapeOf(region);
    const { left, right, top, bottom } = shape.box;
    const isSmall = Math.max(right - left, bottom - top) * view.scale < SMALL;
    atEach(onto, region, shape, (brush) => {
      brush.fillStyle = inks.ink;
      brush.strokeStyle = inks.ink;
      brush.lineWidth = 1.25 / view.scale;
      brush.lineJoin = 'round';
      if (isSmall) brush.fill(shape.path);
      else brush.stroke(shape.path);
    });
  }
}
