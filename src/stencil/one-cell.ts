import type { Box, Point } from '../geometry/path.ts';
import type { Area } from './area.ts';
import type { Guides } from './guide.ts';
import { makePatch, type Placed, placedIn } from './patch.ts';
import { boxOfPlaced, reachOf, single } from './placed.ts';
import type { ShapeBook } from './shape.ts';

/** Pieces that stand once, such as a medallion or a line of lettering, in a cell of their own. */
export function oneCell(
  { family, name, place, guides }: { family: Area['family']; name: string; place: string; guides: Guides },
  placed: Placed[],
  { left, top, right, bottom }: Box,
): Area {
  return { family, place, name, guides, patch: makePatch(single(left, right), single(top, bottom), placed) };
}

const QUARTERS = ['right near', 'left near', 'left far', 'right far'] as const;

/** Nearer than this to the middle, mm, a piece belongs to no quarter. */
const MIDDLE = 1e-4;

/** Which quarter round a middle a piece lies in; those on a centre line go with the next one clockwise, so that quarter turns agree. */
function quarterOf([x, y]: Point, [cx, cy]: Point): number {
  const [dx, dy] = [x - cx, y - cy];
  if (Math.abs(dx) < MIDDLE && Math.abs(dy) < MIDDLE) return 0;
  const angle = Math.atan2(dy, dx) + 1e-6;
  return Math.floor(angle / (Math.PI / 2) + 4) % 4;
}

/** An area of one cell in quarters; what stands in the very middle goes with the first. */
function quartered(area: Area, book: ShapeBook): Area[] {
  const { x, y } = area.patch;
  const middle: Point = [x.start + x.pitch / 2, y.start + y.pitch / 2];
  const placed = placedIn(area.patch);
  return QUARTERS.flatMap((place, quarter): Area[] => {
    const inside = placed.filter(({ centre }) => quarterOf(centre, middle) === quarter);
    return inside.length === 0 ? [] : [oneCell({ ...area, place }, inside, reachOf(inside, book))];
  });
}

/** A line of lettering in parts that are no longer than `most` mm, from left to right. */
function inParts(area: Area, most: number, book: ShapeBook): Area[] {
  const parts: Placed[][] = [];
  let from = Number.NEGATIVE_INFINITY;
  const placed = placedIn(area.patch)
    .map((piece) => ({ piece, box: boxOfPlaced(piece, book) }))
    .sort((a, b) => a.box.left - b.box.left);
  for (const { piece, box } of placed) {
    if (parts.length > 0 && box.right - from <= most) parts.at(-1)!.push(piece);
    else {
      parts.push([piece]);
      from = box.left;
    }
  }
  return parts.map((inside, at) =>
    oneCell({ ...area, place: `part ${at + 1} of ${parts.length}` }, inside, reachOf(inside, book)),
  );
}

/** An area of one cell that no sheet holds, in smaller ones; `most` is the longest a sheet's windows may reach, mm. */
export function divided(area: Area, most: number, book: ShapeBook): Area[] {
  if (area.patch.x.repeats || area.patch.y.repeats) return [];
  return area.family === 'lettering' ? inParts(area, most, book) : quartered(area, book);
}
