import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { circle, leaf, movedPen } from '../src/motif/shapes.ts';

/**
 * Four sprays of leaves that start in pairs from bindings near and far and meet left and right at a berry, open in the middle for letters. Laid
 * out on a cell of 1 × 1 and stretched to the cell.
 */
export default defineMotif({
  name: 'wreath',
  kind: 'medallion',
  summary: 'A laurel wreath of four sprays, open in the middle.',
  parameters: {
    leaves: { kind: 'count', says: 'pairs of leaves in a quarter', min: 4, max: 8, default: 5 },
    leaf: { kind: 'ratio', says: 'width of a leaf as a share of its length', min: 0.3, max: 0.42, default: 0.36 },
  },
  ratio: 1,
  lines: { across: CENTRED, along: CENTRED },
  made: 'sheet',
  draw({ across, along }, { leaves, leaf: plump }, pen) {
    const unit = movedPen(pen, ([x, y]) => [across * x, along * y]);
    const radius = 0.385;
    const start = 0.1;
    const end = Math.PI / 2 - 0.1;
    const step = (end - start) / leaves;
    const at = (r: number, angle: number): Point => [r * Math.cos(angle), r * Math.sin(angle)];
    const spray = (sx: number, sy: number): void => {
      const quarter = movedPen(unit, ([x, y]) => [sx * x, sy * y]);
      for (let i = 0; i < leaves; i++) {
        // Angles run from the binding, on the along line, towards the berry.
        const root = Math.PI / 2 - (start + i * step);
        const tip = root - 1.25 * step;
        for (const side of [-1, 1]) {
          const from = at(radius + side * 0.012, root);
          const to = at(radius + side * 0.09, tip);
          leaf(quarter, from, to, plump * Math.hypot(to[0] - from[0], to[1] - from[1]));
        }
      }
    };
    unit.part('medallion');
    for (const sx of [-1, 1]) for (const sy of [-1, 1]) spray(sx, sy);
    unit.part('medallion-alternate');
    for (const side of [-1, 1]) circle(unit, side * radius, 0, 0.03);
  },
});
