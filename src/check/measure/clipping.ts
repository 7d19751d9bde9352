import type { Path64, Paths64 } from 'clipper2-ts';
import type { Frame } from '../read/outline.ts';

/** Grid of the booleans: an eighth of a micrometre, in which millimetres and sixty-fourths of an inch are whole. */
export const GRID = 8000;

/** Polygons as x, y, x, y … each, mm. Filled by the even-odd rule, so that holes may run either way. */
export type Polygons = readonly (readonly number[])[];

/** Booleans on polygons by clipper2, loaded when first needed. */
export interface Clipping {
  /** What of the polygons lies in a frame. */
  inFrame(polygons: Polygons, frame: Frame): number[][];
  /** What of the polygons lies outside a frame. */
  outOfFrame(polygons: Polygons, frame: Frame): number[][];
  /** What both cover, once `pared` mm are taken off all round: its separate parts. */
  common(one: Polygons, other: Polygons, pared: number): number[][];
  /** Grown by so many mm all round, or pared where it is negative; corners rounded. */
  grown(polygons: Polygons, by: number): number[][];
  /** What the first covers and the second does not. */
  without(one: Polygons, other: Polygons): number[][];
  /** Area that both cover once `pared` mm are taken off all round what they share, mm². */
  shared(one: Polygons, other: Polygons, pared: number): number;
}

let loaded: Promise<Clipping> | undefined;

export function loadClipping(): Promise<Clipping> {
  loaded ??= load();
  return loaded;
}

async function load(): Promise<Clipping> {
  const { areaPaths, difference, EndType, FillRule, inflatePaths, intersect, JoinType } = await import('clipper2-ts');
  const paths = (polygons: Polygons): Paths64 => polygons.map(onGrid);
  const polygons = (found: Paths64): number[][] =>
    found.map((path) => path.flatMap(({ x, y }) => [x / GRID, y / GRID]));
  const rectangle = ({ left, top, right, bottom }: Frame): Paths64 => [
    onGrid([left, top, right, top, right, bottom, left, bottom]),
  ];
  return {
    inFrame: (all, frame) => polygons(intersect(paths(all), rectangle(frame), FillRule.EvenOdd)),
    outOfFrame: (all, frame) => polygons(difference(paths(all), rectangle(frame), FillRule.EvenOdd)),
    common(one, other, pared) {
      const both = intersect(paths(one), paths(other), FillRule.EvenOdd);
      return polygons(inflatePaths(both, -pared * GRID, JoinType.Miter, EndType.Polygon));
    },
    grown: (all, by) => polygons(inflatePaths(paths(all), by * GRID, JoinType.Round, EndType.Polygon, 2, GRID / 200)),
    without: (one, other) => polygons(difference(paths(one), paths(other), FillRule.EvenOdd)),
    shared(one, other, pared) {
      const both = intersect(paths(one), paths(other), FillRule.EvenOdd);
      if (both.length === 0) return 0;
      const left = inflatePaths(both, -pared * GRID, JoinType.Miter, EndType.Polygon);
      return areaPaths(left) / GRID / GRID;
    },
  };
}

export function onGrid(points: readonly number[]): Path64 {
  const path: Path64 = [];
  for (let i = 0; i < points.length; i += 2) {
    path.push({ x: Math.round(points[i]! * GRID), y: Math.round(points[i + 1]! * GRID) });
  }
  return path;
}
