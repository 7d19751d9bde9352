import { emptyBox, growBox } from '../geometry/measure.ts';
import type { Box, Point } from '../geometry/path.ts';

/** The closest approach of two outlines: how far apart they are there, and the middle of that place. Lengths in mm. */
export interface Gap {
  width: number;
  x: number;
  y: number;
}

export function polygonBox(polygon: Point[]): Box {
  const box = emptyBox();
  for (const [x, y] of polygon) growBox(box, x, y);
  return box;
}

/** How far two boxes are apart, mm; 0 where they overlap. */
function boxGap(a: Box, b: Box): number {
  const dx = Math.max(0, a.left - b.right, b.left - a.right);
  const dy = Math.max(0, a.top - b.bottom, b.top - a.bottom);
  return Math.sqrt(dx * dx + dy * dy);
}

const side = (ax: number, ay: number, bx: number, by: number, px: number, py: number): number =>
  (bx - ax) * (py - ay) - (by - ay) * (px - ax);

/** Closest approach of two closed polygons that do not hold each other, `b` shifted by `dx`, `dy`; 0 wide where they cross or touch. */
export function gapBetween(a: Point[], b: Point[], dx = 0, dy = 0): Gap {
  let best = Infinity;
  let [x, y] = [0, 0];
  const near = (px: number, py: number, sx: number, sy: number, ex: number, ey: number) => {
    const [ux, uy] = [ex - sx, ey - sy];
    const long = ux * ux + uy * uy;
    const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((px - sx) * ux + (py - sy) * uy) / long));
    const [qx, qy] = [sx + t * ux, sy + t * uy];
    const far = (qx - px) * (qx - px) + (qy - py) * (qy - py);
    if (far < best) {
      best = far;
      x = (px + qx) / 2;
      y = (py + qy) / 2;
    }
  };
  const moved = b.map(([px, py]): Point => [px + dx, py + dy]);
  const box = polygonBox(moved);
  let [ax, ay] = a[a.length - 1]!;
  for (const [bx, by] of a) {
    const [left, right, top, bottom] = [Math.min(ax, bx), Math.max(ax, bx), Math.min(ay, by), Math.max(ay, by)];
    const wide = Math.max(0, box.left - right, left - box.right);
    const high = Math.max(0, box.top - bottom, top - box.bottom);
    if (wide * wide + high * high < best) {
      let [cx, cy] = moved[moved.length - 1]!;
      for (const [ex, ey] of moved) {
        const across = Math.max(0, left - Math.max(cx, ex), Math.min(cx, ex) - right);
        const down = Math.max(0, top - Math.max(cy, ey), Math.min(cy, ey) - bottom);
        if (across * across + down * down < best) {
          near(ax, ay, cx, cy, ex, ey);
          near(bx, by, cx, cy, ex, ey);
          near(cx, cy, ax, ay, bx, by);
          near(ex, ey, ax, ay, bx, by);
          const apart = side(ax, ay, bx, by, cx, cy) * side(ax, ay, bx, by, ex, ey);
          const across2 = side(cx, cy, ex, ey, ax, ay) * side(cx, cy, ex, ey, bx, by);
          if (apart < 0 && across2 < 0) return { width: 0, x: (ax + bx + cx + ex) / 4, y: (ay + by + cy + ey) / 4 };
        }
        [cx, cy] = [ex, ey];
      }
    }
    [ax, ay] = [bx, by];
  }
  return { width: Math.sqrt(best), x, y };
}

type Segment = readonly [ax: number, ay: number, bx: number, by: number];

/** The sides of a closed polygon that come within `limit` of a box. */
function sidesNear(polygon: Point[], box: Box, limit: number, dx: number, dy: number): Segment[] {
  const found: Segment[] = [];
  const [left, right] = [box.left - limit, box.right + limit];
  const [top, bottom] = [box.top - limit, box.bottom + limit];
  let [ax, ay] = polygon[polygon.length - 1]!;
  for (const [bx, by] of polygon) {
    const clear =
      Math.max(ax, bx) + dx < left ||
      Math.min(ax, bx) + dx > right ||
      Math.max(ay, by) + dy < top ||
      Math.min(ay, by) + dy > bottom;
    if (!clear) found.push([ax + dx, ay + dy, bx + dx, by + dy]);
    [ax, ay] = [bx, by];
  }
  return found;
}

/** Square of the distance of a point from a side. */
function farFrom(px: number, py: number, [ax, ay, bx, by]: Segment): number {
  const [ux, uy] = [bx - ax, by - ay];
  const long = ux * ux + uy * uy;
  const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((px - ax) * ux + (py - ay) * uy) / long));
  const [qx, qy] = [ax + t * ux - px, ay + t * uy - py];
  return qx * qx + qy * qy;
}

function cross([ax, ay, bx, by]: Segment, [cx, cy, ex, ey]: Segment): boolean {
  const apart = side(ax, ay, bx, by, cx, cy) * side(ax, ay, bx, by, ex, ey);
  return apart < 0 && side(cx, cy, ex, ey, ax, ay) * side(cx, cy, ex, ey, bx, by) < 0;
}

/** Whether two closed polygons that do not hold each other come closer than `limit`, `b` shifted by `dx`, `dy`. As `gapBetween`, sooner. */
export function comesWithin(
  limit: number,
  a: { polygon: Point[]; box: Box },
  b: { polygon: Point[]; box: Box },
  dx = 0,
  dy = 0,
): boolean {
  const moved: Box = {
    left: b.box.left + dx,
    right: b.box.right + dx,
    top: b.box.top + dy,
    bottom: b.box.bottom + dy,
  };
  if (boxGap(a.box, moved) >= limit) return false;
  const ones = sidesNear(a.polygon, moved, limit, 0, 0);
  const others = sidesNear(b.polygon, a.box, limit, dx, dy);
  const square = limit * limit;
  return ones.some((one) => {
    const [ax, ay, bx, by] = one;
    const [left, right] = [Math.min(ax, bx) - limit, Math.max(ax, bx) + limit];
    const [top, bottom] = [Math.min(ay, by) - limit, Math.max(ay, by) + limit];
    return others.some((other) => {
      const [cx, cy, ex, ey] = other;
      if ((cx < left && ex < left) || (cx > right && ex > right)) return false;
      if ((cy < top && ey < top) || (cy > bottom && ey > bottom)) return false;
      return (
        farFrom(ax, ay, other) < square ||
        farFrom(bx, by, other) < square ||
        farFrom(cx, cy, one) < square ||
        farFrom(ex, ey, one) < square ||
        cross(one, other)
      );
    });
  });
}
