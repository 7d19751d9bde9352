import type { Point } from '../src/geometry/path.ts';
import { defineMotif, type Lines } from '../src/motif/motif.ts';
import { arc, movedPen } from '../src/motif/shapes.ts';

/** The leaves of a flower stand on its diagonals, so that neither of its centre lines cuts anything. */
const PARTED: Lines = { mirrors: [0, 0.5], whole: [0, 0.5], half: [] };

/**
 * The tooth of the early pointed style, seen from above: a low pyramid of four leaves that reach into the corners of a square, each
 * parted along its ridge. The halves towards the edges of the border and those towards the neighbours are of two colours, as if the light
 * fell on them. Laid out on a cell of 2 × 2 and stretched to the cell.
 */
export default defineMotif({
  name: 'dog-tooth',
  kind: 'border',
  summary: 'Four-leaved flowers of the early pointed arch, each leaf halved along its ridge into two colours.',
  parameters: {
    leaf: { kind: 'ratio', says: 'width of a leaf as a share of its length', min: 0.34, max: 0.41, default: 0.38 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground along the ridge of a leaf as a share of the border',
      min: 0.03,
      max: 0.055,
      default: 0.045,
    },
  },
  ratio: 1,
  lines: { across: PARTED, along: PARTED },
  symmetry: 'p2mm',
  made: 'sheet',
  draw({ across, along }, { leaf, rib }, pen) {
    // A leaf runs from `low` to `high` on the diagonal; its side is an arc of a circle about a point beside it.
    const [low, high] = [rib * 1.2, 1 - rib];
    const length = (high - low) * Math.SQRT2;
    const half = (leaf * length) / 2;
    const radius = (length * length) / (8 * half) + half / 2;
    const away = (radius - half) / Math.SQRT2;
    const middle = (low + high) / 2;
    const centre: Point = [middle - away, middle + away];
    // Where the arc crosses the ridge's rib, which takes `rib` from the leaf on either side.
    const reach = Math.acos((radius - half + rib) / radius);
    for (const [part, swap] of [
      ['border', false],
      ['border-alternate', true],
    ] as const) {
      pen.part(part);
      for (const [sx, sy] of [
        [1, 1],
        [-1, 1],
        [-1, -1],
        [1, -1],
      ] as const) {
        const quarter = movedPen(pen, ([x, y]) => {
          const [u, v] = swap ? [y, x] : [x, y];
          return [(sx * across * u) / 2, (sy * along * v) / 2];
        });
        const from = -Math.PI / 4 - reach;
        quarter.moveTo(centre[0] + radius * Math.cos(from), centre[1] + radius * Math.sin(from));
        arc(quarter, ...centre, radius, radius, from, reach - Math.PI / 4);
        quarter.close();
      }
    }
  },
});
