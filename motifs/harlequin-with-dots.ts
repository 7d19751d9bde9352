import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { arc, circle } from '../src/motif/shapes.ts';

const RATIO = Math.sqrt(3);

/**
 * Long diamonds tip to tip with a dot on every crossing; the tips are hollowed about the dots, so that a rib of
 * ground runs round each. True to shape the diamonds have corners of 60° and 120°. Dots stay round when the cell is
 * stretched. The unit has the dots at its right and far tips; its neighbours bring the others.
 */
export default defineMotif({
  name: 'harlequin-with-dots',
  kind: 'field',
  summary: 'Long diamonds, painted and bare by turns, with a dot on every crossing.',
  parameters: {
    dot: { kind: 'ratio', says: 'width of a dot as a share of a diamond’s width', min: 0.12, max: 0.26, default: 0.18 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground round a dot as a share of a diamond’s width',
      min: 0.02,
      max: 0.05,
      default: 0.04,
    },
  },
  ratio: RATIO,
  lines: { across: CENTRED, along: CENTRED },
  symmetry: 'p2mm',
  made: 'sheet',
  rooms({ across, along }, { rib }) {
    // In the bare diamond, half as wide and long, a rib away from the painted ones.
    const taken = rib * Math.min(across, along / RATIO) * Math.hypot(1 / across, 1 / along) * 2;
    return [{ x: across / 2, y: -along / 2, across: (across / 2) * (1 - taken), along: (along / 2) * (1 - taken) }];
  },
  draw({ across, along }, { dot, rib }, pen) {
    const width = Math.min(across, along / RATIO);
    const round = (dot * width) / 2;
    const hollow = round + rib * width;
    const [a, b] = [across / 2, along / 2];
    const slope = Math.atan2(b, a);

    pen.part('field');
    pen.moveTo(hollow * Math.cos(slope), hollow * Math.sin(slope) - b);
    for (const [x, y, axis, half] of [
      [a, 0, Math.PI, slope],
      [0, b, 1.5 * Math.PI, Math.PI / 2 - slope],
      [-a, 0, 2 * Math.PI, slope],
      [0, -b, 2.5 * Math.PI, Math.PI / 2 - slope],
    ] as const) {
      pen.lineTo(x + hollow * Math.cos(axis + half), y + hollow * Math.sin(axis + half));
      arc(pen, x, y, hollow, hollow, axis + half, axis - half);
    }
    pen.close();

    pen.part('alternate');
    circle(pen, a, 0, round);
    circle(pen, 0, -b, round);
  },
});
