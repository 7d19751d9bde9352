import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { polygon } from '../src/motif/shapes.ts';

/**
 * Isosceles teeth that stand on the outer edge of the border and point inward, one a repeat. True to shape, and with the
 * settings left alone, every tooth has three equal sides and the teeth meet at their feet.
 */
export default defineMotif({
  name: 'sawtooth',
  kind: 'border',
  summary: 'Teeth standing on the outer edge, pointing at the field.',
  parameters: {
    height: {
      kind: 'ratio',
      says: 'height of a tooth as a share of the border',
      min: 0.5,
      max: 1,
      default: Math.sqrt(3) / 2,
    },
    base: {
      kind: 'ratio',
      says: 'foot of a tooth as a share of its repeat; 1 lets them meet',
      min: 0.7,
      max: 1,
      default: 1,
    },
  },
  ratio: 1,
  symmetry: 'p1m1',
  lines: { across: CENTRED, along: { mirrors: [], whole: [0], half: [] } },
  made: 'sheet',
  draw({ across, along }, { height, base }, pen) {
    const outer = -along / 2;
    pen.part('border');
    polygon(pen, [
      [(-across * base) / 2, outer],
      [(across * base) / 2, outer],
      [0, outer + along * height],
    ]);
  },
});
