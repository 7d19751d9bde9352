import { pieceArea, ringArea } from '../../geometry/measure.ts';
import type { Piece, Ring } from '../../geometry/path.ts';
import { NEAR } from '../limits.ts';
import { chordedRing } from './chords.ts';

/** Rings of less than this share of a square page are crumbs. */
const CRUMB = 0.1;

function lengthOf(ring: Ring): number {
  const points = chordedRing(ring);
  return points.reduce((sum, [x, y], i) => {
    const [u, v] = points[(i + 1) % points.length]!;
    return sum + Math.sqrt((u - x) ** 2 + (v - y) ** 2);
  }, 0);
}

/** Too small to see, or a hairline that an edge leaves where it was drawn twice: narrower than `NEAR` on the whole. */
const isCrumb = (ring: Ring): boolean => {
  const area = Math.abs(ringArea(ring));
  return area < CRUMB || (2 * area) / lengthOf(ring) < NEAR;
};

/** The pieces without crumbs and hairlines, and without holes that are such. */
export const tidy = (pieces: Piece[]): Piece[] =>
  pieces
    .filter((piece) => !isCrumb(piece[0]!))
    .map((piece) => piece.filter((ring, i) => i === 0 || !isCrumb(ring)))
    .filter((piece) => pieceArea(piece) >= CRUMB);
