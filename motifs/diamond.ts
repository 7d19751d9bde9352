import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { polygon } from '../src/motif/shapes.ts';

/** A square set on its corner: as wide as its side times √2, its tips on the middles of the cell's sides. Half of the cell is painted. */
export default defineMotif({
  name: 'diamond',
  kind: 'field',
  summary: 'Squares on point, tip to tip; squares of ground show between them.',
  parameters: {},
  ratio: 1,
  symmetry: 'p4mm',
  lines: { across: CENTRED, along: CENTRED },
  made: 'sheet',
  draw({ across, along }, _settings, pen) {
    pen.part('field');
    polygon(pen, [
      [0, -along / 2],
      [across / 2, 0],
      [0, along / 2],
      [-across / 2, 0],
    ]);
  },
});
