import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { arc, circle, movedPen } from '../src/motif/shapes.ts';

/** A disc in a row of rays, long and short by turns, of two colours. Laid out on a cell of 1 × 1 and stretched to the cell. */
export default defineMotif({
  name: 'sunburst',
  kind: 'medallion',
  summary: 'A disc with long and short rays by turns.',
  parameters: {
    pairs: { kind: 'count', says: 'pairs of long rays', min: 3, max: 7, default: 5 },
    disc: { kind: 'ratio', says: 'width of the disc as a share of the medallion', min: 0.28, max: 0.42, default: 0.34 },
    short: {
      kind: 'ratio',
      says: 'reach of the short rays as a share of the long ones’',
      min: 0.75,
      max: 1,
      default: 0.84,
    },
  },
  ratio: 1,
  lines: { across: CENTRED, along: CENTRED },
  made: 'sheet',
  draw({ across, along }, { pairs, disc, short }, pen) {
    const unit = movedPen(pen, ([x, y]) => [across * x, along * y]);
    const rib = 0.014;
    const reach = 0.49;
    const foot = disc / 2 + rib;
    const half = Math.PI / (4 * pairs);
    /** Its flanks follow the ground between two rays as far as the shoulders, then it runs to a point. */
    const ray = (axis: number, tip: number): void => {
      const shoulder = foot + 0.22 * (tip - foot);
      const at = (r: number, side: number): Point => {
        const angle = axis + side * (half - Math.asin(rib / 2 / r));
        return [r * Math.cos(angle), r * Math.sin(angle)];
      };
      const spread = half - Math.asin(rib / 2 / foot);
      unit.moveTo(...at(foot, -1));
      unit.lineTo(...at(shoulder, -1));
      unit.lineTo(tip * Math.cos(axis), tip * Math.sin(axis));
      unit.lineTo(...at(shoulder, 1));
      unit.lineTo(...at(foot, 1));
      arc(unit, 0, 0, foot, foot, axis + spread, axis - spread);
      unit.close();
    };
    for (const [part, odd, tip] of [
      ['medallion', 0, reach],
      ['medallion-alternate', 1, reach * short],
    ] as const) {
      unit.part(part);
      for (let i = 0; i < 2 * pairs; i++) ray((2 * i + odd) * 2 * half, tip);
    }
    unit.part('medallion');
    circle(unit, 0, 0, disc / 2);
  },
});
