import type { Frame } from '../read/outline.ts';

/** A polygon as x, y, x, y …, and the frame round it. */
export interface Polygon {
  points: readonly number[];
  frame: Frame;
}

/** The least distance between any two polygons, mm, as far as it is less than `within`; `within` where all lie farther apart. */
export function leastGap(polygons: readonly Polygon[], within: number): { gap: number; one: number; other: number } {
  const order = polygons.map((_, index) => index).sort((a, b) => polygons[a]!.frame.left - polygons[b]!.frame.left);
  let found = { gap: within, one: -1, other: -1 };
  for (let i = 0; i < order.length; i++) {
    const one = polygons[order[i]!]!;
    for (let j = i + 1; j < order.length; j++) {
      const other = polygons[order[j]!]!;
      // All that follow begin farther right still.
      if (other.frame.left - one.frame.right > found.gap) break;
      if (other.frame.top - one.frame.bottom > found.gap || one.frame.top - other.frame.bottom > found.gap) continue;
      const gap = gapBetween(one, other, found.gap);
      if (gap < found.gap) found = { gap, one: order[i]!, other: order[j]! };
    }
  }
  return found;
}

/** Distance between the sides of two polygons, mm; 0 where sides cross. Sides farther apart than `within` are passed over. */
function gapBetween(one: Polygon, other: Polygon, within: number): number {
  const mine = sidesNear(one.points, other.frame, within);
  const theirs = sidesNear(other.points, one.frame, within);
  let least = within;
  for (let i = 0; i < mine.length; i += 4) {
    for (let j = 0; j < theirs.length; j += 4) {
      const gap = between(
        mine[i]!, mine[i + 1]!, mine[i + 2]!, mine[i + 3]!,
        theirs[j]!, theirs[j + 1]!, theirs[j + 2]!, theirs[j + 3]!,
      ); // biome-ignore format: four numbers a side
      if (gap < least) least = gap;
    }
  }
  return least;
}

/** The sides that come within a distance of a frame, as x, y, x, y each. */
function sidesNear(points: readonly number[], frame: Frame, within: number): number[] {
  const near: number[] = [];
  for (let i = 0, j = points.length - 2; i < points.length; j = i, i += 2) {
    const [ax, ay, bx, by] = [points[j]!, points[j + 1]!, points[i]!, points[i + 1]!];
    const out =
      Math.max(ax, bx) < frame.left - within ||
      Math.min(ax, bx) > frame.right + within ||
      Math.max(ay, by) < frame.top - within ||
      Math.min(ay, by) > frame.bottom + within;
    if (!out) near.push(ax, ay, bx, by);
  }
  return near;
}

function between(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  dx: number,
  dy: number,
): number {
  const side = (px: number, py: number, qx: number, qy: number, x: number, y: number) =>
    (qx - px) * (y - py) - (qy - py) * (x - px);
  const parted = side(ax, ay, bx, by, cx, cy) * side(ax, ay, bx, by, dx, dy);
  const crossed = side(cx, cy, dx, dy, ax, ay) * side(cx, cy, dx, dy, bx, by);
  if (parted < 0 && crossed < 0) return 0;
  return Math.min(
    toSide(ax, ay, cx, cy, dx, dy),
    toSide(bx, by, cx, cy, dx, dy),
    toSide(cx, cy, ax, ay, bx, by),
    toSide(dx, dy, ax, ay, bx, by),
  );
}

function toSide(x: number, y: number, ax: number, ay: number, bx: number, by: number): number {
  const [ux, uy] = [bx - ax, by - ay];
  const long = ux * ux + uy * uy;
  const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * ux + (y - ay) * uy) / long));
  const [px, py] = [ax + t * ux - x, ay + t * uy - y];
  return Math.sqrt(px * px + py * py);
}
