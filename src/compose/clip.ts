import { loadBooleans } from '../geometry/booleans.ts';
import { pieceBox } from '../geometry/measure.ts';
import type { Box, Piece } from '../geometry/path.ts';

/** Nearer than this, mm, a piece that touches an edge is not cut by it. */
const TOUCH = 1e-6;

const rectangle = ({ left, top, right, bottom }: Box): Piece => [
  {
    start: [left, top],
    sides: [
      { kind: 'line', to: [right, top] },
      { kind: 'line', to: [right, bottom] },
      { kind: 'line', to: [left, bottom] },
      { kind: 'line', to: [left, top] },
    ],
  },
];

/** What of the pieces lies inside the window. Pieces wholly inside come back as they are, those wholly outside not at all. */
export async function clip(pieces: Piece[], window: Box): Promise<Piece[]> {
  const kept: Piece[] = [];
  for (const piece of pieces) {
    const box = pieceBox(piece);
    const outside =
      box.right <= window.left + TOUCH ||
      box.left >= window.right - TOUCH ||
      box.bottom <= window.top + TOUCH ||
      box.top >= window.bottom - TOUCH;
    if (outside) continue;
    const inside =
      box.left >= window.left - TOUCH &&
      box.right <= window.right + TOUCH &&
      box.top >= window.top - TOUCH &&
      box.bottom <= window.bottom + TOUCH;
    if (inside) kept.push(piece);
    else kept.push(...(await loadBooleans()).intersect([piece], [rectangle(window)]));
  }
  return kept;
}
