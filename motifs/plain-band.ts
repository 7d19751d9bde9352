import { defineMotif, PLAIN } from '../src/motif/motif.ts';
import { rectangle } from '../src/motif/shapes.ts';

/** A band of one colour, as wide as the border. */
export default defineMotif({
  name: 'plain-band',
  kind: 'border',
  summary: 'A plain band, painted between two lines of tape.',
  parameters: {},
  ratio: 1,
  symmetry: 'p2mm',
  lines: { across: PLAIN, along: PLAIN },
  made: 'tape',
  draw({ across, along }, _settings, pen) {
    pen.part('border');
    rectangle(pen, 0, 0, across, along);
  },
});
