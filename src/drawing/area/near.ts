import { boxesMeet, pieceBox } from '../../geometry/measure.ts';
import type { Box, Piece } from '../../geometry/path.ts';
import type { Shaper } from './shaper.ts';

interface Boxed {
  piece: Piece;
  box: Box;
}

const boxed = (pieces: Piece[]): Boxed[] => pieces.map((piece) => ({ piece, box: pieceBox(piece) }));

/** Pieces sorted into groups whose boxes hang together. */
function groups(pieces: Piece[]): Piece[][] {
  const all = boxed(pieces)
    .map((one, order) => ({ ...one, order, group: order }))
    .sort((a, b) => a.box.left - b.box.left);
  const leader = all.map((_, i) => i);
  const find = (i: number): number => {
    let at = i;
    while (leader[at] !== at) at = leader[at] = leader[leader[at]!]!;
    return at;
  };
  for (let i = 0; i < all.length; i++) {
    for (let j = i + 1; j < all.length && all[j]!.box.left <= all[i]!.box.right; j++) {
      if (boxesMeet(all[i]!.box, all[j]!.box)) leader[find(j)] = find(i);
    }
  }
  const found = new Map<number, typeof all>();
  for (const [i, one] of all.entries()) {
    const group = found.get(find(i));
    if (group) group.push(one);
    else found.set(find(i), [one]);
  }
  const first = (group: typeof all) => Math.min(...group.map((one) => one.order));
  return [...found.values()]
    .map((group) => ({ first: first(group), group: group.sort((a, b) => a.order - b.order) }))
    .sort((a, b) => a.first - b.first)
    .map(({ group }) => group.map((one) => one.piece));
}

/** The same operations, spent only on pieces that may touch; all others come back as they are. */
export function sparing(shaper: Shaper): Shaper {
  const touching = (piece: Piece, others: Boxed[]): Piece[] => {
    const box = pieceBox(piece);
    return others.filter((other) => boxesMeet(box, other.box)).map((other) => other.piece);
  };
  return {
    ...shaper,
    unite: (pieces) => groups(pieces).flatMap((group) => (group.length === 1 ? group : shaper.unite(group))),
    subtract(a, b) {
      const others = boxed(b);
      return a.flatMap((piece) => {
        const near = touching(piece, others);
        return near.length === 0 ? [piece] : shaper.subtract([piece], near);
      });
    },
    intersect(a, b) {
      const others = boxed(b);
      return a.flatMap((piece) => {
        const near = touching(piece, others);
        return near.length === 0 ? [] : shaper.intersect([piece], near);
      });
    },
  };
}
