import type { Point } from '../src/geometry/path.ts';
import { defineMotif, type Lines } from '../src/motif/motif.ts';
import { inset, polygon } from '../src/motif/shapes.ts';

/** No blade is cut between two wheels. The pattern mirrors about slanting lines only. */
const WHEELS: Lines = { mirrors: [], whole: [0], half: [] };

/** Four blades about the centre: each quarter of the cell cut on its diagonal, one half painted. The ground makes wheels that turn the other way. */
export default defineMotif({
  name: 'pinwheel',
  kind: 'field',
  summary: 'Wheels of four three-cornered blades; the ground between makes wheels that turn the other way.',
  parameters: {
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two blades as a share of the repeat',
      min: 0.02,
      max: 0.05,
      default: 0.03,
    },
  },
  ratio: 1,
  lines: { across: WHEELS, along: WHEELS },
  symmetry: 'p4gm',
  made: 'sheet',
  draw({ across, along }, { rib }, pen) {
    const half = (rib * Math.min(across, along)) / 2;
    const [a, b] = [across / 2, along / 2];
    const blades: Point[][] = [
      [
        [0, 0],
        [a, -b],
        [a, 0],
      ],
      [
        [0, 0],
        [a, b],
        [0, b],
      ],
      [
        [0, 0],
        [-a, b],
        [-a, 0],
      ],
      [
        [0, 0],
        [-a, -b],
        [0, -b],
      ],
    ];
    pen.part('field');
    // Only the two short sides lie beside other blades; the long one, the first, stays on the diagonal.
    for (const blade of blades) polygon(pen, inset(blade, [0, half, half]));
  },
});
