import type { Point } from '../../geometry/path.ts';
import type { Job, Wall } from '../../job/job.ts';
import type { RoomView } from '../../site/room-view.ts';
import { ENDS, WALLS } from '../../site/walls.ts';
import { writeLength } from '../../units/index.ts';
import type { Sketch } from '../sketch.ts';
import { alignedDimension } from './aligned.ts';

const far = ([x0, y0]: Point, [x1, y1]: Point): number => Math.hypot(x1 - x0, y1 - y0);

/** The wall in parts, from its left or near corner: to the casing, across the opening, on to the other corner. */
function casingParts(view: RoomView, wall: Wall): { from: Point; to: Point; what: string }[] {
  const casing = view.openings.find((opening) => opening.wall === wall)?.casing;
  if (!casing) return [];
  const [from, to] = ENDS[wall].map((corner) => view.corners[corner]) as [Point, Point];
  return [
    { from, to: casing[0], what: '' },
    { from: casing[0], to: casing[1], what: 'opening ' },
    { from: casing[1], to, what: '' },
  ].filter((part) => far(part.from, part.to) > 0.5);
}

/**
 * Outside the walls: casings next to the wall, then where the axis meets it, then the whole of it.
 * @param start how far out the first of them lies, as a share of the size
 */
export function drawWallDimensions(
  sketch: Sketch,
  view: RoomView,
  job: Pick<Job, 'units' | 'step'>,
  start = 2.1,
): void {
  const { size } = sketch;
  const length = (mm: number): string => writeLength(mm, job.units, job.step);
  for (const wall of WALLS) {
    const [from, to] = ENDS[wall].map((corner) => view.corners[corner]) as [Point, Point];
    // The near wall runs to the right and the right wall upwards, so outside is to their right; the other two the other way.
    const out = wall === 'near' || wall === 'right' ? 1 : -1;
    let level = start * size;
    const tell = (parts: { from: Point; to: Point; text: string; brief: string[]; data: string }[]) => {
      for (const { data, ...part } of parts)
        alignedDimension(
          sketch,
          { ...part, data: { 'data-along': wall, 'data-part': data }, clearOf: 0 },
          out * level,
          0.95 * size,
        );
      if (parts.length > 0) level += 1.9 * size;
    };
    tell(
      casingParts(view, wall).map((part) => {
        const said = length(far(part.from, part.to));
        return {
          from: part.from,
          to: part.to,
          text: `${part.what}${said}`,
          brief: [said],
          data: part.what.trim() || 'beside',
        };
      }),
    );
    if (wall === 'near' || wall === 'far') {
      const meets = view.axis[wall];
      tell(
        [
          [from, meets],
          [meets, to],
        ].map(([a, b]) => {
          const said = length(far(a!, b!));
          return { from: a!, to: b!, text: `${said} to the axis`, brief: [said], data: 'axis' };
        }),
      );
    }
    const whole = length(far(from, to));
    tell([{ from, to, text: `${wall} wall ${whole}`, brief: [whole], data: 'wall' }]);
  }
}
