import type { Point } from '../src/geometry/path.ts';
import { defineMotif } from '../src/motif/motif.ts';
import { inset, polygon } from '../src/motif/shapes.ts';

/**
 * Zigzag bands at 45°, mitred at every bend, with a rib of ground in each mitre. Left alone, bands and ground are equally wide,
 * and every band just keeps to its own repeat.
 */
export default defineMotif({
  name: 'chevron',
  kind: 'field',
  summary: 'Zigzag bands, mitred at the bends, pointing along the work.',
  parameters: {
    band: { kind: 'ratio', says: 'height of a band as a share of the repeat', min: 0.4, max: 0.5, default: 0.5 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground in a mitre as a share of the repeat',
      min: 0.02,
      max: 0.05,
      default: 0.025,
    },
  },
  ratio: 1,
  lines: {
    across: { mirrors: [0, 0.5], whole: [0, 0.5], half: [] },
    along: { mirrors: [], whole: [0], half: [] },
  },
  symmetry: 'p2mg',
  made: 'sheet',
  draw({ across, along }, { band, rib }, pen) {
    const half = (rib * Math.min(across, along)) / 2;
    const top = -(0.5 + band) / 2;
    const leg = (side: 1 | -1): Point[] => [
      [0, along * top],
      [(side * across) / 2, along * (top + 0.5)],
      [(side * across) / 2, along * (top + 0.5 + band)],
      [0, along * (top + band)],
    ];
    pen.part('field');
    for (const side of [-1, 1] as const) polygon(pen, inset(leg(side), [0, half, 0, half]));
  },
});
