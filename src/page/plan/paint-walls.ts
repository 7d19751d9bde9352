import type { Point } from '../../geometry/path.ts';
import type { Look } from '../engine/look.ts';
import type { Inks } from './inks.ts';
import { inPlan, type Onto, trace } from './regions.ts';
import type { RoomFor } from './room-for.ts';
import { HIGH, line, onScreen, words } from './strokes.ts';
import { toScreen } from './view.ts';

/** How thick walls are drawn, on the far side of their faces, pixels. */
const WALL = 5;

/** The walls and what stands between them; what is laid beyond them is veiled. */
export function drawWalls(onto: Onto, { lines: { walls }, drawing: { work } }: Look, inks: Inks, taken: RoomFor): void {
  if (!walls) return;
  const { pen, view } = onto;
  const { pattern } = walls;
  if (pattern) {
    // What is laid beyond the pattern is not painted.
    inPlan(onto);
    pen.globalAlpha = 0.82;
    pen.fillStyle = inks.card;
    pen.beginPath();
    const slack = 2 / view.scale;
    pen.rect(
      work.left - slack,
      work.top - slack,
      work.right - work.left + 2 * slack,
      work.bottom - work.top + 2 * slack,
    );
    trace(pen, pattern);
    pen.closePath();
    pen.fill('evenodd');
    pen.globalAlpha = 1;
  }
  onScreen(onto);
  const seen = (point: Point): Point => toScreen(view, point);
  for (const { kind, name, outline } of walls.things) {
    const points = outline.map(seen);
    const closed = [...points, points[0]!];
    if (kind === 'obstacle') {
      const path = new Path2D();
      trace(path, closed);
      pen.save();
      pen.clip(path);
      pen.globalAlpha = 0.85;
      pen.fillStyle = inks.card;
      pen.fill(path);
      pen.globalAlpha = 1;
      pen.strokeStyle = inks.soft;
      pen.lineWidth = 1;
      pen.beginPath();
      const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
      const [left, right] = [Math.max(0, Math.min(...xs)), Math.min(onto.size.width, Math.max(...xs))];
      const [top, bottom] = [Math.max(0, Math.min(...ys)), Math.min(onto.size.height, Math.max(...ys))];
      for (let sum = Math.ceil((left + top) / 9) * 9; sum < right + bottom; sum += 9) {
        pen.moveTo(sum - top, top);
        pen.lineTo(sum - bottom, bottom);
      }
      pen.stroke();
      pen.restore();
    }
    line(onto, closed, inks.ink, 1.5, inks, kind === 'over' ? [7, 4] : []);
    const middle: Point = [
      points.reduce((sum, [x]) => sum + x, 0) / points.length,
      points.reduce((sum, [, y]) => sum + y, 0) / points.length,
    ];
    const half = pen.measureText(name).width / 2 + 3;
    if (taken.take(middle[0] - half, middle[1] - HIGH / 2, middle[0] + half, middle[1] + HIGH / 2))
      words(onto, name, middle, inks.ink, inks);
  }
  for (const opening of walls.openings) line(onto, opening.map(seen), inks.ink, 1, inks, [3, 3]);
  for (const face of walls.faces) {
    const [[ax, ay], [bx, by]] = [seen(face[0]!), seen(face.at(-1)!)];
    const long = Math.max(1e-6, Math.hypot(bx - ax, by - ay));
    const [ox, oy] = [((by - ay) / long) * (WALL / 2), ((ax - bx) / long) * (WALL / 2)];
    line(
      onto,
      [
        [ax + ox, ay + oy],
        [bx + ox, by + oy],
      ],
      inks.ink,
      WALL,
      inks,
    );
  }
}
