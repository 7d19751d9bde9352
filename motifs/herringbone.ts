import type { Point } from '../src/geometry/path.ts';
import { defineMotif, type Lines } from '../src/motif/motif.ts';
import { inset, polygon } from '../src/motif/shapes.ts';

/** Length of a plank in widths. */
const LENGTH = 4;

/** The planks interlock, so that every straight line cuts some; glides bring the two kinds onto each other, and nothing mirrors. */
const GLIDES: Lines = { mirrors: [], whole: [0], half: [] };

/**
 * Planks laid slanting, the end of each against the flank of the next, so that they interlock in zigzags. One repeat holds one plank of each
 * kind and is as wide as a plank's length times √2, as long as its width times √2; the planks reach beyond it. Half a turn about the middle of the
 * repeat brings all planks onto each other, so that opposite edges cut them alike and share a sheet.
 */
export default defineMotif({
  name: 'herringbone',
  kind: 'field',
  summary: 'Slanting planks, end against flank, in two colours by the way they lean.',
  parameters: {
    rib: {
      kind: 'ratio',
      says: 'width of the ground between planks as a share of the repeat',
      min: 0.02,
      max: 0.04,
      default: 0.025,
    },
  },
  ratio: 1 / LENGTH,
  lines: { across: GLIDES, along: GLIDES },
  symmetry: 'p2',
  made: 'sheet',
  draw({ across, along }, { rib }, pen) {
    const half = (rib * Math.min(across, along * LENGTH)) / 2;
    // A plank's length spans half a repeat across, its width half a repeat along.
    const plank = (lean: 1 | -1, aside: number): Point[] => {
      const place = (length: number, width: number): Point => [
        ((lean * (length - width / LENGTH)) / 2 + aside) * across,
        ((length * LENGTH + width) / 2 + aside) * along,
      ];
      return [place(-0.5, -0.5), place(0.5, -0.5), place(0.5, 0.5), place(-0.5, 0.5)];
    };
    pen.part('field');
    polygon(pen, inset(plank(-1, 0), half));
    pen.part('alternate');
    polygon(pen, inset(plank(1, 1 / 2), half));
  },
});
