import type { Box, Point } from '../../geometry/path.ts';
import type { Job } from '../../job/job.ts';
import type { RoomView } from '../../site/room-view.ts';
import { ENDS } from '../../site/walls.ts';
import { writeLength } from '../../units/index.ts';
import { formatMm } from '../number.ts';
import type { Sketch } from '../sketch.ts';
import { element } from '../svg.ts';

/** What shows at each casing of the two openings that the work lies between: how far the field runs past it, or stops short of it. */
export function drawCasings(
  sketch: Sketch,
  { openings, corners }: RoomView,
  field: Box,
  { units, step }: Pick<Job, 'units' | 'step'>,
): void {
  const { size } = sketch;
  const small = 0.72 * size;
  for (const { wall, casing } of openings) {
    if (wall !== 'near' && wall !== 'far') continue;
    const out = wall === 'near' ? 1 : -1;
    for (const [at, side] of [
      [0, -1],
      [1, 1],
    ] as const) {
      const [x, y]: Point = casing[at];
      const edge = side < 0 ? field.left : field.right;
      const past = side * (edge - x);
      const data = { 'data-casing': wall, 'data-edge': side < 0 ? 'left' : 'right' };
      sketch.add(element('path', { ...data, d: `M${formatMm(x)} ${formatMm(y)}H${formatMm(edge)}`, stroke: 'none' }), [
        edge,
        y,
      ]);
      const text =
        Math.abs(past) < step / 2
          ? 'field ends here'
          : `field ${writeLength(Math.abs(past), units, step)} ${past > 0 ? 'past' : 'short'}`;
      const [cornerX] = corners[ENDS[wall][at]];
      if (sketch.width(text, small) + 0.8 * size > Math.abs(cornerX - x)) continue;
      const beside = y + out * 1.2 * size;
      sketch.label(text, [x + side * 0.4 * size, beside], side < 0 ? 'end' : 'start', { size: small });
    }
  }
}
