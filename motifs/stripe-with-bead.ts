import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { circle, rectangle } from '../src/motif/shapes.ts';

/**
 * A string of beads between two fillets, on a ground as wide as the whole stripe. The fillets run along the work; a rib of ground
 * parts them where one repeat ends. Beads stay round when the cell is stretched.
 */
export default defineMotif({
  name: 'stripe-with-bead',
  kind: 'field',
  summary: 'Stripes along the work: a string of beads between two fillets.',
  parameters: {
    beads: { kind: 'count', says: 'beads in a repeat', min: 3, max: 5, default: 4 },
    fillet: { kind: 'ratio', says: 'width of a fillet as a share of the repeat', min: 0.07, max: 0.14, default: 0.1 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between fillets and beads as a share of the repeat',
      min: 0.02,
      max: 0.045,
      default: 0.035,
    },
  },
  ratio: 1,
  lines: { across: CENTRED, along: CENTRED },
  symmetry: 'p2mm',
  made: 'sheet',
  draw({ across, along }, { beads, fillet, rib }, pen) {
    const unit = Math.min(across, along);
    const [wide, gap] = [fillet * unit, rib * unit];
    const pitch = along / beads;
    const bead = Math.min(0.24 * unit, pitch - gap) / 2;
    pen.part('field');
    for (const side of [-1, 1]) rectangle(pen, side * (bead + gap + wide / 2), 0, wide, along - gap);
    pen.part('alternate');
    for (let i = 0; i < beads; i++) circle(pen, 0, (i + 0.5) * pitch - along / 2, bead);
  },
});
