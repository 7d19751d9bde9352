import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { polygon } from '../src/motif/shapes.ts';

/**
 * Zigzag bands one inside the other, of two colours by turns, one zigzag a repeat, its points towards the outer edge. A repeat is
 * parted from the next where the zigzag turns inward.
 */
export default defineMotif({
  name: 'chevron-border',
  kind: 'border',
  summary: 'Zigzag bands, one inside the other, of two colours by turns.',
  parameters: {
    bands: { kind: 'count', says: 'bands one inside the other', min: 2, max: 3, default: 2 },
    rise: {
      kind: 'ratio',
      says: 'height of the zigzag as a share of the border',
      min: 0.3,
      max: 0.5,
      default: 0.4,
    },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two repeats as a share of the border',
      min: 0.025,
      max: 0.05,
      default: 0.035,
    },
  },
  ratio: 0.8,
  lines: { across: CENTRED, along: { mirrors: [], whole: [0], half: [] } },
  symmetry: 'p1m1',
  made: 'sheet',
  draw({ across, along }, { bands, rise, rib }, pen) {
    const half = across / 2 - (rib * along) / 2;
    const drop = (rise * along * half) / (across / 2);
    // As much ground as makes the slanting gap look like the rib, measured along the border's width.
    const gap = rib * along * Math.hypot(1, (2 * rise * along) / across);
    const thick = (along * (1 - rise) - (bands - 1) * gap) / bands;
    for (let i = 0; i < bands; i++) {
      const top = -along / 2 + i * (thick + gap);
      pen.part(i % 2 === 0 ? 'border' : 'border-alternate');
      polygon(pen, [
        [-half, top + drop],
        [0, top],
        [half, top + drop],
        [half, top + drop + thick],
        [0, top + thick],
        [-half, top + drop + thick],
      ]);
    }
  },
});
