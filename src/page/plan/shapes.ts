import type { Region } from '../../compose/drawing.ts';
import type { Box, Piece } from '../../geometry/path.ts';

/** A shape ready to be painted, and what it reaches about its place, mm. */
export interface Shape {
  path: Path2D;
  box: Box;
}

const known = new WeakMap<readonly Piece[], Shape>();

function shapeFrom(pieces: readonly Piece[]): Shape {
  const path = new Path2D();
  const box: Box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  // Handles count too: a curve lies within the box round its handles.
  const reach = (x: number, y: number): void => {
    if (x < box.left) box.left = x;
    if (x > box.right) box.right = x;
    if (y < box.top) box.top = y;
    if (y > box.bottom) box.bottom = y;
  };
  for (const piece of pieces)
    for (const { start, sides } of piece) {
      path.moveTo(...start);
      reach(...start);
      for (const side of sides) {
        reach(...side.to);
        if (side.kind === 'line') path.lineTo(...side.to);
        else {
          reach(...side.out);
          reach(...side.into);
          path.bezierCurveTo(...side.out, ...side.into, ...side.to);
        }
      }
      path.closePath();
    }
  return { path, box };
}

/** The shape of a region; made once for every drawing. */
export function shapeOf({ pieces }: Region): Shape {
  let shape = known.get(pieces);
  if (!shape) {
    shape = shapeFrom(pieces);
    known.set(pieces, shape);
  }
  return shape;
}
