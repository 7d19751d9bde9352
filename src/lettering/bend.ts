import { piecesBox } from '../geometry/measure.ts';
import type { Piece, Point } from '../geometry/path.ts';
import { type Move, movePiece } from '../geometry/transform.ts';
import type { Placed } from './line.ts';

/** Where a letter stands: the middle of its width on the baseline, and how far it is turned, radians clockwise. */
export interface Stand {
  foot: Point;
  turn: number;
}

/** A letter as it is painted. */
export interface Standing extends Stand {
  pieces: Piece[];
}

/** The ends of what is painted of a line, and so without the space before its first letter and after its last. */
function endsOf(line: readonly Placed[]): { from: number; to: number } {
  const boxes = line
    .filter(({ letter }) => letter.pieces.length > 0)
    .map(({ letter, at }) => ({ box: piecesBox(letter.pieces), at }));
  return {
    from: Math.min(...boxes.map(({ box, at }) => at + box.left)),
    to: Math.max(...boxes.map(({ box, at }) => at + box.right)),
  };
}

/**
 * The point of the baseline that belongs to a distance from the middle of the line, and the slope there.
 * @param inner radius of the circle along which distances are kept; `above` the baseline by the height of the capitals where the text sags
 */
function standAt(distance: number, inner: number, above: number): Stand {
  if (!Number.isFinite(inner)) return { foot: [distance, 0], turn: 0 };
  const turn = distance / inner;
  const radius = inner - above;
  // 1 − cos, without the loss of figures where the turn is small.
  return { foot: [radius * Math.sin(turn), radius * 2 * Math.sin(turn / 2) ** 2], turn };
}

/**
 * Stands the letters of a line on an arc, centred: the middle of the line at the origin, on the baseline.
 * The middle of each letter's width lies on a circle, and the letter is turned to it. Letters keep their spacing where they come closest: along the
 * baseline where the text rises in the middle, along the tops of the capitals where it sags.
 * @param arc radians from the first to the last edge of what is painted; above nought the ends go down, below nought up
 */
export function standLetters(line: readonly Placed[], arc: number, capHeight: number): Standing[] {
  const { from, to } = endsOf(line);
  // Below nought, the centre lies above the text.
  const inner = arc === 0 ? Number.POSITIVE_INFINITY : (to - from) / arc;
  const above = arc < 0 ? capHeight : 0;
  const middle = (from + to) / 2;
  return line.map(({ letter, at }) => {
    const half = letter.advance / 2;
    const { foot, turn } = standAt(at + half - middle, inner, above);
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    const move: Move = ([x, y]) => [foot[0] + (x - half) * cos - y * sin, foot[1] + (x - half) * sin + y * cos];
    return { foot, turn, pieces: letter.pieces.map((piece) => movePiece(piece, move)) };
  });
}
