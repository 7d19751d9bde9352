import type { Piece } from '../../geometry/path.ts';
import { type ClipperLibrary, type Paths64, piecePaths, ringPath, toPieces } from './clipper.ts';
import type { Shaper } from './shaper.ts';

/** Shapes as polygons whose chords lie close to the curves. */
export function coarseShaper(library: ClipperLibrary): Shaper {
  const { Clipper, FillRule } = library;
  const operation =
    (name: 'difference' | 'intersect') =>
    (a: Piece[], b: Piece[]): Piece[] =>
      toPieces(library, Clipper[name](piecePaths(a), piecePaths(b), FillRule.NonZero));
  const unite = (paths: Paths64, rule: number): Piece[] => toPieces(library, Clipper.union(paths, rule));
  return {
    resolve: (rings, rule) => unite(rings.map(ringPath), rule === 'evenodd' ? FillRule.EvenOdd : FillRule.NonZero),
    stroke: ({ chords }) => chords,
    unite: (pieces) => unite(piecePaths(pieces), FillRule.NonZero),
    subtract: operation('difference'),
    intersect: operation('intersect'),
  };
}
