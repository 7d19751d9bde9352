import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { inset, polygon } from '../src/motif/shapes.ts';

const RATIO = Math.sqrt(3);

/**
 * A long diamond of small diamonds in two colours by turns. True to shape all have corners of 60° and
 * 120°. Ribs of ground, as wide everywhere, part them.
 */
export default defineMotif({
  name: 'chequered-lozenge',
  kind: 'field',
  summary: 'Long diamonds, tip to tip, each a checker of small ones in two colours.',
  parameters: {
    rows: { kind: 'count', says: 'small diamonds along a side', min: 3, max: 5, default: 3 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between small diamonds as a share of the repeat',
      min: 0.02,
      max: 0.03,
      default: 0.025,
    },
  },
  ratio: RATIO,
  lines: { across: CENTRED, along: CENTRED },
  symmetry: 'p2mm',
  made: 'sheet',
  draw({ across, along }, { rows, rib }, pen) {
    const half = (rib * Math.min(across, along / RATIO)) / 2;
    /** Places counted along the two upper sides of the large diamond, from its near tip. */
    const place = (p: number, q: number): Point => [((p - q) / rows / 2) * across, (0.5 - (p + q) / rows / 2) * along];
    for (const [part, turn] of [
      ['field', 0],
      ['alternate', 1],
    ] as const) {
      pen.part(part);
      for (let p = 0; p < rows; p++) {
        for (let q = 0; q < rows; q++) {
          if ((p + q) % 2 !== turn) continue;
          polygon(pen, inset([place(p, q), place(p + 1, q), place(p + 1, q + 1), place(p, q + 1)], half));
        }
      }
    }
  },
});
