import { loadBooleans } from '../geometry/booleans.ts';
import type { Piece, Point } from '../geometry/path.ts';
import { movePiece, reversedRing, shifted } from '../geometry/transform.ts';
import type { Drawn, Motif, Settings } from '../motif/motif.ts';
import { drawMotif } from '../motif/record.ts';

/** Mirror image about the diagonal from the top left to the bottom right. */
export const transposed = (piece: Piece): Piece => movePiece(piece, ([x, y]) => [y, x]).map(reversedRing);

const polygon = (points: Point[]): Piece => [
  { start: points[0]!, sides: [...points.slice(1), points[0]!].map((to) => ({ kind: 'line', to })) },
];

/**
 * A corner cut on the diagonal: the border runs on into the block in whole repeats, as near its true shape as the block allows, is cut from the outer to
 * the inner corner, and meets its own mirror image there. For the left far corner, about the centre of the block.
 */
export async function drawMitre(motif: Motif, settings: Settings, size: number): Promise<Drawn[]> {
  const { unite, intersect } = await loadBooleans();
  const half = size / 2;
  const count = motif.made === 'tape' ? 1 : Math.max(1, Math.round(1 / motif.ratio));
  const pitch = size / count;
  const farHalf = polygon([
    [-half, -half],
    [half, -half],
    [half, half],
  ]);
  const runs = Array.from({ length: count }, (_, i) => (i + 0.5) * pitch - half);
  return drawMotif(motif, { across: pitch, along: size }, settings).map(({ part, pieces }) => {
    const strip = runs.flatMap((run) => pieces.map((piece) => shifted(piece, run, 0)));
    const cut = intersect(strip, [farHalf]);
    return { part, pieces: unite(cut, cut.map(transposed)) };
  });
}
