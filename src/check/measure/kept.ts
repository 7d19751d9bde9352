import type { Path64, Paths64 } from 'clipper2-ts';
import type { Frame } from '../read/outline.ts';
import type { Polygon } from './gap.ts';

/** Grid of the booleans: an eighth of a micrometre, in which millimetres and sixty-fourths of an inch are whole. */
const GRID = 8000;
/** Rounded corners of an offset stay this close to true, mm. */
const ARC = 0.005;
/** A bridge may be this much narrower than stated before it counts as broken: twice the error of chords and arcs, mm. */
export const BRIDGE_SLACK = 0.02;

/** What is left of a sheet, looked at by general polygon clipping. */
export interface Kept {
  /** Area of openings that lie in more than one of them, mm². */
  overlap: number;
  /** Pieces the sheet falls into. */
  pieces: number;
  /** Pieces it falls into when half the least bridge is pared off every edge, slivers under one bridge squared aside. */
  pared: number;
  /** The first window that vanishes or parts when half the least window is pared off it, from 0; -1 for none. */
  narrow: number;
}

/**
 * @param windows polygons of each window
 * @param keys    polygons of all keys
 * @param bridge,window least widths, mm
 */
export async function lookAtKept(
  sheet: Frame,
  windows: readonly Polygon[][],
  keys: readonly Polygon[],
  bridge: number,
  window: number,
): Promise<Kept> {
  const { areaPaths, difference, EndType, FillRule, inflatePaths, JoinType, union } = await import('clipper2-ts');
  const grid = (points: readonly number[]): Path64 => {
    const path: Path64 = [];
    for (let i = 0; i < points.length; i += 2) {
      path.push({ x: Math.round(points[i]! * GRID), y: Math.round(points[i + 1]! * GRID) });
    }
    return path;
  };
  // Openings are taken as filled whichever way they run, so that two of them never cancel out.
  const filled = (polygons: readonly Polygon[]): Paths64 =>
    union(
      polygons.map(({ points }) => grid(points)),
      FillRule.EvenOdd,
    );
  const area = (paths: Paths64) => areaPaths(paths) / GRID / GRID;
  const pieces = (paths: Paths64, least = 0) => paths.filter((path) => areaPaths([path]) / GRID / GRID > least).length;
  const pare = (paths: Paths64, by: number) =>
    inflatePaths(paths, -by * GRID, JoinType.Round, EndType.Polygon, 2, ARC * GRID);

  const single = [...windows.map(filled), ...keys.map((key) => filled([key]))];
  const openings = union(single.flat(), FillRule.NonZero);
  const overlap = single.reduce((sum, paths) => sum + area(paths), 0) - area(openings);
  const { left, top, right, bottom } = sheet;
  const kept = difference([grid([left, top, right, top, right, bottom, left, bottom])], openings, FillRule.NonZero);
  const narrow = windows.findIndex((_, at) => {
    const left = pare(single[at]!, (window - BRIDGE_SLACK) / 2);
    return pieces(left) !== 1;
  });
  return {
    overlap,
    pieces: pieces(kept),
    pared: pieces(pare(kept, (bridge - BRIDGE_SLACK) / 2), bridge * bridge),
    narrow,
  };
}
