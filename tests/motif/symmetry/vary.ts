import type { Piece, Point, Ring, Side } from '../../../src/geometry/path.ts';
import { movePiece, reversedRing } from '../../../src/geometry/transform.ts';
import type { Drawn } from '../../../src/motif/motif.ts';

const between = (p: Point, q: Point, t: number): Point => [p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])];

/** One side as two that meet at `t`, curves by de Casteljau's construction. */
export function splitSide(from: Point, side: Side, t: number): [Side, Side] {
  if (side.kind === 'line')
    return [
      { kind: 'line', to: between(from, side.to, t) },
      { kind: 'line', to: side.to },
    ];
  const [a, b, c] = [between(from, side.out, t), between(side.out, side.into, t), between(side.into, side.to, t)];
  const [d, e] = [between(a, b, t), between(b, c, t)];
  return [
    { kind: 'curve', out: a, into: d, to: between(d, e, t) },
    { kind: 'curve', out: e, into: c, to: side.to },
  ];
}

/** The same ring with every side in two. */
export function splitRing(ring: Ring, t: number): Ring {
  let from = ring.start;
  const sides = ring.sides.flatMap((side) => {
    const halves = splitSide(from, side, t);
    from = side.to;
    return halves;
  });
  return { start: ring.start, sides };
}

/** The same ring begun at another of its corners. */
export function startedAt(ring: Ring, corner: number): Ring {
  const at = corner % ring.sides.length;
  if (at === 0) return ring;
  return { start: ring.sides[at - 1]!.to, sides: [...ring.sides.slice(at), ...ring.sides.slice(0, at)] };
}

export const everyRing = (drawn: Drawn[], change: (ring: Ring, at: number) => Ring): Drawn[] => {
  let at = 0;
  return drawn.map(({ part, pieces }) => ({
    part,
    pieces: pieces.map((piece) => piece.map((ring) => change(ring, at++))),
  }));
};

export const everyPiece = (drawn: Drawn[], change: (piece: Piece, at: number) => Piece): Drawn[] => {
  let at = 0;
  return drawn.map(({ part, pieces }) => ({ part, pieces: pieces.map((piece) => change(piece, at++)) }));
};

export const everyPoint = (drawn: Drawn[], move: (point: Point) => Point): Drawn[] =>
  everyPiece(drawn, (piece) => movePiece(piece, move));

export const reversed = reversedRing;

/** Numbers from 0 to just under 1 that look random and are the same every time. */
export function numbers(seed: number): () => number {
  let state = seed >>> 0 || 1;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}
