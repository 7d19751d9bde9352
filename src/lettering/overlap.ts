import type { Booleans } from '../geometry/booleans.ts';
import { boxesMeet, pieceArea, piecesBox } from '../geometry/measure.ts';
import type { Piece } from '../geometry/path.ts';
import type { Standing } from './bend.ts';

type Painted = Pick<Standing, 'pieces'>;

/** Letters that share less than this part of the smaller one only touch. */
const TOUCH = 1e-6;

const areaOf = (pieces: Piece[]): number => pieces.reduce((sum, piece) => sum + pieceArea(piece), 0);

/** Which letters paint over each other, as pairs of places in the line, the first the lower. */
export function overlapping(line: readonly Painted[], { intersect }: Booleans): [number, number][] {
  const known = line.map(({ pieces }) => ({ pieces, box: piecesBox(pieces), area: areaOf(pieces) }));
  return known.flatMap((one, i) =>
    known.flatMap((other, j): [number, number][] => {
      if (j <= i || one.area === 0 || other.area === 0 || !boxesMeet(one.box, other.box)) return [];
      const shared = areaOf(intersect(one.pieces, other.pieces));
      return shared > TOUCH * Math.min(one.area, other.area) ? [[i, j]] : [];
    }),
  );
}

/** All pieces of a line, letters that paint over each other united, so that no spot is painted twice. */
export function joined(line: readonly Painted[], pairs: readonly [number, number][], { unite }: Booleans): Piece[] {
  const groups = line.map((_, n) => n);
  for (const [a, b] of pairs) {
    const [keep, give] = [groups[a]!, groups[b]!];
    groups.forEach((group, n) => {
      if (group === give) groups[n] = keep;
    });
  }
  return [...new Set(groups)].flatMap((group) => {
    const [first, ...rest] = line.filter((_, n) => groups[n] === group).map(({ pieces }) => pieces);
    return rest.reduce((all, pieces) => unite(all, pieces), first!);
  });
}
