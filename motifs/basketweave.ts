import { defineMotif, type Lines } from '../src/motif/motif.ts';
import { rectangle } from '../src/motif/shapes.ts';

/** No plank is cut between two squares (0 and 0.5), but only the middle of a square mirrors the weave (0.25 and 0.75). */
const SQUARES: Lines = { mirrors: [0.25, 0.75], whole: [0, 0.5], half: [0.25, 0.75] };

/**
 * Squares of planks side by side, lying and standing by turns, as wicker passes over and under. One repeat is a block of 2 × 2
 * squares; a rib of ground, as wide everywhere, parts planks and squares alike.
 */
export default defineMotif({
  name: 'basketweave',
  kind: 'field',
  summary: 'Squares of planks side by side, lying and standing by turns.',
  parameters: {
    planks: { kind: 'count', says: 'planks in a square', min: 2, max: 4, default: 3 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between planks as a share of the repeat',
      min: 0.02,
      max: 0.04,
      default: 0.025,
    },
  },
  ratio: 1,
  counts: { each: 'square', many: 'squares', across: 2, along: 2 },
  lines: { across: SQUARES, along: SQUARES },
  symmetry: 'c2mm',
  made: 'sheet',
  draw({ across, along }, { planks, rib }, pen) {
    const gap = rib * Math.min(across, along);
    const [wide, high] = [across / 2, along / 2];
    const offsets = Array.from({ length: planks }, (_, i) => (i + 0.5) / planks - 0.5);
    pen.part('field');
    for (const side of [1, -1]) {
      for (const offset of offsets) {
        const y = high * (offset + side / 2);
        rectangle(pen, (-side * wide) / 2, y, wide - gap, high / planks - gap);
      }
    }
    pen.part('alternate');
    for (const side of [1, -1]) {
      for (const offset of offsets) {
        const x = wide * (offset + side / 2);
        rectangle(pen, x, (side * high) / 2, wide / planks - gap, high - gap);
      }
    }
  },
});
