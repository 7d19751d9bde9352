import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { polygon, rectangle } from '../src/motif/shapes.ts';

/**
 * Upright crosses of four equal arms, set on point so that they nearly meet corner to corner, and a square where four arms end.
 * Left alone, every arm is about as long as it is wide, which makes a cross of five squares. The unit has the square at its right; its
 * neighbours bring the others.
 */
export default defineMotif({
  name: 'greek-cross',
  kind: 'field',
  summary: 'Crosses of four equal arms set on point, a small square between the ends of every four.',
  parameters: {
    arm: { kind: 'ratio', says: 'width of an arm as a share of the repeat', min: 0.2, max: 0.25, default: 0.22 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two crosses as a share of the repeat',
      min: 0.02,
      max: 0.05,
      default: 0.035,
    },
  },
  ratio: 1,
  lattice: 'on-point',
  lines: { across: CENTRED, along: CENTRED },
  symmetry: 'p4mm',
  made: 'sheet',
  rooms: ({ across, along }, { arm }) =>
    [-1, 1].map((side) => ({
      x: across / 4,
      y: (side * along) / 4,
      across: (0.5 - arm) * across,
      along: (0.5 - arm) * along,
    })),
  draw({ across, along }, { arm, rib }, pen) {
    // Corner to corner, an arm and the neighbour's lie `rib` apart.
    const h = arm / 2;
    const e = 0.5 - h - rib * Math.SQRT1_2;
    const corners: Point[] = [
      [-h, -e],
      [h, -e],
      [h, -h],
      [e, -h],
      [e, h],
      [h, h],
      [h, e],
      [-h, e],
      [-h, h],
      [-e, h],
      [-e, -h],
      [-h, -h],
    ];
    pen.part('field');
    polygon(
      pen,
      corners.map(([u, v]): Point => [u * across, v * along]),
    );
    pen.part('alternate');
    const side = 2 * (0.5 - e) - 0.13;
    rectangle(pen, across / 2, 0, side * across, side * along);
  },
});
