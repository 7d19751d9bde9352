import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { band, rectangle } from '../src/motif/shapes.ts';

/** Width of a block as a share of a repeat: the ground beside it is two thirds as wide. */
const BLOCK = 3 / 5;
/** Depth of the fillet and of the ground under it, as shares of the border. */
const FILLET = 0.17;
const GROUND = 0.05;
const DEPTH = 1 - FILLET - GROUND;

/**
 * A course of blocks under a fillet, which lies on the outer edge. The ground between two blocks is two thirds of a block's width, and true to
 * shape a block is twice as deep as it is wide (Vitruvius, De architectura III.5.11).
 */
export default defineMotif({
  name: 'dentil',
  kind: 'border',
  summary: 'A course of blocks under a fillet on the outer edge, set out as on a cornice.',
  parameters: {
    rib: {
      kind: 'ratio',
      says: 'width of the ground that parts the fillet between two blocks as a share of the border',
      min: 0.025,
      max: 0.06,
      default: 0.05,
    },
  },
  ratio: DEPTH / 2 / BLOCK,
  lines: { across: CENTRED, along: { mirrors: [], whole: [0], half: [] } },
  symmetry: 'p1m1',
  refuses: {
    mitre: 'the cut would leave a chip of one block and make an angle of two others',
    butt: 'the fillet would stop short of two sides of the work',
  },
  made: 'sheet',
  corner(size, { rib }, pen) {
    const [edge, end] = [-size / 2, ((1 - rib) * size) / 2];
    pen.part('border');
    const middle = edge + (FILLET * size) / 2;
    band(
      pen,
      [
        [end, middle],
        [middle, middle],
        [middle, end],
      ],
      FILLET * size,
    );
    const low = edge + (FILLET + GROUND) * size;
    rectangle(pen, low + (DEPTH * size) / 2, low + (DEPTH * size) / 2, DEPTH * size, DEPTH * size);
  },
  draw({ across, along }, { rib }, pen) {
    const edge = -along / 2;
    pen.part('border');
    rectangle(pen, 0, edge + (FILLET * along) / 2, across - rib * along, FILLET * along);
    rectangle(pen, 0, ((FILLET + GROUND) * along) / 2, BLOCK * across, DEPTH * along);
  },
});
