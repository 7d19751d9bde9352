import { writeTape } from '../../units/index.ts';
import type { Look } from '../engine/look.ts';
import type { Inks } from './inks.ts';
import type { Onto } from './regions.ts';
import type { RoomFor } from './room-for.ts';
import { HIGH, line, onScreen, words } from './strokes.ts';
import { toScreen } from './view.ts';

/** Chain line: long and short strokes. */
const CHAIN = [14, 3, 3, 3];

export function drawGuides(onto: Onto, { lines: { guides } }: Look, inks: Inks): void {
  onScreen(onto);
  for (const { name, datum, end } of guides) {
    const points = [toScreen(onto.view, datum), toScreen(onto.view, end)];
    line(onto, points, inks.chalk, 1.5, inks, name === 'axis' || name === 'axis-in-room' ? CHAIN : []);
  }
}

/** A tick at every mark, and what the tape reads there where there is room for it. */
export function drawMarks(onto: Onto, { lines: { guides }, job }: Look, inks: Inks, taken: RoomFor): void {
  onScreen(onto);
  const { pen, view, size } = onto;
  for (const { datum, end, marks } of guides) {
    const [a, b] = [toScreen(view, datum), toScreen(view, end)];
    const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (long < 1) continue;
    const [dx, dy] = [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
    const isLevel = Math.abs(dx) > Math.abs(dy);
    for (const { at, reads } of marks) {
      const [x, y] = toScreen(view, at);
      if (x < -60 || x > size.width + 60 || y < -60 || y > size.height + 60) continue;
      line(
        onto,
        [
          [x - 5 * dy, y + 5 * dx],
          [x + 5 * dy, y - 5 * dx],
        ],
        inks.chalk,
        1.5,
        inks,
      );
      const text = writeTape(reads, job.units, job.step);
      const wide = pen.measureText(text).width;
      const half = HIGH / 2 - 1;
      const [left, top, right, bottom] = isLevel
        ? [x - half, y - 9 - wide, x + half, y - 9]
        : [x + 9, y - half, x + 9 + wide, y + half];
      if (!taken.take(left, top, right, bottom)) continue;
      if (isLevel) words(onto, text, [x, y - 9], inks.chalk, inks, { turned: true, align: 'left' });
      else words(onto, text, [x + 9, y], inks.chalk, inks, { align: 'left' });
    }
  }
}
