import type { Point } from '../geometry/path.ts';
import type { Size } from '../job/job.ts';

/**
 * The cut that takes the corner off a hem of one fold: straight through the crossing of the two fold lines, at 45 degrees, so that it
 * meets both edges two hems from the corner. Turned in, its two halves lie on one line. Exact for folds without thickness.
 * @returns both ends of the cut at each corner, mm about the centre of the cloth, near left first and onward clockwise as seen
 */
export function mitreCuts({ across, along }: Size, hem: number): [Point, Point][] {
  const [x, y] = [across / 2, along / 2];
  const corner = (side: -1 | 1, end: -1 | 1): [Point, Point] => [
    [side * (x + hem), end * (y - hem)],
    [side * (x - hem), end * (y + hem)],
  ];
  return [corner(-1, 1), corner(-1, -1), corner(1, -1), corner(1, 1)];
}
