import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { inset, polygon } from '../src/motif/shapes.ts';

/**
 * Octagons side by side with a small square on point between four. Left alone, the octagon has eight equal sides,
 * each 1 / (1 + √2) of the repeat, and so has the square before the ribs are taken out. The unit is an octagon and
 * the dot at its right far corner.
 */
export default defineMotif({
  name: 'octagon-and-dot',
  kind: 'field',
  summary: 'Octagons with a small square on point between every four.',
  parameters: {
    corner: {
      kind: 'ratio',
      says: 'what is cut off each corner of a square to make the octagon, as a share of the repeat',
      min: 0.16,
      max: 0.32,
      default: 1 - Math.SQRT1_2,
    },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between octagons and dots as a share of the repeat',
      min: 0.02,
      max: 0.06,
      default: 0.03,
    },
  },
  ratio: 1,
  lines: { across: CENTRED, along: CENTRED },
  symmetry: 'p4mm',
  made: 'sheet',
  draw({ across, along }, { corner, rib }, pen) {
    const half = (rib * Math.min(across, along)) / 2;
    const [a, b] = [across / 2, along / 2];
    const [cutA, cutB] = [corner * across, corner * along];
    pen.part('field');
    polygon(
      pen,
      inset(
        [
          [cutA - a, -b],
          [a - cutA, -b],
          [a, cutB - b],
          [a, b - cutB],
          [a - cutA, b],
          [cutA - a, b],
          [-a, b - cutB],
          [-a, cutB - b],
        ],
        half,
      ),
    );
    pen.part('alternate');
    polygon(
      pen,
      inset(
        [
          [a, -b - cutB],
          [a + cutA, -b],
          [a, cutB - b],
          [a - cutA, -b],
        ],
        half,
      ),
    );
  },
});
