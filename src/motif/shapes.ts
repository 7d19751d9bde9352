import type { Point } from '../geometry/path.ts';
import type { Pen } from './motif.ts';

/** A closed polygon through the points given. */
export function polygon(pen: Pen, points: readonly Point[]): void {
  points.forEach(([x, y], i) => {
    if (i === 0) pen.moveTo(x, y);
    else pen.lineTo(x, y);
  });
  pen.close();
}

/** A rectangle about its centre, mm. */
export const rectangle = (pen: Pen, cx: number, cy: number, width: number, height: number): void =>
  polygon(pen, [
    [cx - width / 2, cy - height / 2],
    [cx + width / 2, cy - height / 2],
    [cx + width / 2, cy + height / 2],
    [cx - width / 2, cy + height / 2],
  ]);

/**
 * Goes on along an ellipse from angle `from` to angle `to`, as cubics of a quarter turn at most. The pen must stand at `from`.
 * Largest radial error of a quarter: 0.0273 %.
 * @param from,to radians, measured from +x towards +y (clockwise on the page); `to` may be less than `from`
 */
export function arc(pen: Pen, cx: number, cy: number, rx: number, ry: number, from: number, to: number): void {
  const count = Math.max(1, Math.ceil(Math.abs(to - from) / (Math.PI / 2) - 1e-9));
  const step = (to - from) / count;
  const k = (4 / 3) * Math.tan(step / 4);
  for (let i = 0; i < count; i++) {
    const [a, b] = [from + i * step, from + (i + 1) * step];
    const [ca, sa, cb, sb] = [Math.cos(a), Math.sin(a), Math.cos(b), Math.sin(b)];
    pen.curveTo(
      cx + rx * (ca - k * sa),
      cy + ry * (sa + k * ca),
      cx + rx * (cb + k * sb),
      cy + ry * (sb - k * cb),
      cx + rx * cb,
      cy + ry * sb,
    );
  }
}

export function ellipse(pen: Pen, cx: number, cy: number, rx: number, ry: number): void {
  pen.moveTo(cx + rx, cy);
  arc(pen, cx, cy, rx, ry, 0, 2 * Math.PI);
  pen.close();
}

export const circle = (pen: Pen, cx: number, cy: number, r: number): void => ellipse(pen, cx, cy, r, r);

/** A regular polygon of `sides` corners on a circle of radius `r`, the first corner at angle `first` (radians from +x). */
export const regularPolygon = (
  pen: Pen,
  cx: number,
  cy: number,
  r: number,
  sides: number,
  first = -Math.PI / 2,
): void =>
  polygon(
    pen,
    Array.from({ length: sides }, (_, i): Point => {
      const a = first + (2 * Math.PI * i) / sides;
      return [cx + r * Math.cos(a), cy + r * Math.sin(a)];
    }),
  );

/**
 * The corners of a polygon whose sides lie further in by `by` mm, one number for all sides or one for each (the first for the
 * side from the first corner to the second). It has as many corners, so `by` must leave every side some length.
 */
export function inset(points: readonly Point[], by: number | readonly number[]): Point[] {
  const count = points.length;
  const next = (i: number): Point => points[(i + 1) % count]!;
  const twice = points.reduce((sum, [x, y], i) => sum + x * next(i)[1] - next(i)[0] * y, 0);
  // Each side as n · p = d, n pointing in.
  const sides = points.map(([x, y], i) => {
    const length = Math.hypot(next(i)[0] - x, next(i)[1] - y) * Math.sign(twice);
    const n: Point = [(y - next(i)[1]) / length, (next(i)[0] - x) / length];
    return { n, d: n[0] * x + n[1] * y + (typeof by === 'number' ? by : by[i]!) };
  });
  return sides.map((side, i): Point => {
    const before = sides[(i + count - 1) % count]!;
    const cross = before.n[0] * side.n[1] - before.n[1] * side.n[0];
    return [
      (before.d * side.n[1] - side.d * before.n[1]) / cross,
      (before.n[0] * side.d - side.n[0] * before.d) / cross,
    ];
  });
}

/** A pen whose points are all moved first: stretched, turned, mirrored or shifted. The move must keep straight lines straight. */
export const movedPen = (pen: Pen, move: (point: Point) => Point): Pen => ({
  part: pen.part,
  moveTo: (x, y) => pen.moveTo(...move([x, y])),
  lineTo: (x, y) => pen.lineTo(...move([x, y])),
  curveTo: (x1, y1, x2, y2, x, y) => pen.curveTo(...move([x1, y1]), ...move([x2, y2]), ...move([x, y])),
  close: pen.close,
});

/** A band of even width along a line with corners: mitred at the corners, cut square at both ends. Corners must be less sharp than a hairpin. */
export function band(pen: Pen, line: readonly Point[], width: number): void {
  const normals = line.slice(1).map(([x, y], i): Point => {
    const [dx, dy] = [x - line[i]![0], y - line[i]![1]];
    const length = Math.hypot(dx, dy);
    return [-dy / length, dx / length];
  });
  const offset = (by: number): Point[] =>
    line.map(([x, y], i): Point => {
      const [before, after] = [normals[Math.max(0, i - 1)]!, normals[Math.min(i, normals.length - 1)]!];
      const scale = by / (1 + before[0] * after[0] + before[1] * after[1]);
      return [x + scale * (before[0] + after[0]), y + scale * (before[1] + after[1])];
    });
  polygon(pen, [...offset(width / 2), ...offset(-width / 2).reverse()]);
}

