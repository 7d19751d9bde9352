import type { Point } from '../src/geometry/path.ts';
import { defineMotif, type Lines } from '../src/motif/motif.ts';
import { arc } from '../src/motif/shapes.ts';

/** No petal is cut through the hearts of the flowers, at the middle of the cell and at its corners. */
const FLOWERS: Lines = { mirrors: [0, 0.5], whole: [0, 0.5], half: [] };

/** Side of the largest square between four arcs, as a share of the repeat. */
const ROOM = 1 - Math.SQRT1_2;

/**
 * Four petals from the centre to the corners of the cell, as circles of half the repeat's width about the middles of its sides cut them
 * out of each other. A rib of ground parts the petals' tips. Laid out on a cell of 1 × 1 and stretched to the cell.
 */
export default defineMotif({
  name: 'four-petal',
  kind: 'field',
  summary: 'Pointed petals in fours, as overlapping circles make them; hollow-sided squares of ground between.',
  parameters: {
    rib: {
      kind: 'ratio',
      says: 'width of the ground between the tips of two petals as a share of the repeat',
      min: 0.02,
      max: 0.06,
      default: 0.035,
    },
  },
  ratio: 1,
  lines: { across: FLOWERS, along: FLOWERS },
  symmetry: 'p4mm',
  made: 'sheet',
  rooms: ({ across, along }) => [
    { x: across / 2, y: 0, across: ROOM * across, along: ROOM * along },
    { x: 0, y: -along / 2, across: ROOM * across, along: ROOM * along },
  ],
  draw({ across, along }, { rib }, pen) {
    // Each tip lies half a rib from both of the cell's middle lines; the arcs are opened a little to end there.
    const back = rib / 2;
    const radius = Math.hypot(0.5 - back, back);
    const turn = Math.atan2(back, 0.5 - back);
    const swing = (x: number, y: number, from: number, to: number): void =>
      arc(pen, across * x, along * y, across * radius, along * radius, from, to);
    const quarter = Math.PI / 2;
    const side = (angle: number): Point => [Math.cos(angle) / 2, Math.sin(angle) / 2];

    pen.part('field');
    for (let i = 0; i < 4; i++) {
      const [first, last] = [i * quarter, (i + 1) * quarter];
      const inner = Math.SQRT2 * back;
      pen.moveTo(across * inner * Math.cos(first + quarter / 2), along * inner * Math.sin(first + quarter / 2));
      swing(...side(first), last + quarter - turn, last + turn);
      swing(...side(last), first - turn, first - quarter + turn);
      pen.close();
    }
  },
});
