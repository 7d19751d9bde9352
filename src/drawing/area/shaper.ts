import type { Piece, Ring } from '../../geometry/path.ts';
import type { FillRule } from '../marks/mark.ts';
import type { Stroked } from './stroke.ts';

/**
 * Painted areas and what is done with them. There are two: one exact, on the curves themselves, and one on chords of them,
 * which never fails and tells whether the exact one is right.
 */
export interface Shaper {
  /** What a fill paints: rings that may cross themselves and each other, under the file's rule. */
  resolve(rings: Ring[], rule: FillRule): Piece[];
  /** What a line paints. */
  stroke(stroked: Stroked): Piece[];
  unite(pieces: Piece[]): Piece[];
  subtract(a: Piece[], b: Piece[]): Piece[];
  intersect(a: Piece[], b: Piece[]): Piece[];
}