/**
 * A petal on a ray from the origin: pointed at `from` mm, round at its outer end, which reaches to `to` mm.
 * @param angle of the ray, radians
 * @param width of the round end, less than the petal is long
 */
export function petal(pen: Pen, angle: number, from: number, to: number, width: number): void {
  const r = width / 2;
  const middle = to - r;
  // The flanks touch the round end, a quarter turn and this angle away from the ray.
  const lean = Math.asin(r / (middle - from));
  const [x, y] = [middle * Math.cos(angle), middle * Math.sin(angle)];
  const [first, last] = [angle - Math.PI / 2 - lean, angle + Math.PI / 2 + lean];
  pen.moveTo(from * Math.cos(angle), from * Math.sin(angle));
  pen.lineTo(x + r * Math.cos(first), y + r * Math.sin(first));
  arc(pen, x, y, r, r, first, last);
  pen.close();
}

/** A leaf between two points, pointed at both, its sides arcs of circles. `width` is less than the leaf is long. */
export function leaf(pen: Pen, [x0, y0]: Point, [x1, y1]: Point, width: number): void {
  const length = Math.hypot(x1 - x0, y1 - y0);
  const radius = (length * length + width * width) / (4 * width);
  const half = Math.asin(length / (2 * radius));
  const along = Math.atan2(y1 - y0, x1 - x0);
  const [nx, ny] = [(y0 - y1) / length, (x1 - x0) / length];
  const away = radius - width / 2;
  const [mx, my] = [(x0 + x1) / 2, (y0 + y1) / 2];
  const quarter = Math.PI / 2;
  pen.moveTo(x0, y0);
  arc(pen, mx + away * nx, my + away * ny, radius, radius, along - quarter - half, along - quarter + half);
  arc(pen, mx - away * nx, my - away * ny, radius, radius, along + quarter - half, along + quarter + half);
  pen.close();
}

/**
 * A round-ended blade of a fan about the origin: its flanks lie half a rib inside two rays, its foot is an arc, its round end touches the flanks.
 * @param axis,half the middle between the rays, and from there to either of them, radians; `half` is less than a quarter turn
 * @param from,to where foot and end lie on the axis, mm
 */
export function blade(pen: Pen, axis: number, half: number, from: number, to: number, rib: number): void {
  const middle = (to + rib / 2) / (1 + Math.sin(half));
  const round = to - middle;
  const foot = half - Math.asin(rib / 2 / from);
  const quarter = Math.PI / 2 + half;
  const [x, y] = [middle * Math.cos(axis), middle * Math.sin(axis)];
  pen.moveTo(from * Math.cos(axis - foot), from * Math.sin(axis - foot));
  pen.lineTo(x + round * Math.cos(axis - quarter), y + round * Math.sin(axis - quarter));
  arc(pen, x, y, round, round, axis - quarter, axis + quarter);
  pen.lineTo(from * Math.cos(axis + foot), from * Math.sin(axis + foot));
  arc(pen, 0, 0, from, from, axis + foot, axis - foot);
  pen.close();
}

/** A bar of a ring about the origin, between two rays, half a rib inside either of them: `blade` with both ends on circles. */
export function ringBar(pen: Pen, axis: number, half: number, inner: number, outer: number, rib: number): void {
  const [near, far] = [half - Math.asin(rib / 2 / inner), half - Math.asin(rib / 2 / outer)];
  pen.moveTo(outer * Math.cos(axis - far), outer * Math.sin(axis - far));
  arc(pen, 0, 0, outer, outer, axis - far, axis + far);
  pen.lineTo(inner * Math.cos(axis + near), inner * Math.sin(axis + near));
  arc(pen, 0, 0, inner, inner, axis + near, axis - near);
  pen.close();
}

/** Where the line through the first two points meets the line through the others. */
export function crossing([x0, y0]: Point, [x1, y1]: Point, [x2, y2]: Point, [x3, y3]: Point): Point {
  const [ax, ay, bx, by] = [x1 - x0, y1 - y0, x3 - x2, y3 - y2];
  const t = ((x2 - x0) * by - (y2 - y0) * bx) / (ax * by - ay * bx);
  return [x0 + t * ax, y0 + t * ay];
}

/** Where the line from a point inside a circle about the origin through another point leaves it. */
export function onCircle([x0, y0]: Point, [x1, y1]: Point, r: number): Point {
  const [dx, dy] = [x1 - x0, y1 - y0];
  const [a, b, c] = [dx * dx + dy * dy, x0 * dx + y0 * dy, x0 * x0 + y0 * y0 - r * r];
  const t = (-b + Math.sqrt(b * b - a * c)) / a;
  return [x0 + t * dx, y0 + t * dy];
}
