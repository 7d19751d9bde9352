import {
  areaPathsD,
  differenceD,
  EndType,
  FillRule,
  inflatePathsD,
  JoinType,
  type PathsD,
  unionD,
  xorD,
} from 'clipper2-ts';
import { flatten } from '../../../src/geometry/flatten.ts';
import { piecesBox } from '../../../src/geometry/measure.ts';
import type { Piece } from '../../../src/geometry/path.ts';

/** Decimal places of a millimetre that clipper2 keeps here. */
const PLACES = 6;

const polygons = (pieces: Piece[], tolerance = 0.002): PathsD =>
  pieces.flatMap((piece) => piece.map((ring) => flatten(ring, tolerance).map(([x, y]) => ({ x, y }))));

const united = (pieces: Piece[]): PathsD => unionD(polygons(pieces, 0.0002), [], FillRule.NonZero, PLACES);

/** What clipper2 keeps of a sheet 20 mm wider than its windows, less a rim of `by` mm all round: areas of its pieces, mm². */
export function keptParts(windows: Piece[], by = 0): number[] {
  const { left, top, right, bottom } = piecesBox(windows);
  const sheet = [
    { x: left - 20, y: top - 20 },
    { x: right + 20, y: top - 20 },
    { x: right + 20, y: bottom + 20 },
    { x: left - 20, y: bottom + 20 },
  ];
  const kept = differenceD([sheet], polygons(windows), FillRule.NonZero, PLACES);
  const left2 = by === 0 ? kept : inflatePathsD(kept, -by, JoinType.Round, EndType.Polygon, 2, PLACES, 0.005);
  // Outer outlines run one way and holes the other; each hole lies in the piece counted before it, so counting outlines counts pieces.
  return left2.map((path) => areaPathsD([path])).filter((area) => area > 0);
}

/** Pieces larger than a crumb of 0.3 mm² beside the one that holds the frame. */
export const loose = (areas: number[]): number => areas.filter((area) => area > 0.3).length - 1;

export const areaOf = (pieces: Piece[]): number => areaPathsD(united(pieces));

/** Area, mm², that only one of two drawings paints. */
export const differing = (one: Piece[], other: Piece[]): number =>
  areaPathsD(xorD(united(one), united(other), FillRule.NonZero, PLACES));
