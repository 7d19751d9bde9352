import type { Piece } from '../geometry/path.ts';

/** Pieces as a canvas fills them. */
export function outline(pieces: readonly Piece[]): Path2D {
  const path = new Path2D();
  for (const piece of pieces)
    for (const { start, sides } of piece) {
      path.moveTo(...start);
      for (const side of sides)
        if (side.kind === 'line') path.lineTo(...side.to);
        else path.bezierCurveTo(...side.out, ...side.into, ...side.to);
      path.closePath();
    }
  return path;
}
