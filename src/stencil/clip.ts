import type { Path64, Paths64 } from 'clipper2-ts';
import { flatten } from '../geometry/flatten.ts';
import type { Piece, Point } from '../geometry/path.ts';

/** Whole units in a millimetre: 1/8 µm, in which sixty-fourths of an inch are exact too. */
export const UNITS_PER_MM = 8000;

/** Chords and round joins stay within this of the true curve, mm. */
export const TOLERANCE = 0.005;

export type { Paths64 };

/** The clipping library, loaded on first use. */
export const loadClipper = () => import('clipper2-ts');

export type Clipper = Awaited<ReturnType<typeof loadClipper>>;

const toPath = (points: Point[]): Path64 =>
  points.map(([x, y]) => ({ x: Math.round(x * UNITS_PER_MM), y: Math.round(y * UNITS_PER_MM) }));

export const piecePaths = (piece: Piece): Paths64 => piece.map((ring) => toPath(flatten(ring, TOLERANCE)));

export const squareMm = (units: number): number => units / UNITS_PER_MM ** 2;

/** Grown by `by` mm all round, or shrunk where it is negative; corners rounded. */
export function grown({ Clipper, JoinType, EndType }: Clipper, paths: Paths64, by: number): Paths64 {
  return Clipper.inflatePaths(paths, by * UNITS_PER_MM, JoinType.Round, EndType.Polygon, 2, TOLERANCE * UNITS_PER_MM);
}

/** Outer rings of at least some area, mm². Clipper runs outer rings one way and holes the other. */
export const outers = ({ Clipper }: Clipper, paths: Paths64, least = 0): Paths64 =>
  paths.filter((path) => squareMm(Clipper.area(path)) > least);

/** Middle of a path's box, mm. */
export function middleOf({ Clipper }: Clipper, path: Path64): Point {
  const { left, right, top, bottom } = Clipper.getBounds(path);
  return [(left + right) / 2 / UNITS_PER_MM, (top + bottom) / 2 / UNITS_PER_MM];
}
