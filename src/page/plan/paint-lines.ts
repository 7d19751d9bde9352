import type { Look } from '../engine/look.ts';
import type { Inks } from './inks.ts';
import { drawDimension } from './paint-dimension.ts';
import { drawGuides, drawMarks } from './paint-guides.ts';
import { drawWalls } from './paint-walls.ts';
import type { Onto } from './regions.ts';
import { RoomFor } from './room-for.ts';
import { onScreen } from './strokes.ts';

/** What is drawn over the work. */
export interface Shown {
  guides: boolean;
  marks: boolean;
  numbers: boolean;
  walls: boolean;
}

/** Everything that is drawn over the work, one over the other. */
export function paintLines(onto: Onto, look: Look, inks: Inks, shown: Shown): void {
  const taken = new RoomFor();
  if (shown.walls) drawWalls(onto, look, inks, taken);
  if (shown.guides) drawGuides(onto, look, inks);
  onScreen(onto);
  if (shown.numbers) for (const dimension of look.lines.dimensions) drawDimension(onto, dimension, inks, taken);
  if (shown.marks) drawMarks(onto, look, inks, taken);
}
