import type { Region } from '../../compose/drawing.ts';
import type { Box, Point } from '../../geometry/path.ts';
import { rowsOf } from './rows.ts';
import { type Shape, shapeOf } from './shapes.ts';
import type { Size, View } from './view.ts';

export type Pen = CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D;

/** Where to draw: the pen, how the plan lies, and how large the screen is, pixels. */
export interface Onto {
  pen: Pen;
  view: View;
  size: Size;
  /** Pixels of the canvas to a pixel of the page. */
  ratio: number;
}

/** The pen takes millimetres of the plan from now on. */
export function inPlan({ pen, view, ratio }: Onto): void {
  pen.setTransform(view.scale * ratio, 0, 0, view.scale * ratio, view.x * ratio, view.y * ratio);
}

type Draw = (pen: Pen) => void;

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

function drawAt(pen: Pen, x: number, y: number, draw: Draw): void {
  pen.translate(x, y);
  draw(pen);
  pen.translate(-x, -y);
}

/** One row on a strip of its own, as wide as the screen, copied to wherever that row stands. */
function copyRow(onto: Onto, { box }: Shape, xs: readonly number[], ys: readonly number[], draw: Draw): void {
  const { pen, view, ratio } = onto;
  const scale = view.scale * ratio;
  const slack = 2;
  const strip = new OffscreenCanvas(pen.canvas.width, Math.ceil((box.bottom - box.top) * scale) + 2 * slack);
  const brush = strip.getContext('2d')!;
  brush.setTransform(scale, 0, 0, scale, view.x * ratio, slack - box.top * scale);
  for (const x of xs) drawAt(brush, x, 0, draw);
  pen.save();
  pen.setTransform(1, 0, 0, 1, 0, 0);
  for (const y of ys) pen.drawImage(strip, 0, view.y * ratio + (y + box.top) * scale - slack);
  pen.restore();
}

const canCopy = typeof OffscreenCanvas !== 'undefined';

/** Draws at every place of a region that is in sight. */
export function atEach(onto: Onto, { at }: Region, shape: Shape, draw: Draw): void {
  const { left, right, top, bottom } = sight(onto, shape);
  for (const rows of rowsOf(at)) {
    const xs = rows.xs.filter((x) => x >= left && x <= right);
    const ys = rows.ys.filter((y) => y >= top && y <= bottom);
    if (canCopy && ys.length > 2 && xs.length * ys.length > MANY) copyRow(onto, shape, xs, ys, draw);
    else for (const y of ys) for (const x of xs) drawAt(onto.pen, x, y, draw);
  }
}

export function fillRegions(onto: Onto, regions: readonly Region[], colourOf: (region: Region) => string): void {
  for (const region of regions) {
    const shape = shapeOf(region);
    const colour = colourOf(region);
    atEach(onto, region, shape, (pen) => {
      pen.fillStyle = colour;
      pen.fill(shape.path);
    });
  }
}

export function trace(pen: Pen | Path2D, points: readonly Point[]): void {
  points.forEach(([x, y], at) => {
    if (at === 0) pen.moveTo(x, y);
    else pen.lineTo(x, y);
  });
}
