import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { inset, polygon } from '../src/motif/shapes.ts';

const RATIO = Math.sqrt(3);

/**
 * Hexagons in a honeycomb of bars, one bar to every joint, pointed at both ends so that three meet with even ribs.
 * The hexagon stands on a corner, as wide as the repeat; every second row is moved half a repeat across. The unit is
 * a hexagon and the bars on three of its sides.
 */
export default defineMotif({
  name: 'hexagon',
  kind: 'field',
  summary: 'Hexagons in a honeycomb of pointed bars.',
  parameters: {
    bar: { kind: 'ratio', says: 'width of a bar as a share of the repeat', min: 0.08, max: 0.2, default: 0.13 },
    gap: {
      kind: 'ratio',
      says: 'width of the ground between bars and hexagon as a share of the repeat',
      min: 0.02,
      max: 0.12,
      default: 0.08,
    },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between the ends of the bars as a share of the repeat',
      min: 0.02,
      max: 0.05,
      default: 0.03,
    },
  },
  ratio: RATIO,
  lattice: 'brick',
  lines: { across: CENTRED, along: CENTRED },
  symmetry: 'p6mm',
  made: 'sheet',
  draw({ across, along }, { bar, gap, rib }, pen) {
    const width = Math.min(across, along / RATIO);
    const [a, b] = [across / 2, along / 2];
    const corners: Point[] = [
      [0, (-2 * b) / 3],
      [a, -b / 3],
      [a, b / 3],
      [0, (2 * b) / 3],
      [-a, b / 3],
      [-a, -b / 3],
    ];

    pen.part('field');
    polygon(pen, inset(corners, (bar / 2 + gap) * width));

    pen.part('alternate');
    const half = ((bar + rib) * width) / 2;
    for (const [i, middle] of [
      [0, [a, -b]],
      [1, [2 * a, 0]],
      [2, [a, b]],
    ] as [number, Point][]) {
      const [start, end] = [corners[i]!, corners[i + 1]!];
      const [dx, dy] = [end[0] - start[0], end[1] - start[1]];
      // A bar's room: towards the middles of both hexagons as far as it is wide.
      const height = Math.abs(start[0] * end[1] - end[0] * start[1]) / Math.hypot(dx, dy);
      const towards = ([x, y]: Point, [mx, my]: Point): Point => {
        const share = half / height;
        return [x + share * (mx - x), y + share * (my - y)];
      };
      const own: Point = [0, 0];
      polygon(
        pen,
        inset(
          [start, towards(start, middle), towards(end, middle), end, towards(end, own), towards(start, own)],
          (rib * width) / 2,
        ),
      );
    }
  },
});
