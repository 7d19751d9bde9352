import type { Drawing } from '../compose/drawing.ts';
import { boxHeight, boxWidth, pieceArea } from '../geometry/measure.ts';
import type { Part } from '../motif/motif.ts';

/** The parts that a drawing has, and how much of the work each of them takes, as shares of 1; the ground is what the others leave. */
export function sharesOfParts({ work, regions }: Pick<Drawing, 'work' | 'regions'>): Map<Part, number> {
  const whole = boxWidth(work) * boxHeight(work);
  const shares = new Map<Part, number>([['ground', 1]]);
  for (const { part, pieces, fills, at } of regions) {
    // What fills the gaps of bridges laps over what is painted already, and is small.
    if (fills || at.length === 0) continue;
    const share = (pieces.reduce((sum, piece) => sum + pieceArea(piece), 0) * at.length) / 2 / whole;
    shares.set(part, (shares.get(part) ?? 0) + share);
    shares.set('ground', shares.get('ground')! - share);
  }
  return new Map([...shares].map(([part, share]) => [part, Math.max(0, share)]));
}
