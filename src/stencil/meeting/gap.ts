import { flatten } from '../../geometry/flatten.ts';
import type { Piece, Point } from '../../geometry/path.ts';
import { contactStrips } from '../apart/contacts.ts';
import type { Tools } from '../bridges/bridge-windows.ts';
import { type Clipper, grown, outers, type Paths64, piecePaths, squareMm } from '../clip.ts';
import { gapBetween } from '../gap.ts';
import { grownPiece } from './grow.ts';
import { type Beside, besides, type Member, moved } from './neighbours.ts';
import { sure } from './sure.ts';

/** A gap that falls short by no more than this stands, mm: curves beside curves are fitted. */
const SHORT = 0.02;
/** Pieces that run along each other over less than this many gaps meet at a tip, and are cut straight across. */
const TIP = 1;
/** Places and leavings smaller than this are crumbs of the reckoning, mm². */
const CRUMB = 1e-3;

const outlines = (pieces: Piece[]): Point[][] => pieces.flatMap((piece) => piece.map((ring) => flatten(ring, 0.005)));

/** How far two pieces are apart at the nearest, mm. */
const apart = (one: Piece, other: Piece): number =>
  Math.min(...outlines([one]).flatMap((a) => outlines([other]).map((b) => gapBetween(a, b).width)));

/** Where what is left of two shapes comes nearer than the gap. */
function tooNear(one: Paths64, other: Paths64, gap: number, clipper: Clipper): boolean {
  const { Clipper, FillRule } = clipper;
  const half = (paths: Paths64) => grown(clipper, paths, gap / 2 - SHORT / 2);
  return outers(clipper, Clipper.intersect(half(one), half(other), FillRule.NonZero), CRUMB).length > 0;
}

const pathsOf = (pieces: Piece[]): Paths64 => pieces.flatMap(piecePaths);

/** Takes from every member what others have; those of which nothing would be left stay whole. */
type Take = (which: number, left: Piece[], near: Beside[]) => Piece[];

/**
 * Colours that meet, or come nearer than `gap` mm, give way to each other by half of it each, along the stretch where they do. Tips are cut straight
 * across. Sides away from there come back unchanged, and what is alike, or mirrors, gives way alike.
 * @returns what is left of each member; a piece may come back in several parts, or not at all
 */
export function gapped(members: Member[], gap: number, { booleans, clipper }: Tools): Piece[][] {
  const { Clipper, FillRule } = clipper;
  const near = members.map(({ colour }, which) =>
    besides(members, which, gap).filter(({ of }) => members[of]!.colour !== colour),
  );
  let now = members.map(({ piece }) => [piece]);

  const without = (left: Piece[], off: Piece[], offPaths: Paths64): Piece[] => {
    const wanted = Clipper.difference(pathsOf(left), offPaths, FillRule.NonZero);
    const found = sure([left, off], ([a, b]) => booleans.subtract(a!, b!), wanted, clipper);
    return (found ?? left).filter((piece) => squareMm(Clipper.areaPaths(piecePaths(piece))) > CRUMB);
  };
  const grownOf = (pieces: Piece[], by: number): Piece[] | undefined => {
    const found = pieces.flatMap((piece) => {
      const wanted = grown(clipper, piecePaths(piece), by);
      return sure([[piece]], ([all]) => all!.flatMap((one) => grownPiece(one, by, booleans)), wanted, clipper) ?? [];
    });
    return found.length > 0 ? found : undefined;
  };
  const takeFrom = (left: Piece[], pieces: Piece[], by: number): Piece[] =>
    (grownOf(pieces, by) ?? []).reduce((rest, off) => without(rest, [off], piecePaths(off)), left);
  const round = (take: Take): void => {
    now = now.map((left, which) => take(which, left, near[which]!));
  };

  // Along the stretches on which they meet, or run side by side.
  const known = new Map<string, Piece[] | undefined>();
  round((which, left, all) =>
    all.reduce((rest, beside) => {
      const [one, other] = [members[which]!, members[beside.of]!];
      const width = apart(one.piece, moved([other.piece], beside)[0]!);
      if (width >= gap - SHORT) return rest;
      const along = Clipper.intersect(grown(clipper, one.paths, width + SHORT), beside.paths, FillRule.NonZero);
      if (squareMm(Math.abs(Clipper.areaPaths(along))) < SHORT * TIP * gap) return rest;
      const by = (gap + width) / 2;
      const key = `${beside.of} ${Math.round(by * 1e4)}`;
      if (!known.has(key)) known.set(key, grownOf([other.piece], by));
      return (known.get(key) ?? []).reduce(
        (pieces, off) => without(pieces, moved([off], beside), piecePaths(moved([off], beside)[0]!)),
        rest,
      );
    }, left),
  );

  // At tips, and past the ends of those stretches, straight across.
  const strips = now;
  round((which, left, all) =>
    all.reduce((rest, beside) => {
      const other = pathsOf(moved(strips[beside.of]!, beside));
      const own = pathsOf(strips[which]!);
      if (!tooNear(own, other, gap, clipper)) return rest;
      return contactStrips(clipper, own, other, gap - SHORT / 2).reduce(
        (pieces, strip) => without(pieces, [strip], piecePaths(strip)),
        rest,
      );
    }, left),
  );

  // What is bent too much for that gives way as it lies.
  const bent = now;
  round((which, left, all) =>
    all.reduce((rest, beside) => {
      const other = moved(bent[beside.of]!, beside);
      if (!tooNear(pathsOf(bent[which]!), pathsOf(other), gap, clipper)) return rest;
      return takeFrom(rest, other, gap - SHORT / 2);
    }, left),
  );
  return now;
}
