import type { Region } from '../../compose/drawing.ts';
import type { Box, Point } from '../../geometry/path.ts';
import type { Look } from '../engine/look.ts';
import type { CutView } from '../engine/plan/cut.ts';
import type { Inks } from './inks.ts';
import { rowsOf } from './rows.ts';
import { type Shape, shapeOf } from './shapes.ts';
import type { Size, View } from './view.ts';

/** Where to draw: the pen, how the plan lies, and how large the screen is, pixels. */
export interface Onto {
  pen: CanvasRenderingContext2D;
  view: View;
  size: Size;
  /** Pixels of the canvas to a pixel of the page. */
  ratio: number;
}

/** The pen takes millimetres of the plan from now on. */
export function inPlan({ pen, view, ratio }: Onto): void {
  pen.setTransform(view.scale * ratio, 0, 0, view.scale * ratio, view.x * ratio, view.y * ratio);
}

type Draw = (pen: CanvasRenderingContext2D) => void;

/** From so many places in sight on, rows that are alike are drawn once and copied. */
const MANY = 400;

/** From where to where a place may lie for its shape to be in sight, mm. */
function sight({ view: { scale, x, y }, size }: Onto, { box }: Shape): Box {
  return {
    left: -x / scale - box.right,
    right: (size.width - x) / scale - box.left,
    top: -y / scale - box.bottom,
    bottom: (size.height - y) / scale - box.top,
  };
}

function drawAt(pen: CanvasRenderingContext2D, x: number, y: number, draw: Draw): void {
  pen.translate(x, y);
  draw(pen);
  pen.translate(-x, -y);
}

/** One row on a strip of its own, as wide as the screen, copied to wherever that row stands. */
function copyRow(onto: Onto, { box }: Shape, xs: readonly number[], ys: readonly number[], draw: Draw): void {
  const { pen, view, ratio } = onto;
  const scale = view.scale * ratio;
  const slack = 2;
  const strip = document.createElement('canvas');
  strip.width = pen.canvas.width;
  strip.height = Math.ceil((box.bottom - box.top) * scale) + 2 * slack;
  const brush = strip.getContext('2d')!;
  brush.setTransform(scale, 0, 0, scale, view.x * ratio, slack - box.top * scale);
  for (const x of xs) drawAt(brush, x, 0, draw);
  pen.save();
  pen.setTransform(1, 0, 0, 1, 0, 0);
  for (const y of ys) pen.drawImage(strip, 0, view.y * ratio + (y + box.top) * scale - slack);
  pen.restore();
}

/** Draws at every place of a region that is in sight. */
function atEach(onto: Onto, { at }: Region, shape: Shape, draw: Draw): void {
  const { left, right, top, bottom } = sight(onto, shape);
  for (const rows of rowsOf(at)) {
    const xs = rows.xs.filter((x) => x >= left && x <= right);
    const ys = rows.ys.filter((y) => y >= top && y <= bottom);
    if (ys.length > 2 && xs.length * ys.length > MANY) copyRow(onto, shape, xs, ys, draw);
    else for (const y of ys) for (const x of xs) drawAt(onto.pen, x, y, draw);
  }
}

function fillRegions(onto: Onto, regions: readonly Region[], colourOf: (region: Region) => string): void {
  for (const region of regions) {
    const shape = shapeOf(region);
    const colour = colourOf(region);
    atEach(onto, region, shape, (pen) => {
      pen.fillStyle = colour;
      pen.fill(shape.path);
    });
  }
}

export function trace(pen: CanvasRenderingContext2D | Path2D, points: readonly Point[]): void {
  points.forEach(([x, y], at) => {
    if (at === 0) pen.moveTo(x, y);
    else pen.lineTo(x, y);
  });
}

function ground({ pen }: Onto, { lines }: Look, colour: string): void {
  pen.fillStyle = colour;
  pen.beginPath();
  trace(pen, lines.ground);
  pen.closePath();
  pen.fill();
}

/** The work as it is painted. With `cut`, its bridges stay bare and are marked. */
export function paintWork(onto: Onto, look: Look, inks: Inks, cut?: CutView): void {
  const { job, drawing } = look;
  inPlan(onto);
  ground(onto, look, job.palette[job.colours.ground]!);
  fillRegions(onto, cut?.windows ?? drawing.regions, ({ part }) => job.palette[job.colours[part]]!);
  if (cut) fillRegions(onto, cut.bridges, () => inks.oxide);
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
