import type { Path64, Paths64 } from 'clipper2-ts';
import type { Frame } from '../read/outline.ts';
import { GRID, onGrid } from './clipping.ts';

/** Regions of less area than this are crumbs of chords, mm². */
const CRUMB = 1e-3;

type Polygon = readonly number[];

/** How the parts of a piece that is split lie to the piece and to each other, by clipper2, loaded when first needed. */
export interface CutParts {
  /** What of a piece lies in a frame: its separate regions. */
  within(piece: Polygon, frame: Frame): number[][];
  /** Area, mm², of what one has and the others together have not, once strips narrower than `narrow` mm are left out. */
  lacking(one: readonly Polygon[], others: readonly Polygon[], narrow: number): number;
  /** How deep two polygons reach into each other: the narrower way across each region that both cover, mm. */
  depths(one: Polygon, other: Polygon): number[];
}

let loaded: Promise<CutParts> | undefined;

export function loadCutParts(): Promise<CutParts> {
  loaded ??= load();
  return loaded;
}

async function load(): Promise<CutParts> {
  const { area, areaPaths, difference, EndType, FillRule, getBounds, inflatePaths, intersect, JoinType, union } =
    await import('clipper2-ts');
  const paths = (polygons: readonly Polygon[]): Paths64 => polygons.map(onGrid);
  const whole = (polygons: readonly Polygon[]): Paths64 =>
    union(
      polygons.flatMap((polygon) => union(paths([polygon]), FillRule.EvenOdd)),
      FillRule.NonZero,
    );
  const frameOf = ({ left, top, right, bottom }: Frame): Polygon => [
    left,
    top,
    right,
    top,
    right,
    bottom,
    left,
    bottom,
  ];
  const size = (path: Path64): number => Math.abs(area(path)) / GRID / GRID;
  return {
    within: (piece, frame) =>
      intersect(paths([piece]), paths([frameOf(frame)]), FillRule.EvenOdd)
        .filter((path) => size(path) > CRUMB)
        .map((path) => path.flatMap(({ x, y }) => [x / GRID, y / GRID])),
    lacking(one, others, narrow) {
      const rest = difference(whole(one), whole(others), FillRule.NonZero);
      const pared = inflatePaths(rest, (-narrow / 2) * GRID, JoinType.Miter, EndType.Polygon);
      return Math.abs(areaPaths(pared)) / GRID / GRID;
    },
    depths: (one, other) =>
      intersect(whole([one]), whole([other]), FillRule.NonZero)
        .filter((path) => size(path) > CRUMB)
        .map((path) => {
          const { left, right, top, bottom } = getBounds(path);
          return Math.min(right - left, bottom - top) / GRID;
        }),
  };
}
