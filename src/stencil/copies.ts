import { pieceBox } from '../geometry/measure.ts';
import type { Box, Piece } from '../geometry/path.ts';
import { shiftedBox } from '../geometry/transform.ts';
import { type Opening, openingOf } from './opening.ts';

/** One of several openings of one shape: the first of them as it lies, and how far from it this one does. Lengths in mm. */
export interface Copy {
  shape: number;
  dx: number;
  dy: number;
  box: Box;
}

/** The openings of a sheet, each distinct shape once. */
export interface Copies {
  shapes: Opening[];
  /** One an opening, in the order given. */
  copies: Copy[];
}

/** Copies differ by rounding only, mm. */
const SAME = 1e-6;

const isSame = (one: number, other: number): boolean => Math.abs(one - other) <= SAME;

/** Whether a piece is another, moved by so much. */
function isCopy(piece: Piece, of: Piece, dx: number, dy: number): boolean {
  if (piece.length !== of.length) return false;
  for (let at = 0; at < piece.length; at++) {
    const [a, b] = [piece[at]!, of[at]!];
    if (
      a.sides.length !== b.sides.length ||
      !isSame(a.start[0], b.start[0] + dx) ||
      !isSame(a.start[1], b.start[1] + dy)
    )
      return false;
    for (let n = 0; n < a.sides.length; n++) {
      const [one, other] = [a.sides[n]!, b.sides[n]!];
      if (one.kind !== other.kind) return false;
      if (!isSame(one.to[0], other.to[0] + dx) || !isSame(one.to[1], other.to[1] + dy)) return false;
      if (one.kind === 'line' || other.kind === 'line') continue;
      if (!isSame(one.out[0], other.out[0] + dx) || !isSame(one.out[1], other.out[1] + dy)) return false;
      if (!isSame(one.into[0], other.into[0] + dx) || !isSame(one.into[1], other.into[1] + dy)) return false;
    }
  }
  return true;
}

/** Finds which openings are copies of one another, so that each shape need be measured once only. */
export function copiesOf(pieces: readonly Piece[]): Copies {
  const shapes: Opening[] = [];
  const bySides = new Map<number, number[]>();
  const copies = pieces.map((piece): Copy => {
    const sides = piece.reduce((sum, ring) => sum + ring.sides.length, 0);
    const known = bySides.get(sides) ?? [];
    const [x, y] = piece[0]!.start;
    for (const shape of known) {
      const first = shapes[shape]!;
      const [dx, dy] = [x - first.piece[0]!.start[0], y - first.piece[0]!.start[1]];
      if (isCopy(piece, first.piece, dx, dy)) return { shape, dx, dy, box: shiftedBox(first.box, dx, dy) };
    }
    const shape = shapes.push(openingOf(piece)) - 1;
    bySides.set(sides, [...known, shape]);
    return { shape, dx: 0, dy: 0, box: pieceBox(piece) };
  });
  return { shapes, copies };
}
