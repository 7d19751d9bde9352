import type { Outline } from '../read/outline.ts';
import { flat } from './flat.ts';

/** Chords this close to curves tell what lies inside, mm. */
const FINE = 0.05;

function holds(points: ArrayLike<number>, x: number, y: number): boolean {
  let inside = false;
  for (let i = 0, j = points.length - 2; i < points.length; j = i, i += 2) {
    const [x0, y0, x1, y1] = [points[i]!, points[i + 1]!, points[j]!, points[j + 1]!];
    if (y0 > y !== y1 > y && x < ((x1 - x0) * (y - y0)) / (y1 - y0) + x0) inside = !inside;
  }
  return inside;
}

/** Whether an outline lies within another and runs the other way round. */
function isHole(outline: Outline, of: Outline): boolean {
  if (outline.area * of.area >= 0) return false;
  const [a, b] = [outline.frame, of.frame];
  if (a.left < b.left || a.right > b.right || a.top < b.top || a.bottom > b.bottom) return false;
  return holds(flat(of, FINE), outline.corners[0]!, outline.corners[1]!);
}

/** What outlines cover, mm²: a hole follows the outline it lies in, as plans are written. */
export function coveredArea(outlines: readonly Outline[]): number {
  let sum = 0;
  let around: Outline | undefined;
  for (const outline of outlines) {
    if (around && isHole(outline, around)) sum -= Math.abs(outline.area);
    else {
      sum += Math.abs(outline.area);
      around = outline;
    }
  }
  return sum;
}
