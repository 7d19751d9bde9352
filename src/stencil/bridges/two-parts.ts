import { boxesMeet, pieceArea, pieceBox } from '../../geometry/measure.ts';
import type { Box, Piece, Point } from '../../geometry/path.ts';
import { movePiece } from '../../geometry/transform.ts';
import { gapBetween } from '../gap.ts';
import { narrowPlaces } from '../necks.ts';
import { openingOf } from '../opening.ts';
import { SLACK, SLIVER } from '../soundness.ts';
import type { Bridge, Bridged } from './bridge.ts';
import { loadTools, type Tools } from './bridge-windows.ts';

/** The second part of a two-part stencil: its windows paint what the bridges of the first kept clear. */
export interface FillIn {
  windows: Piece[];
  /** Gaps that stay unpainted, because a window there would be too narrow or would leave too little between itself and another. */
  left: Piece[];
}

/** A strip made broader by `by` on either side; its ends stay where they are. */
function broadened({ piece, at, way }: Bridge, by: number): Piece {
  const [nx, ny] = [-way[1], way[0]];
  const move = ([x, y]: Point): Point => {
    const side = Math.sign((x - at[0]) * nx + (y - at[1]) * ny);
    return [x + side * nx * by, y + side * ny * by];
  };
  return movePiece(piece, move);
}

/**
 * The fill-in sheet of a two-part stencil: with it and the bridged windows together, the whole drawing is painted. Each of its windows covers one gap and
 * laps over the paint on either side of the bridge. Gaps whose windows would come too near to one already taken are left.
 * @param windows the drawing as it was
 * @param bridged the drawing with its bridges
 * @param overlap how far a fill-in window laps over what the first sheet paints, mm, above 0
 * @param least   least widths of bridge and window, mm
 */
export async function twoParts(
  windows: Piece[],
  bridged: Bridged,
  overlap: number,
  least: { bridge: number; window: number },
): Promise<FillIn> {
  return fillIn(windows, bridged, overlap, least, await loadTools());
}

/** `twoParts`, once the libraries are there. `apart`: its windows may come near each other, since those that do are cut on sheets of their own. */
export function fillIn(
  windows: Piece[],
  bridged: Bridged,
  overlap: number,
  least: { bridge: number; window: number },
  { booleans, clipper }: Tools,
  apart = false,
): FillIn {
  const taken: { polygon: Point[]; piece: Piece; box: Box }[] = [];
  const left: Piece[] = [];
  // Gaps over islands first, the longest first: they are what an eye would see.
  const order = [...bridged.bridges].sort(
    (a, b) => Number(a.kind === 'neck') - Number(b.kind === 'neck') || b.length - a.length,
  );
  for (const bridge of order) {
    const cover = broadened(bridge, overlap);
    const near = windows.filter((window) => boxesMeet(pieceBox(window), pieceBox(cover)));
    for (const piece of booleans.intersect(near, [cover])) {
      if (pieceArea(piece) < SLIVER) continue;
      const opening = openingOf(piece);
      const clear =
        apart ||
        taken.every(
          (one) =>
            !boxesMeet(one.box, opening.box, least.bridge) ||
            gapBetween(one.polygon, opening.polygon).width >= least.bridge - SLACK,
        );
      const wide = piece.length === 1 && narrowPlaces(clipper, opening, least.window - SLACK).length === 0;
      if (clear && wide) taken.push(opening);
      else left.push(piece);
    }
  }
  return { windows: taken.map(({ piece }) => piece), left };
}
