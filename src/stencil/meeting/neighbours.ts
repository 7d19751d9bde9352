import { boxesMeet, pieceBox } from '../../geometry/measure.ts';
import type { Box, Piece, Point } from '../../geometry/path.ts';
import { shifted, shiftedBox } from '../../geometry/transform.ts';
import { copiesNear } from '../apart/hold-apart.ts';
import { type Paths64, piecePaths } from '../clip.ts';

/** One piece of a unit that stands again and again. */
export interface Member {
  colour: string;
  piece: Piece;
  box: Box;
  paths: Paths64;
  at: Point;
  every: Point;
}

/** A member, or a copy of one, that stands near another, moved to where it stands. */
export interface Beside {
  /** Which member it is a copy of. */
  of: number;
  dx: number;
  dy: number;
  paths: Paths64;
}

export const memberOf = (colour: string, piece: Piece, at: Point, every: Point): Member => ({
  colour,
  piece,
  box: pieceBox(piece),
  paths: piecePaths(piece),
  at,
  every,
});

/** Everything whose box comes within reach of a member's. */
export function besides(members: Member[], which: number, reach: number): Beside[] {
  const { box, at } = members[which]!;
  return members.flatMap((other, of) => {
    const offset: Point = [other.at[0] - at[0], other.at[1] - at[1]];
    return [...copiesNear(box, other.box, offset, other.every, reach)].flatMap(([dx, dy]): Beside[] => {
      const isSelf = of === which && Math.abs(dx) + Math.abs(dy) < 1e-6;
      if (isSelf || !boxesMeet(box, shiftedBox(other.box, dx, dy), reach)) return [];
      return [{ of, dx, dy, paths: piecePaths(shifted(other.piece, dx, dy)) }];
    });
  });
}

export const moved = (pieces: Piece[], { dx, dy }: Beside): Piece[] => pieces.map((piece) => shifted(piece, dx, dy));
