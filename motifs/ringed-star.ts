import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { movedPen, polygon, ringBar } from '../src/motif/shapes.ts';

/**
 * A star, a dart in every bay between two points, and a ring of bars round them, as many as there are points. Laid out on a cell of 1 × 1 and
 * stretched to the cell.
 */
export default defineMotif({
  name: 'ringed-star',
  kind: 'medallion',
  summary: 'A star within a ring, a dart in every bay between two points.',
  parameters: {
    pairs: { kind: 'count', says: 'pairs of points', min: 3, max: 8, default: 4 },
    waist: {
      kind: 'ratio',
      says: 'distance of the notches from the middle as a share of the points’ reach',
      min: 0.4,
      max: 0.6,
      default: 0.5,
    },
    ring: {
      kind: 'ratio',
      says: 'width of the ring as a share of the medallion',
      min: 0.03,
      max: 0.06,
      default: 0.045,
    },
  },
  ratio: 1,
  lines: { across: CENTRED, along: CENTRED },
  made: 'sheet',
  draw({ across, along }, { pairs, waist, ring }, pen) {
    const unit = movedPen(pen, ([x, y]) => [across * x, along * y]);
    const rib = 0.014;
    const count = 2 * pairs;
    const half = Math.PI / count;
    const outer = 0.49;
    const inner = outer - ring;
    const reach = inner - rib;
    const ray = (r: number, angle: number): Point => [r * Math.cos(angle), r * Math.sin(angle)];
    unit.part('medallion');
    polygon(
      unit,
      Array.from({ length: 2 * count }, (_, i) => ray(i % 2 === 0 ? reach : waist * reach, i * half)),
    );
    unit.part('medallion-alternate');
    for (let i = 0; i < count; i++) {
      const axis = (2 * i + 1) * half;
      ringBar(unit, axis, half, inner, outer, rib);
      const [c, s] = [Math.cos(axis), Math.sin(axis)];
      const low = waist * reach + 3 * rib;
      const high = reach;
      const wide = (high - low) * 0.2;
      polygon(
        unit,
        (
          [
            [low, 0],
            [high - wide, -wide],
            [high, 0],
            [high - wide, wide],
          ] as Point[]
        ).map(([x, y]): Point => [c * x - s * y, s * x + c * y]),
      );
    }
  },
});
