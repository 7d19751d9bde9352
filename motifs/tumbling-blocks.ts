import type { Point } from '../src/geometry/path.ts';
import { defineMotif, type Lines } from '../src/motif/motif.ts';
import { inset, polygon } from '../src/motif/shapes.ts';

const RATIO = Math.sqrt(3);

/** Nothing mirrors, as the two painted sides of a block differ; half turns bring it onto itself. No side is cut between two blocks. */
const BLOCKS: Lines = { mirrors: [], whole: [0], half: [] };

/**
 * Blocks seen over a corner: the top is ground, the left side in one colour, the right in the other. All three are
 * diamonds of 60° and 120°. Every second row is moved half a block across. The unit lies so that the top edge of the
 * painted sides' row is at the far side of the cell.
 */
export default defineMotif({
  name: 'tumbling-blocks',
  kind: 'field',
  summary: 'Stacked blocks seen over a corner: bare tops, sides in two colours.',
  parameters: {
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two sides as a share of the repeat',
      min: 0.02,
      max: 0.045,
      default: 0.025,
    },
  },
  ratio: RATIO,
  lattice: 'brick',
  lines: { across: BLOCKS, along: BLOCKS },
  symmetry: 'p2',
  made: 'sheet',
  draw({ across, along }, { rib }, pen) {
    const half = (rib * Math.min(across, along / RATIO)) / 2;
    const [a, b] = [across / 2, along / 2];
    const side = (right: 1 | -1): Point[] => [
      [0, (-2 * b) / 3],
      [right * a, -b],
      [right * a, -b / 3],
      [0, 0],
    ];
    pen.part('field');
    polygon(pen, inset(side(-1), half));
    pen.part('alternate');
    polygon(pen, inset(side(1), half));
  },
});
