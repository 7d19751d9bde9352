import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { circle, ellipse } from '../src/motif/shapes.ts';

const RATIO = 1.2;
/** Height of a reel as a share of a bead's width. */
const REEL = 0.92;

/** The turned moulding: round beads on a string and, between every two, a pair of reels seen from the side. */
export default defineMotif({
  name: 'bead-and-reel',
  kind: 'border',
  summary: 'Round beads on a string, a pair of reels between every two.',
  parameters: {
    bead: { kind: 'ratio', says: 'width of a bead as a share of the border', min: 0.66, max: 0.8, default: 0.76 },
    rib: {
      kind: 'ratio',
      says: 'least width of the ground between bead and reel as a share of the border',
      min: 0.03,
      max: 0.055,
      default: 0.05,
    },
  },
  ratio: RATIO,
  lines: { across: CENTRED, along: CENTRED },
  symmetry: 'p2mm',
  refuses: { mitre: 'the reels next to the corner would be squeezed into slivers; turn with a bead (own)' },
  made: 'sheet',
  corner(size, { bead }, pen) {
    pen.part('border');
    circle(pen, 0, 0, (bead * size) / 2);
  },
  draw({ across, along }, { bead, rib }, pen) {
    const unit = across / RATIO;
    pen.part('border');
    ellipse(pen, 0, 0, (bead * unit) / 2, (bead * along) / 2);
    const thick = ((RATIO - bead - 3 * rib) / 2) * unit;
    const height = (REEL * bead * along) / 2;
    // Two curves that swell three quarters as far as their handles.
    const reach = (thick / 2) * (4 / 3);
    pen.part('border-alternate');
    for (const side of [-1, 1]) {
      const x = (side * (across - rib * unit - thick)) / 2;
      pen.moveTo(x, -height);
      pen.curveTo(x + reach, -height * 0.4, x + reach, height * 0.4, x, height);
      pen.curveTo(x - reach, height * 0.4, x - reach, -height * 0.4, x, -height);
      pen.close();
    }
  },
});
