import { flatten } from '../geometry/flatten.ts';
import { pieceBox } from '../geometry/measure.ts';
import type { Box, Piece, Point } from '../geometry/path.ts';

/** A window or key of a sheet, ready to be measured. */
export interface Opening {
  piece: Piece;
  box: Box;
  /** Its outer ring, chords within 2 µm of the curve. */
  polygon: Point[];
}

export const openingOf = (piece: Piece): Opening => ({
  piece,
  box: pieceBox(piece),
  polygon: flatten(piece[0]!, 0.002),
});
