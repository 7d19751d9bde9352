import type { Point } from '../../geometry/path.ts';
import type { Inks } from './inks.ts';
import type { Onto } from './regions.ts';
import { line, onScreen, words } from './strokes.ts';
import { toScreen } from './view.ts';

/** A cross where a point would be set. */
function cross(onto: Onto, [x, y]: Point, colour: string, inks: Inks): void {
  line(
    onto,
    [
      [x - 11, y],
      [x + 11, y],
    ],
    colour,
    1.5,
    inks,
  );
  line(
    onto,
    [
      [x, y - 11],
      [x, y + 11],
    ],
    colour,
    1.5,
    inks,
  );
}

/** The measuring line: its points in the plan, and whether the last is still being aimed at. `caught`: it lies on the drawing. */
export function paintMeasure(
  onto: Onto,
  {
    points,
    aim,
    caught,
    text,
  }: { points: readonly Point[]; aim?: Point | undefined; caught: boolean; text?: string | undefined },
  inks: Inks,
): void {
  onScreen(onto);
  const all = [...points, ...(aim ? [aim] : [])].map((point) => toScreen(onto.view, point));
  if (all.length > 1) line(onto, all, inks.oxide, 2, inks);
  all.forEach((point, at) => {
    if (at < points.length) {
      const { pen } = onto;
      pen.beginPath();
      pen.arc(point[0], point[1], 5, 0, 2 * Math.PI);
      pen.fillStyle = inks.oxide;
      pen.strokeStyle = inks.card;
      pen.lineWidth = 2;
      pen.fill();
      pen.stroke();
    } else {
      cross(onto, point, inks.oxide, inks);
      if (caught) {
        const { pen } = onto;
        pen.strokeStyle = inks.oxide;
        pen.lineWidth = 2;
        pen.strokeRect(point[0] - 6, point[1] - 6, 12, 12);
      }
    }
  });
  if (text && all.length > 1) {
    const [[ax, ay], [bx, by]] = [all[0]!, all[1]!];
    words(onto, text, [(ax + bx) / 2, (ay + by) / 2 - 12], inks.oxide, inks);
  }
}
