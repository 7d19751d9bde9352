import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { circle, leaf, movedPen } from '../src/motif/shapes.ts';

/**
 * Four sprays of leaves that start in pairs from a berry near and far and meet left and right at another, open in the middle for letters. Laid
 * out on a cell of 1 × 1 and stretched to the cell.
 */
export default defineMotif({
  name: 'wreath',
  kind: 'medallion',
  summary: 'A laurel wreath of four sprays, open in the middle.',
  parameters: {
    leaves: { kind: 'count', says: 'pairs of leaves in a quarter', min: 4, max: 7, default: 5 },
    leaf: { kind: 'ratio', says: 'width of a leaf as a share of its length', min: 0.3, max: 0.38, default: 0.35 },
  },
  ratio: 1,
  lines: { across: CENTRED, along: CENTRED },
  made: 'sheet',
  draw({ across, along }, { leaves, leaf: plump }, pen) {
    const unit = movedPen(pen, ([x, y]) => [across * x, along * y]);
    const radius = 0.385;
    const start = 0.13;
    // A leaf is as long round the wreath as this many steps; the last tip stays clear of the line between the sprays.
    const long = 1.25;
    const step = (Math.PI / 2 - start - 0.035) / (leaves - 1 + long);
    const at = (r: number, angle: number): Point => [r * Math.cos(angle), r * Math.sin(angle)];
    const spray = (sx: number, sy: number): void => {
      const quarter = movedPen(unit, ([x, y]) => [sx * x, sy * y]);
      for (let i = 0; i < leaves; i++) {
        // Angles run from the near or far berry towards the one at the side.
        const root = Math.PI / 2 - (start + i * step);
        const tip = root - long * step;
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
    for (const side of [-1, 1]) {
      circle(unit, side * radius, 0, 0.032);
      circle(unit, 0, side * radius, 0.032);
    }
  },
});
