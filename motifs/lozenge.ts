import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { polygon } from '../src/motif/shapes.ts';

/**
 * A long diamond, its tips on the middles of the cell's sides. True to shape it is √3 times as long as wide:
 * two equal-sided triangles base to base, with corners of 60° and 120°. Half of the cell is painted.
 */
export default defineMotif({
  name: 'lozenge',
  kind: 'field',
  summary: 'Long diamonds of 60° and 120°, tip to tip, their length along the work.',
  parameters: {},
  ratio: Math.sqrt(3),
  symmetry: 'p2mm',
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
