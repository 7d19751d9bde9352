import type { Layout } from '../fit/layout.ts';
import { piecesBox } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import type { Drawn } from '../motif/motif.ts';
import { clip } from './clip.ts';
import type { Region } from './drawing.ts';
import { opening, pairs, spread } from './spread.ts';

/** Centres of all repeats that reach between 0 and `size`, counted from the edge the phase belongs to. */
function centres(size: number, pitch: number, phase: number): number[] {
  const found: number[] = [];
  for (let n = 0; (n - phase) * pitch < size - 1e-9; n++) found.push((n + 0.5 - phase) * pitch);
  return found;
}

/**
 * The field's repeats: whole ones placed as they are, those an edge crosses clipped by it, each distinct crossing once.
 * Placements run row by row from the near edge to the far one, each row from left to right.
 */
export async function composeField(layout: Layout, field: Box, drawn: Drawn[]): Promise<Region[]> {
  const { pitch, phase } = layout;
  const columns = centres(field.right - field.left, pitch.across, phase.across).map((d) => field.left + d);
  const rows = centres(field.bottom - field.top, pitch.along, phase.along).map((d) => field.bottom - d);
  const regions: Region[] = [];
  for (const { part, pieces } of drawn) {
    const reach = piecesBox(pieces);
    const acrossBands = spread(columns, reach.left, reach.right, field.left, field.right);
    const alongBands = spread(rows, reach.top, reach.bottom, field.top, field.bottom);
    for (const along of alongBands) {
      for (const across of acrossBands) {
        const cut = [across.low, across.high, along.low, along.high].some(Number.isFinite);
        const kept = cut ? await clip(pieces, opening(across, along, reach)) : pieces;
        if (kept.length > 0) regions.push({ element: 'field', part, pieces: kept, cut, at: pairs(across, along) });
      }
    }
  }
  return regions;
}
