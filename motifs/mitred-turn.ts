import type { Point } from '../src/geometry/path.ts';
import { defineMotif, PLAIN } from '../src/motif/motif.ts';
import { polygon } from '../src/motif/shapes.ts';

/**
 * Bars that turn the corner one inside the other like the members of a picture frame, mitred on the diagonal, of two colours by turns.
 * Laid out on a block of 1 × 1 with its outer corner at 0, 0, and stretched to the cell.
 */
export default defineMotif({
  name: 'mitred-turn',
  kind: 'corner',
  summary: 'Bars that turn the corner one inside the other, mitred like a picture frame.',
  parameters: {
    bars: { kind: 'count', says: 'bars one inside the other', min: 2, max: 5, default: 3 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two bars, and along the mitre, as a share of the block',
      min: 0.025,
      max: 0.06,
      default: 0.05,
    },
  },
  ratio: 1,
  lines: { across: PLAIN, along: PLAIN },
  made: 'sheet',
  draw({ across, along }, { bars, rib }, pen) {
    const thick = (1 - rib * bars) / bars;
    const end = 1 - rib / 2;
    // How far the rib pushes a mitred end along its bar.
    const push = rib / Math.SQRT2;
    for (let i = 0; i < bars; i++) {
      const [low, high] = [rib / 2 + i * (thick + rib), rib / 2 + i * (thick + rib) + thick];
      const bar: Point[] = [
        [low + push, low],
        [end, low],
        ...(i === bars - 1
          ? ([[end, end - push]] as Point[])
          : ([
              [end, high],
              [high + push, high],
            ] as Point[])),
      ];
      pen.part(i % 2 === 0 ? 'corner' : 'corner-alternate');
      for (const turn of [false, true]) {
        polygon(
          pen,
          bar.map(
            ([x, y]): Point =>
              turn ? [across * (y - 0.5), along * (x - 0.5)] : [across * (x - 0.5), along * (y - 0.5)],
          ),
        );
      }
    }
  },
});
