import type { Box, Point } from '../../geometry/path.ts';
import type { Corner, Job, Wall } from '../../job/job.ts';
import type { RoomView } from '../../site/room-view.ts';
import { CORNERS, ENDS, WALLS } from '../../site/walls.ts';
import { writeLength } from '../../units/index.ts';
import { RED } from '../ink.ts';
import { formatMm } from '../number.ts';
import type { Sketch } from '../sketch.ts';
import { element } from '../svg.ts';
import { alignedDimension, fitting } from './aligned.ts';

/** The point of a wall that lies square across from another, within its ends. */
function footOn([x, y]: Point, [x0, y0]: Point, [x1, y1]: Point): Point {
  const [dx, dy] = [x1 - x0, y1 - y0];
  const share = Math.min(1, Math.max(0, ((x - x0) * dx + (y - y0) * dy) / (dx * dx + dy * dy)));
  return [x0 + share * dx, y0 + share * dy];
}

const cornerOf = ({ left, right, top, bottom }: Box, corner: Corner): Point => [
  corner.endsWith('left') ? left : right,
  corner.startsWith('near') ? bottom : top,
];

/** How far a corner of the work is from the near or far wall next to it. */
function endGapAt(corners: RoomView['corners'], from: Point, corner: Corner): number {
  const wall = corner.startsWith('near') ? 'near' : 'far';
  const [x, y] = footOn(from, corners[ENDS[wall][0]], corners[ENDS[wall][1]]);
  return Math.hypot(x - from[0], y - from[1]);
}

/** From each corner of the work square to its two walls. Readings that do not fit into their line stand in the strip between work and wall, beside it. */
export function drawClearances(
  sketch: Sketch,
  { corners }: RoomView,
  work: Box,
  { units, step }: Pick<Job, 'units' | 'step'>,
): void {
  const { size } = sketch;
  for (const corner of CORNERS) {
    const from = cornerOf(work, corner);
    const [side, end] = [corner.endsWith('left') ? -1 : 1, corner.startsWith('near') ? 1 : -1];
    for (const wall of WALLS.filter((one) => (ENDS[one] as readonly Corner[]).includes(corner)) as Wall[]) {
      const to = footOn(from, corners[ENDS[wall][0]], corners[ENDS[wall][1]]);
      const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
      if (long < step / 2) continue;
      const text = writeLength(long, units, step);
      const data = { 'data-clearance': wall, 'data-corner': corner };
      const isSide = wall === 'left' || wall === 'right';
      if (isSide && endGapAt(corners, from, corner) < 1.2 * size) {
        // The line runs along the wall at that end; its reading stands next to it, inside the room.
        sketch.path([from, to], data);
        sketch.label(text, [(from[0] + to[0]) / 2, from[1] - end * 1.1 * size], 'middle');
        continue;
      }
      if (fitting(sketch, long, [text])) {
        alignedDimension(sketch, { from, to, text, data }, 0);
        continue;
      }
      sketch.path([from, to], data);
      // A strip narrower than the lettering has its reading in the words of the drawing alone.
      if (long < 1.15 * size) continue;
      const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
      if (!isSide) sketch.label(text, [middle[0] - side * 0.5 * size, middle[1]], side < 0 ? 'start' : 'end');
      else
        sketch.label(text, [middle[0], middle[1] - end * 0.5 * size], end > 0 ? 'start' : 'end', {
          turn: -Math.PI / 2,
        });
    }
  }
}

/** On the axis, from the near and far wall to the work. */
export function drawAxisGaps(
  sketch: Sketch,
  { axis }: RoomView,
  work: Box,
  { units, step }: Pick<Job, 'units' | 'step'>,
): void {
  const { size } = sketch;
  for (const [end, from, to] of [
    ['near', axis.near[1], work.bottom],
    ['far', axis.far[1], work.top],
  ] as const) {
    const long = Math.abs(to - from);
    if (long < 1.4 * size) continue;
    sketch.add(element('path', { 'data-gap': end, d: `M0 ${formatMm(from)}V${formatMm(to)}`, stroke: 'none' }));
    const text = `${writeLength(long, units, step)} on the axis`;
    // Clear of what stands in the room there: next to the work.
    const y = to + Math.sign(from - to) * Math.min(long / 2, 1.3 * size);
    sketch.label(text, [0.5 * size, y], 'start', { size: 0.9 * size, fill: RED });
  }
}
