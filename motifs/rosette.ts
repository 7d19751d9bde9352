import { defineMotif, PLAIN } from '../src/motif/motif.ts';
import { blade, circle, movedPen } from '../src/motif/shapes.ts';

/**
 * Round-ended petals about an eye, one of them on the diagonal towards the outer corner of the block. Laid out on a block of 1 × 1 and
 * stretched to the cell.
 */
export default defineMotif({
  name: 'rosette',
  kind: 'corner',
  summary: 'Round-ended petals about an eye.',
  parameters: {
    petals: { kind: 'count', says: 'petals round the eye', min: 5, max: 12, default: 8 },
    eye: { kind: 'ratio', says: 'width of the eye as a share of the block', min: 0.16, max: 0.26, default: 0.2 },
    rib: {
      kind: 'ratio',
      says: 'least width of the ground between two petals as a share of the block',
      min: 0.02,
      max: 0.045,
      default: 0.04,
    },
  },
  ratio: 1,
  lines: { across: PLAIN, along: PLAIN },
  made: 'sheet',
  draw({ across, along }, { petals, eye, rib }, pen) {
    const unit = movedPen(pen, ([x, y]) => [across * x, along * y]);
    unit.part('corner');
    for (let i = 0; i < petals; i++) {
      blade(unit, ((2 * i) / petals - 3 / 4) * Math.PI, Math.PI / petals, eye / 2 + rib, 0.5 - rib / 2, rib);
    }
    unit.part('corner-alternate');
    circle(unit, 0, 0, eye / 2);
  },
});
