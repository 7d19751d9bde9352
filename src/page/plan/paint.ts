import type { Piece } from '../../geometry/path.ts';
import type { Look } from '../engine/look.ts';

function outline(pieces: readonly Piece[]): Path2D {
  const path = new Path2D();
  for (const piece of pieces)
    for (const { start, sides } of piece) {
      path.moveTo(...start);
      for (const side of sides)
        if (side.kind === 'line') path.lineTo(...side.to);
        else path.bezierCurveTo(...side.out, ...side.into, ...side.to);
      path.closePath();
    }
  return path;
}

/** Paints the work onto the canvas, as large as it goes. */
export function paint(canvas: HTMLCanvasElement, { drawing, job }: Look): void {
  const { work, regions } = drawing;
  const ratio = window.devicePixelRatio || 1;
  const [width, height] = [canvas.clientWidth * ratio, canvas.clientHeight * ratio];
  canvas.width = width;
  canvas.height = height;
  const pen = canvas.getContext('2d')!;
  const scale = 0.94 * Math.min(width / (work.right - work.left), height / (work.bottom - work.top));
  pen.setTransform(scale, 0, 0, scale, width / 2, height / 2);
  pen.fillStyle = job.palette[job.colours.ground]!;
  pen.fillRect(work.left, work.top, work.right - work.left, work.bottom - work.top);
  for (const { pieces, part, at } of regions) {
    const shape = outline(pieces);
    pen.fillStyle = job.palette[job.colours[part]]!;
    for (let n = 0; n < at.length; n += 2) {
      pen.translate(at[n]!, at[n + 1]!);
      pen.fill(shape);
      pen.translate(-at[n]!, -at[n + 1]!);
    }
  }
}
