import type { Piece } from '../../geometry/path.ts';
import { NEAR } from '../limits.ts';
import { type ClipperLibrary, type Paths64, piecePaths, STEPS, squareUnits } from './clipper.ts';

/** Area that always counts as nothing, square units. */
const NOTHING = 1;

/** Length of all outlines, in units. */
function lengthOf(paths: Paths64): number {
  let sum = 0;
  for (const path of paths) {
    let before = path.at(-1);
    for (const point of path) {
      if (before) sum += Math.sqrt((point.x - before.x) ** 2 + (point.y - before.y) ** 2);
      before = point;
    }
  }
  return sum / STEPS;
}

/**
 * Whether pieces cover what others do, and each place once: save a band along the outlines as wide as chords lie off the curves.
 * @param wanted pieces known to be right
 */
export function agree(pieces: Piece[], wanted: Piece[], { Clipper, FillRule }: ClipperLibrary): boolean {
  const [a, b] = [piecePaths(pieces), piecePaths(wanted)];
  const band = NOTHING + 2 * NEAR * lengthOf(b);
  // Pieces that overlap cover no more than they should, but their areas add up to more.
  const twice = squareUnits(Math.abs(Clipper.areaPaths(a) - Clipper.areaPaths(b)));
  return twice <= band && squareUnits(Math.abs(Clipper.areaPaths(Clipper.xor(a, b, FillRule.NonZero)))) <= band;
}
