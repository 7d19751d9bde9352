import type { Booleans } from '../../geometry/booleans.ts';
import { ringArea, ringBox } from '../../geometry/measure.ts';
import { nestRings } from '../../geometry/nest.ts';
import type { Piece, Ring } from '../../geometry/path.ts';
import { type Move, movePiece } from '../../geometry/transform.ts';
import type { FillRule } from '../marks/mark.ts';
import { agree } from './agree.ts';
import { type ClipperLibrary, ringPath, STEPS, squareUnits } from './clipper.ts';
import { coarseShaper } from './coarse.ts';
import { fitPieces } from './fit.ts';
import type { Shaper } from './shaper.ts';
import { TooMuch } from './too-much.ts';

/** Sides that all operations of a drawing may be given together; beyond, the curves' own way takes too long. */
const MOST_WORK = 15_000;
/** A ring of less area than this, in square units, says nothing about which way it runs. */
const LEAST = 1e-3;
/** Turns of the page at which an operation is tried, radians. Curves that touch or run level at one are free of it at another. */
const TURNS = [0, 0.1, 0.4, 1, 1.7, 2.6];

const sidesOf = (pieces: Piece[]): number => pieces.flat().reduce((sum, ring) => sum + ring.sides.length, 0);

const hasSize = (ring: Ring): boolean => {
  const box = ringBox(ring);
  return box.right - box.left > 1 / STEPS && box.bottom - box.top > 1 / STEPS;
};

function turnedBy(angle: number): Move {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return ([x, y]) => [x * cos - y * sin, x * sin + y * cos];
}

/**
 * Shapes on their own curves. Rings that cross nothing are taken as they are; for the rest the geometry library's answer is held against
 * that of the chords, and asked for again with the page turned where the two differ.
 */
export function exactShaper(booleans: Booleans, library: ClipperLibrary): Shaper {
  const { Clipper, FillRule: Rule } = library;
  const coarse = coarseShaper(library);
  let work = 0;
  const spend = (sides: number): void => {
    work += sides;
    if (work > MOST_WORK) throw new TooMuch('crossings');
  };

  /** The first answer that agrees with the chords', if one does. */
  const settle = (
    operands: Piece[][],
    wanted: Piece[],
    ...ways: ((...operands: Piece[][]) => Piece[])[]
  ): Piece[] | undefined => {
    const sides = operands.reduce((sum, pieces) => sum + sidesOf(pieces), 0);
    for (const angle of TURNS) {
      const [there, back] = [turnedBy(angle), turnedBy(-angle)];
      const turned = operands.map((pieces) => pieces.map((piece) => movePiece(piece, there)));
      for (const way of ways) {
        spend(sides);
        const answer = angle === 0 ? way(...operands) : way(...turned).map((piece) => movePiece(piece, back));
        if (agree(answer, wanted, library)) return answer;
      }
    }
    return undefined;
  };
  const must = (pieces: Piece[] | undefined): Piece[] => {
    if (pieces === undefined) throw new TooMuch('crossings');
    return pieces;
  };

  /** The rings sorted into pieces as they lie in each other, if that is what the rule fills: no ring crosses or runs round twice. */
  const clean = (rings: Ring[], rule: FillRule): Piece[] | undefined => {
    if (rings.some((ring) => Math.abs(ringArea(ring)) < LEAST)) return undefined;
    const filled = Clipper.union(rings.map(ringPath), rule === 'evenodd' ? Rule.EvenOdd : Rule.NonZero);
    if (filled.length !== rings.length) return undefined;
    const pieces = nestRings(rings);
    const nested = pieces.flat().map(ringPath);
    const corners = nested.reduce((sum, path) => sum + path.length, 0);
    const off = Math.abs(Clipper.areaPaths(filled) - Clipper.areaPaths(nested));
    return squareUnits(off) < 1e-6 * (1 + corners / 100) ? pieces : undefined;
  };

  /** By halves: two shapes at a time are easier to get right than many. */
  const uniteByHalves = (pieces: Piece[]): Piece[] => {
    if (pieces.length < 2) return pieces;
    const half = pieces.length >> 1;
    return booleans.unite(uniteByHalves(pieces.slice(0, half)), uniteByHalves(pieces.slice(half)));
  };

  const resolve = (given: Ring[], rule: FillRule, wanted: () => Piece[]): Piece[] | undefined => {
    const rings = given.filter(hasSize);
    const apart = rings.map((ring) => [ring]);
    return clean(rings, rule) ?? settle([apart], wanted(), (all) => booleans.resolve(all!.flat(), rule));
  };

  return {
    resolve: (rings, rule) => must(resolve(rings, rule, () => coarse.resolve(rings, rule))),
    stroke({ rings, chords }) {
      const pieces = rings && resolve(rings, 'nonzero', () => chords);
      return pieces && agree(pieces, chords, library) ? pieces : fitPieces(chords);
    },
    unite: (pieces) =>
      must(
        settle(
          [pieces],
          coarse.unite(pieces),
          (all) => booleans.unite(all!, []),
          (all) => uniteByHalves(all!),
        ),
      ),
    subtract: (a, b) => must(settle([a, b], coarse.subtract(a, b), (from, off) => booleans.subtract(from!, off!))),
    intersect: (a, b) => must(settle([a, b], coarse.intersect(a, b), (one, other) => booleans.intersect(one!, other!))),
  };
}
