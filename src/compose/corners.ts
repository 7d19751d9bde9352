import type { Piece, Point } from '../geometry/path.ts';
import { mirrored, turned } from '../geometry/transform.ts';
import type { Drawn } from '../motif/motif.ts';
import { drawMotif, drawOwnCorner } from '../motif/record.ts';
import type { Edging } from './around.ts';
import type { Region } from './drawing.ts';
import { asDrawn, metAlone } from './finish.ts';
import { drawMitre, transposed } from './mitre.ts';

/** The corner of a border as drawn for the left far corner, about its own centre. */
async function drawCorner({ motif, settings, corner, turn, width }: Edging): Promise<Drawn[]> {
  if (turn === 'own') return drawOwnCorner(motif, width, settings);
  if (turn === 'mitre') return drawMitre(motif, settings, width);
  if (turn === 'block' && corner) return drawMotif(corner.motif, { across: width, along: width }, corner.settings);
  return [];
}

/** The corners of a ring's outline, in an order that does not depend on where it starts or which way it runs. */
const cornersOf = (pieces: readonly Piece[]): string =>
  pieces
    .flatMap((piece) => piece.flatMap((ring) => ring.sides.map(({ to }) => to)))
    .map(([x, y]: Point) => `${Math.round(x * 1000) + 0} ${Math.round(y * 1000) + 0}`)
    .sort()
    .join(';');

/** True for a corner that mirrors about its own diagonal: its quarter turns are its mirror images as well. */
const isDiagonal = (drawn: Drawn[]): boolean =>
  drawn.every(({ pieces }) => cornersOf(pieces) === cornersOf(pieces.map(transposed)));

/**
 * The four corners. A border that runs round takes quarter turns; any other takes mirror images, so that the work mirrors about both its
 * centre lines. Where the two are the same, turns: one sheet then serves all four.
 */
export async function composeCorners(edging: Edging): Promise<Region[]> {
  const { outer, width, order, run, finish = asDrawn } = edging;
  const made = edging.turn === 'block' ? edging.corner?.motif.made : edging.motif.made;
  const bare = await drawCorner(edging);
  const drawn = made === 'tape' ? bare : finish.unit(metAlone(bare, finish), 'motif');
  const [left, right] = [outer.left + width / 2, outer.right - width / 2];
  const [far, near] = [outer.top + width / 2, outer.bottom - width / 2];
  const turns = run === 'round' || isDiagonal(drawn);
  const places: [number, number, (piece: Piece) => Piece][] = [
    [left, far, (piece) => piece],
    [right, far, (piece) => (turns ? turned(piece, 1) : mirrored(piece, 'across'))],
    [right, near, (piece) => turned(piece, 2)],
    [left, near, (piece) => (turns ? turned(piece, 3) : mirrored(piece, 'along'))],
  ];
  return places.flatMap(([x, y, place]) =>
    drawn.map(
      ({ part, pieces }): Region => ({
        element: order === 'border' ? 'corner' : 'inner-corner',
        part,
        pieces: pieces.map(place),
        cut: false,
        at: Float64Array.of(x, y),
      }),
    ),
  );
}
