import type { Box, Point } from '../geometry/path.ts';
import { clearOf, type HalfPlane, halfPlanesOf, largestBox, withinOf } from './half-planes.ts';
import { convexPieces, hullOf, pocketsOf } from './polygon.ts';

/** What overlaps by less, mm, touches. */
const TOUCH = 1e-4;

/** Whether the inside of an upright box and that of a convex polygon meet. */
function overlaps(box: Box, polygon: Point[], planes: HalfPlane[]): boolean {
  const xs = polygon.map(([x]) => x);
  const ys = polygon.map(([, y]) => y);
  if (box.right <= Math.min(...xs) + TOUCH || box.left >= Math.max(...xs) - TOUCH) return false;
  if (box.bottom <= Math.min(...ys) + TOUCH || box.top >= Math.max(...ys) - TOUCH) return false;
  return planes.every(({ nx, ny, reach }) => {
    const nearest = nx * (nx > 0 ? box.left : box.right) + ny * (ny > 0 ? box.top : box.bottom);
    return nearest < reach - TOUCH;
  });
}

interface Open {
  /** Pieces that the box lies beyond already. */
  cleared: number[];
  planes: HalfPlane[];
  box: Box;
}

const areaOf = ({ left, right, top, bottom }: Box): number => (right - left) * (bottom - top);

/**
 * The largest upright box inside a room and clear of obstacles, exactly. Undefined where none has area.
 *
 * The room is the hull of its corners less its recesses; recesses and obstacles are cut into convex pieces. A box that does not meet a convex
 * piece lies wholly beyond one of its sides or beside it, so each piece in the way is one choice among half-planes. The choices are gone
 * through best first: a choice only makes the box smaller, so the first box that meets nothing is the largest.
 * @param room      corners of a simple polygon, mm, convex or not
 * @param obstacles simple polygons, mm; parts outside the room do no harm
 * @param middle    the box is centred on this upright line
 */
export function largestClear(room: Point[], obstacles: Point[][], middle?: number): Box | undefined {
  const pieces = [...pocketsOf(room), ...obstacles].flatMap(convexPieces).map((polygon) => ({
    polygon,
    inside: halfPlanesOf(polygon),
    beyond: clearOf(polygon),
  }));
  const open: Open[] = [];
  const add = (planes: HalfPlane[], cleared: number[]): void => {
    const box = largestBox(planes, middle);
    if (!box) return;
    const at = open.findIndex((other) => areaOf(other.box) < areaOf(box));
    open.splice(at < 0 ? open.length : at, 0, { planes, box, cleared });
  };
  add(withinOf(hullOf(room)), []);
  for (;;) {
    const next = open.shift();
    if (!next) return undefined;
    const inTheWay = pieces.findIndex(
      ({ polygon, inside }, at) => !next.cleared.includes(at) && overlaps(next.box, polygon, inside),
    );
    if (inTheWay < 0) return next.box;
    for (const plane of pieces[inTheWay]!.beyond) add([...next.planes, plane], [...next.cleared, inTheWay]);
  }
}

/** Whether an upright box lies inside the room and clear of the obstacles. */
export function isClear(box: Box, room: Point[], obstacles: Point[][]): boolean {
  const within = halfPlanesOf(hullOf(room)).every(
    ({ nx, ny, reach }) => nx * (nx > 0 ? box.right : box.left) + ny * (ny > 0 ? box.bottom : box.top) <= reach + TOUCH,
  );
  return (
    within &&
    [...pocketsOf(room), ...obstacles]
      .flatMap(convexPieces)
      .every((polygon) => !overlaps(box, polygon, halfPlanesOf(polygon)))
  );
}
