import type { Piece } from '../../geometry/path.ts';
import { type Move, movePiece } from '../../geometry/transform.ts';
import { type Clipper, type Paths64, piecePaths, squareMm, TOLERANCE, UNITS_PER_MM } from '../clip.ts';

/** Turns of the page at which an operation is tried, radians: curves that touch or run level at one are free of it at another. */
const TURNS = [0, 0.1, 0.4, 1, 1.7, 2.6];
/** Area that counts as nothing, mm². */
const NOTHING = 0.01;

function turnedBy(angle: number): Move {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return ([x, y]) => [x * cos - y * sin, x * sin + y * cos];
}

function lengthOf(paths: Paths64): number {
  let sum = 0;
  for (const path of paths) {
    let before = path.at(-1)!;
    for (const point of path) {
      sum += Math.sqrt((point.x - before.x) ** 2 + (point.y - before.y) ** 2);
      before = point;
    }
  }
  return sum / UNITS_PER_MM;
}

/** Whether pieces cover what polygons do, and each place once, but for a band as wide as chords lie off curves. */
function agree(pieces: Piece[], wanted: Paths64, { Clipper, FillRule }: Clipper): boolean {
  const found = pieces.flatMap(piecePaths);
  const band = NOTHING + TOLERANCE * lengthOf(wanted);
  return (
    squareMm(Math.abs(Clipper.areaPaths(found) - Clipper.areaPaths(wanted))) <= band &&
    squareMm(Math.abs(Clipper.areaPaths(Clipper.xor(found, wanted, FillRule.NonZero)))) <= band
  );
}

/**
 * The answer of an operation on curves that agrees with the same operation on polygons, tried with the page turned where it does not.
 * @returns nothing where none agrees
 */
export function sure(
  operands: Piece[][],
  way: (operands: Piece[][]) => Piece[],
  wanted: Paths64,
  clipper: Clipper,
): Piece[] | undefined {
  for (const angle of TURNS) {
    const there = turnedBy(angle);
    const back = turnedBy(-angle);
    const answer =
      angle === 0
        ? way(operands)
        : way(operands.map((pieces) => pieces.map((piece) => movePiece(piece, there)))).map((piece) =>
            movePiece(piece, back),
          );
    if (agree(answer, wanted, clipper)) return answer;
  }
  return undefined;
}
