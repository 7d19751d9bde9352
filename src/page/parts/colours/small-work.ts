import type { Job } from '../../../job/job.ts';
import type { Look } from '../../engine/look.ts';
import { shapeOf } from '../../plan/shapes.ts';

/** What a small drawing shows of the plan, mm of the plan. */
export interface Window {
  left: number;
  top: number;
  across: number;
  along: number;
  /** The near end only, of work that is much longer than wide. */
  isPart: boolean;
}

/** Work so much longer than wide is shown at its near end, as high as this. */
const LONG = 2;
const SHOWN = 1.3;

export function windowOf({ lines: { ground } }: Look): Window {
  const [xs, ys] = [ground.map(([x]) => x), ground.map(([, y]) => y)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const [across, along] = [right - left, bottom - top];
  if (along > LONG * across) return { left, top: bottom - SHOWN * across, across, along: SHOWN * across, isPart: true };
  return { left, top, across, along, isPart: false };
}

/** Paints the plan in other colours, a window of it over the whole of a canvas. */
export function paintSmall(
  pen: CanvasRenderingContext2D,
  { drawing, lines }: Look,
  { left, top, across, along }: Window,
  colour: (part: keyof Job['colours']) => string,
): void {
  const scale = pen.canvas.width / across;
  const place = (x: number, y: number): void =>
    pen.setTransform(scale, 0, 0, scale, (x - left) * scale, (y - top) * scale);
  place(0, 0);
  pen.clearRect(left, top, across, along);
  pen.fillStyle = colour('ground');
  pen.beginPath();
  for (const [at, [x, y]] of lines.ground.entries()) {
    if (at === 0) pen.moveTo(x, y);
    else pen.lineTo(x, y);
  }
  pen.fill();
  for (const region of drawing.regions) {
    const { path, box } = shapeOf(region);
    pen.fillStyle = colour(region.part);
    for (let n = 0; n < region.at.length; n += 2) {
      const [x, y] = [region.at[n]!, region.at[n + 1]!];
      if (x + box.right < left || x + box.left > left + across || y + box.bottom < top || y + box.top > top + along)
        continue;
      place(x, y);
      pen.fill(path);
    }
  }
}
