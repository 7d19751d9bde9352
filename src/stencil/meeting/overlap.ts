import type { Piece } from '../../geometry/path.ts';
import type { Tools } from '../bridges/bridge-windows.ts';
import { grown, type Paths64, piecePaths, squareMm } from '../clip.ts';
import { grownPiece } from './grow.ts';
import { type Beside, besides, type Member, moved } from './neighbours.ts';
import { sure } from './sure.ts';

/** Pieces nearer than this touch, mm. */
const TOUCH = 0.02;
/** Pieces that touch along less than this, mm, meet at a tip: nothing reaches through there. */
const TIP = 0.2;

/**
 * The colour painted first reaches under the others by `by` mm wherever it runs along them. Nothing else of its outline moves. It stops short of other
 * pieces of its own colour by as much.
 * @param order the colours as they are painted
 * @returns the pieces of each member, one each
 */
export function overlapped(members: Member[], by: number, order: string[], { booleans, clipper }: Tools): Piece[] {
  const { Clipper, FillRule } = clipper;
  const known = new Map<number, Piece[]>();
  const grow = (which: number): Piece[] => {
    let found = known.get(which);
    if (!found) {
      const { piece, paths } = members[which]!;
      found =
        sure(
          [[piece]],
          ([all]) => all!.flatMap((one) => grownPiece(one, by, booleans)),
          grown(clipper, paths, by),
          clipper,
        ) ?? [];
      known.set(which, found);
    }
    return found;
  };
  const alongside = (one: Paths64, other: Paths64): boolean =>
    squareMm(Math.abs(Clipper.areaPaths(Clipper.intersect(grown(clipper, one, TOUCH), other, FillRule.NonZero)))) >
    TOUCH * TIP;
  const rank = (which: number): number => order.indexOf(members[which]!.colour);

  /** What a member takes of one of a later colour. */
  const lapOn = (which: number, later: Beside, own: Beside[]): Piece[] => {
    const { paths, colour } = members[which]!;
    const reach = grow(which);
    const piece = moved([members[later.of]!.piece], later);
    const wide = grown(clipper, paths, by);
    const taken = Clipper.intersect(wide, later.paths, FillRule.NonZero);
    let lap = sure([piece, reach], ([a, b]) => booleans.intersect(a!, b!), taken, clipper) ?? [];
    let left = taken;
    for (const other of own) {
      if (members[other.of]!.colour !== colour) continue;
      const off = grown(clipper, other.paths, by);
      if (Clipper.intersect(left, off, FillRule.NonZero).length === 0) continue;
      left = Clipper.difference(left, off, FillRule.NonZero);
      lap = sure([lap, moved(grow(other.of), other)], ([a, b]) => booleans.subtract(a!, b!), left, clipper) ?? [];
    }
    return lap.filter((part) => alongside(piecePaths(part), paths));
  };

  return members.map((member, which) => {
    const near = besides(members, which, 2 * by + TOUCH);
    const laps = near.flatMap((beside) =>
      rank(beside.of) > rank(which) && alongside(member.paths, beside.paths) ? lapOn(which, beside, near) : [],
    );
    return laps.reduce((piece, lap): Piece => {
      const wanted = Clipper.union([...piecePaths(piece), ...piecePaths(lap)], FillRule.NonZero);
      const whole = sure([[piece], [lap]], ([a, b]) => booleans.unite(a!, b!), wanted, clipper);
      return whole?.length === 1 ? whole[0]! : piece;
    }, member.piece);
  });
}
