import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { arc, movedPen } from '../src/motif/shapes.ts';

const RATIO = Math.sqrt(3);
/** Where the two arcs of a flank flow into each other, seen from the middle of either. */
const BEND = Math.PI / 3;

/**
 * A pointed leaf between two bracket-like bands, half-dropped so that every flank is shared with a neighbour. Each
 * flank is set out with a compass in two arcs of 60°: one about the leaf's own middle, one about that of the
 * neighbour, with half the repeat's width as radius. Laid out on a cell of 1 × √3 and stretched to the cell.
 */
export default defineMotif({
  name: 'ogee',
  kind: 'field',
  summary: 'Pointed leaves of flowing outline, each between two bands, every second column dropped by half.',
  parameters: {
    band: { kind: 'ratio', says: 'width of a band as a share of the repeat', min: 0.05, max: 0.12, default: 0.08 },
    gap: {
      kind: 'ratio',
      says: 'width of the ground between bands and leaf as a share of the repeat',
      min: 0.03,
      max: 0.1,
      default: 0.07,
    },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two bands as a share of the repeat',
      min: 0.02,
      max: 0.05,
      default: 0.035,
    },
  },
  ratio: RATIO,
  lattice: 'half-drop',
  lines: { across: CENTRED, along: CENTRED },
  symmetry: 'c2mm',
  made: 'sheet',
  draw({ across, along }, { band, gap, rib }, page) {
    // About the middle of the cell's left side, so that none stands on a corner of the field, where it would be quartered.
    const pen = movedPen(page, ([x, y]) => [x - across / 2, y]);
    const [sx, sy] = [across, along / RATIO];
    const [cx, cy] = [0.5, RATIO / 2];
    /** An arc of one flank, right (1) or left (-1), as it would be drawn on the right. */
    const swing = (side: 1 | -1, x: number, y: number, r: number, from: number, to: number): void => {
      const turned = (angle: number): number => (side === 1 ? angle : Math.PI - angle);
      arc(pen, sx * side * x, sy * y, sx * r, sy * r, turned(from), turned(to));
    };
    /** Angle, about the far neighbour, at which a flank `by` inside the true one ends `beside` the upright axis. */
    const end = (by: number, beside: number): number => Math.acos((beside - cx) / (0.5 + by));
    const farEnd = (by: number, beside: number): number => (0.5 + by) * Math.sin(end(by, beside)) - cy;
    const toNear = (side: 1 | -1, by: number, beside: number): void => {
      swing(side, cx, -cy, 0.5 + by, end(by, beside), Math.PI - BEND);
      swing(side, 0, 0, 0.5 - by, -BEND, BEND);
      swing(side, cx, cy, 0.5 + by, BEND - Math.PI, -end(by, beside));
    };
    const toFar = (side: 1 | -1, by: number, beside: number): void => {
      swing(side, cx, cy, 0.5 + by, -end(by, beside), BEND - Math.PI);
      swing(side, 0, 0, 0.5 - by, BEND, -BEND);
      swing(side, cx, -cy, 0.5 + by, Math.PI - BEND, end(by, beside));
    };

    pen.part('field');
    const half = rib / 2;
    for (const side of [1, -1] as const) {
      pen.moveTo(sx * side * half, sy * farEnd(half, half));
      toNear(side, half, half);
      pen.lineTo(sx * side * half, -sy * farEnd(half + band, half));
      toFar(side, half + band, half);
      pen.close();
    }
    pen.part('alternate');
    const leaf = half + band + gap;
    pen.moveTo(0, sy * farEnd(leaf, 0));
    toNear(1, leaf, 0);
    toFar(-1, leaf, 0);
    pen.close();
  },
});
