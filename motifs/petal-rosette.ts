import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { blade, circle, movedPen } from '../src/motif/shapes.ts';

/**
 * Rows of round-ended petals about an eye, each row with as many as the last and standing in its gaps, of two colours by turns. Laid out on a
 * cell of 1 × 1 and stretched to the cell.
 */
export default defineMotif({
  name: 'petal-rosette',
  kind: 'medallion',
  summary: 'Rows of round-ended petals about an eye, row in the gaps of row.',
  parameters: {
    pairs: { kind: 'count', says: 'pairs of petals in a row', min: 6, max: 9, default: 6 },
    rings: { kind: 'count', says: 'rows of petals', min: 1, max: 3, default: 2 },
  },
  ratio: 1,
  lines: { across: CENTRED, along: CENTRED },
  made: 'sheet',
  draw({ across, along }, { pairs, rings }, pen) {
    const unit = movedPen(pen, ([x, y]) => [across * x, along * y]);
    const rib = 0.014;
    const half = Math.PI / (2 * pairs);
    const eye = 0.07;
    const deep = (0.49 - eye) / rings;
    for (let ring = 0; ring < rings; ring++) {
      unit.part((rings - ring) % 2 === 1 ? 'medallion' : 'medallion-alternate');
      const from = eye + ring * deep;
      for (let i = 0; i < 2 * pairs; i++) blade(unit, (2 * i + (ring % 2)) * half, half, from + rib, from + deep, rib);
    }
    unit.part('medallion-alternate');
    circle(unit, 0, 0, eye);
  },
});
