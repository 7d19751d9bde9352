import type { Point } from '../../geometry/path.ts';

/** A turn or a mirror image about the origin: x′ = xx·x + xy·y, y′ = yx·x + yy·y. */
export interface Linear {
  xx: number;
  xy: number;
  yx: number;
  yy: number;
}

/** A move of the plane that keeps lengths: first `linear`, then `shift`, mm. */
export interface Isometry {
  linear: Linear;
  shift: Point;
}

export const STILL: Linear = { xx: 1, xy: 0, yx: 0, yy: 1 };

export const turnBy = (angle: number): Linear => {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { xx: c, xy: -s, yx: s, yy: c };
};

/** Mirror image about the line through the origin at this angle. */
export const mirrorAbout = (angle: number): Linear => {
  const [c, s] = [Math.cos(2 * angle), Math.sin(2 * angle)];
  return { xx: c, xy: s, yx: s, yy: -c };
};

/** Whether it shows the other side of the page. */
export const reflects = ({ xx, xy, yx, yy }: Linear): boolean => xx * yy - xy * yx < 0;

/** Clockwise angle of a turn (y down), radians, −π to π. */
export const angleOf = ({ xx, xy, yx, yy }: Linear): number => Math.atan2(yx - xy, xx + yy);

/** Direction of the line that a mirror image leaves where it is, radians. */
export const axisAngle = ({ xx, xy, yx, yy }: Linear): number => Math.atan2(yx + xy, xx - yy) / 2;

export const applyLinear = ({ xx, xy, yx, yy }: Linear, [x, y]: Point): Point => [xx * x + xy * y, yx * x + yy * y];

export const apply = ({ linear, shift }: Isometry, point: Point): Point => {
  const [x, y] = applyLinear(linear, point);
  return [x + shift[0], y + shift[1]];
};
