import type { Layout } from '../fit/layout.ts';
import { clipPieces, TOUCH } from '../geometry/clip.ts';
import { boxesMeet, pieceBox, piecesBox } from '../geometry/measure.ts';
import type { Box, Piece } from '../geometry/path.ts';
import type { Region } from './drawing.ts';
import type { Family } from './families.ts';
import { pairs, spread } from './spread.ts';

/** Centres of the repeats of a family that reach between 0 and `size`, counted from the edge the phase belongs to. */
function centres(
  size: number,
  pitch: number,
  phase: number,
  every: number,
  from: number,
  low: number,
  high: number,
): number[] {
  const found: number[] = [];
  const place = (n: number) => (n + 0.5 - phase) * pitch;
  let n = from;
  while (place(n - every) + high > 1e-9) n -= every;
  while (place(n) + high <= 1e-9) n += every;
  for (; place(n) + low < size - 1e-9; n += every) found.push(place(n));
  return found;
}

/** What of clipped pieces belongs to shapes that show there as drawn, and does not only reach in under another colour. */
function showing(clipped: Piece[], bare: Piece[] | undefined, window: Box): Piece[] {
  if (!bare) return clipped;
  const boxes = clipPieces(bare, window).map(pieceBox);
  return clipped.filter((piece) => boxes.some((box) => boxesMeet(box, pieceBox(piece), -10 * TOUCH)));
}

/**
 * The field's repeats: whole ones placed as they are, those an edge crosses clipped by it, each distinct crossing once.
 * Placements run row by row from the near edge to the far one, each row from left to right.
 */
export function composeField(layout: Pick<Layout, 'pitch' | 'phase'>, field: Box, families: Family[]): Region[] {
  const { pitch, phase } = layout;
  return families.flatMap(composeFamily);

  function composeFamily({ drawn, bare, from, every }: Family): Region[] {
    const regions: Region[] = [];
    for (const { part, pieces } of drawn) {
      const reach = piecesBox(pieces);
      const columns = centres(
        field.right - field.left,
        pitch.across,
        phase.across,
        every.across,
        from.across,
        reach.left,
        reach.right,
      );
      // Rows are counted upwards from the near edge, so what reaches down reaches back.
      const rows = centres(
        field.bottom - field.top,
        pitch.along,
        phase.along,
        every.along,
        from.along,
        -reach.bottom,
        -reach.top,
      );
      const acrossBands = spread(
        columns.map((d) => field.left + d),
        reach.left,
        reach.right,
        field.left,
        field.right,
      );
      const alongBands = spread(
        rows.map((d) => field.bottom - d),
        reach.top,
        reach.bottom,
        field.top,
        field.bottom,
      );
      for (const along of alongBands) {
        for (const across of acrossBands) {
          const window = { left: across.low, right: across.high, top: along.low, bottom: along.high };
          const cut = Object.values(window).some(Number.isFinite);
          const first = bare?.find((one) => one.part === part)?.pieces;
          const kept = cut ? showing(clipPieces(pieces, window), first, window) : pieces;
          if (kept.length > 0) regions.push({ element: 'field', part, pieces: kept, cut, at: pairs(across, along) });
        }
      }
    }
    return regions;
  }
}
