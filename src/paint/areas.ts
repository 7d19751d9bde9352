import type { Region } from '../compose/drawing.ts';
import { flatten } from '../geometry/flatten.ts';
import { pieceArea } from '../geometry/measure.ts';
import type { Piece } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import type { TapedPart } from '../stencil/taped.ts';

type Regions = readonly Pick<Region, 'part' | 'element' | 'pieces' | 'at'>[];

/**
 * What one coat of each colour of the pattern covers, mm², in the order of the regions. As it is painted: where one colour reaches under
 * another, both count; what bridges leave bare does not, and what is painted over their gaps does.
 */
export function paintedAreas(regions: Regions, { colours }: Pick<Job, 'colours'>): Map<string, number> {
  const areas = new Map<string, number>();
  for (const { part, pieces, at } of regions) {
    const one = pieces.reduce((sum, piece) => sum + pieceArea(piece), 0);
    areas.set(colours[part], (areas.get(colours[part]) ?? 0) + (one * at.length) / 2);
  }
  return areas;
}

const roundPiece = (piece: Piece): number =>
  piece.reduce((sum, ring) => {
    const points = flatten(ring, 0.1);
    return points.reduce((length, [x, y], at) => {
      const [u, v] = points[(at + 1) % points.length]!;
      return length + Math.hypot(u - x, v - y);
    }, sum);
  }, 0);

/** How much tape lies along the edges of what is masked, mm, by colour. */
export function tapeLengths(regions: Regions, taped: readonly TapedPart[]): Map<string, number> {
  const lengths = new Map<string, number>();
  for (const { part, element, pieces, at } of regions) {
    const found = taped.find((one) => one.part === part && one.elements.includes(element));
    if (!found) continue;
    const one = pieces.reduce((sum, piece) => sum + roundPiece(piece), 0);
    lengths.set(found.colour, (lengths.get(found.colour) ?? 0) + (one * at.length) / 2);
  }
  return lengths;
}
