import { cutRings, type Edge } from './half-plane.ts';
import { pieceBox, ringArea } from './measure.ts';
import { nestRings } from './nest.ts';
import type { Box, Piece } from './path.ts';

/** Nearer than this, mm, a piece that touches an edge is not cut by it. */
export const TOUCH = 1e-6;

/** Rings of less area than this, mm², are crumbs of rounding and left out. */
const CRUMB = 1e-6;

/**
 * What of the pieces lies inside a window. Pieces wholly inside come back as they are, those wholly outside not at all.
 * Curves stay curves; new corners lie exactly on the window's edges. An infinite edge takes nothing away.
 */
export function clipPieces(pieces: readonly Piece[], window: Box): Piece[] {
  const edges: Edge[] = [
    { axis: 0, at: window.left, keep: 1 },
    { axis: 0, at: window.right, keep: -1 },
    { axis: 1, at: window.top, keep: 1 },
    { axis: 1, at: window.bottom, keep: -1 },
  ];
  return pieces.flatMap((piece) => {
    const box = pieceBox(piece);
    const [low, high] = [
      [box.left, box.top],
      [box.right, box.bottom],
    ] as const;
    const outside = edges.some(({ axis, at, keep }) => (keep > 0 ? high[axis] <= at + TOUCH : low[axis] >= at - TOUCH));
    if (outside) return [];
    const cutting = edges.filter(({ axis, at, keep }) => (keep > 0 ? low[axis] < at - TOUCH : high[axis] > at + TOUCH));
    if (cutting.length === 0) return [piece];
    return nestRings(cutting.reduce(cutRings, piece).filter((ring) => Math.abs(ringArea(ring)) >= CRUMB));
  });
}
