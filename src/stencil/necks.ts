import { isInside } from '../geometry/inside.ts';
import type { Point } from '../geometry/path.ts';
import { type Clipper, grown, middleOf, outers, type Paths64, piecePaths, squareMm, UNITS_PER_MM } from './clip.ts';
import { type Gap, gapBetween } from './gap.ts';
import type { Opening } from './opening.ts';

/** Pieces of less area than this are crumbs, mm². */
const SLIVER = 0.05;
/** Widths are found to this, mm. */
const FINE = 0.002;

const toPoints = (path: Paths64[number]): Point[] =>
  path.map(({ x, y }): Point => [x / UNITS_PER_MM, y / UNITS_PER_MM]);

/** The middle of the longest level stretch through a polygon's box: a point inside even a bent shape. */
function somewhereInside(path: Paths64[number], clipper: Clipper): Point {
  const points = toPoints(path);
  const middle = middleOf(clipper, path);
  if (isInside(points, middle)) return middle;
  const ys = points.map(([, y]) => y);
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  for (let n = 1; n < 32; n++) {
    const y = low + ((high - low) * n) / 32 + 1e-7;
    const xs = points.map(([x]) => x);
    for (let k = 1; k < 32; k++) {
      const at: Point = [Math.min(...xs) + ((Math.max(...xs) - Math.min(...xs)) * k) / 32, y];
      if (isInside(points, at)) return at;
    }
  }
  return middle;
}

/** The least value at which something begins to hold, between one where it does not and one where it does. */
function firstWhere(low: number, high: number, holds: (value: number) => boolean): number {
  let [no, yes] = [low, high];
  while (yes - no > FINE / 4) {
    const middle = (no + yes) / 2;
    if (holds(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}

const holes = ({ Clipper }: Clipper, paths: Paths64): Paths64 =>
  paths.filter((path) => squareMm(Clipper.area(path)) < -SLIVER);

/**
 * Places where one opening bends back on itself and leaves less than `least` mm: grown by half of that, it closes round a part of the
 * sheet that would then hang on nothing.
 */
export function selfNecks(clipper: Clipper, opening: Opening, least: number): Gap[] {
  const paths = piecePaths(opening.piece);
  const closed = holes(clipper, grown(clipper, paths, least / 2));
  // Islands of the opening itself are counted as islands, not as weak places.
  const own = holes(clipper, paths).length;
  if (closed.length <= own) return [];
  return closed.flatMap((hole): Gap[] => {
    const inside = somewhereInside(hole, clipper);
    const around = (by: number) =>
      holes(clipper, grown(clipper, paths, by)).find((path) => isInside(toPoints(path), inside));
    if (around(0)) return [];
    const by = firstWhere(0, least / 2, (value) => around(value) !== undefined);
    const [inner] = [around(by)!];
    const outer = outers(clipper, grown(clipper, paths, by))[0]!;
    const { x, y } = gapBetween(toPoints(inner), toPoints(outer));
    return [{ x, y, width: 2 * by }];
  });
}

/** Places where a window is narrower than `least` mm: shrunk by half of that, it falls in two there or vanishes. */
export function narrowPlaces(clipper: Clipper, window: Opening, least: number): Gap[] {
  const paths = piecePaths(window.piece);
  const shrunk = (by: number) => outers(clipper, grown(clipper, paths, -by));
  const parts = (left: Paths64) => outers(clipper, left, SLIVER / 5);
  const tooNarrow = (by: number) => {
    const left = shrunk(by);
    return left.length === 0 || parts(left).length > 1;
  };
  if (least <= 0 || !tooNarrow(least / 2)) return [];
  const by = firstWhere(0, least / 2, tooNarrow);
  const [one, other] = parts(shrunk(by));
  if (one && other) {
    const { x, y } = gapBetween(toPoints(one), toPoints(other));
    return [{ x, y, width: 2 * by }];
  }
  const [x, y] = middleOf(clipper, shrunk(by - FINE)[0] ?? paths[0]!);
  return [{ x, y, width: 2 * by }];
}
