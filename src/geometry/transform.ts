import type { Box, Piece, Point, Ring, Side } from './path.ts';

export type Move = (point: Point) => Point;

function moveSide(side: Side, move: Move): Side {
  return side.kind === 'line'
    ? { kind: 'line', to: move(side.to) }
    : { kind: 'curve', out: move(side.out), into: move(side.into), to: move(side.to) };
}

const moveRing = (ring: Ring, move: Move): Ring => ({
  start: move(ring.start),
  sides: ring.sides.map((side) => moveSide(side, move)),
});

/** Moves every point. The move must not mirror: rings keep their direction. */
export const movePiece = (piece: Piece, move: Move): Piece => piece.map((ring) => moveRing(ring, move));

export const shifted = (piece: Piece, dx: number, dy: number): Piece => movePiece(piece, ([x, y]) => [x + dx, y + dy]);

/** Quarter turns clockwise on the page (y down), about the origin. */
export function quarterTurn(turns: number): Move {
  switch (((turns % 4) + 4) % 4) {
    case 1:
      return ([x, y]) => [-y, x];
    case 2:
      return ([x, y]) => [-x, -y];
    case 3:
      return ([x, y]) => [y, -x];
    default:
      return (point) => point;
  }
}

export const turned = (piece: Piece, turns: number): Piece => movePiece(piece, quarterTurn(turns));

/** The same outline, run the other way round. */
export function reversedRing(ring: Ring): Ring {
  const points: Point[] = [ring.start, ...ring.sides.map((side) => side.to)];
  const sides = ring.sides
    .map((side, at): Side => {
      const to = points[at]!;
      return side.kind === 'line' ? { kind: 'line', to } : { kind: 'curve', out: side.into, into: side.out, to };
    })
    .reverse();
  return { start: points[points.length - 1]!, sides };
}

/** Mirror image. Rings are turned round so that outer rings stay outer. */
export const mirrored = (piece: Piece, axis: 'across' | 'along'): Piece =>
  movePiece(piece, axis === 'across' ? ([x, y]) => [-x, y] : ([x, y]) => [x, -y]).map(reversedRing);

export const shiftedBox = (box: Box, dx: number, dy: number): Box => ({
  left: box.left + dx,
  top: box.top + dy,
  right: box.right + dx,
  bottom: box.bottom + dy,
});
