import { defineMotif, PLAIN } from '../src/motif/motif.ts';
import { rectangle } from '../src/motif/shapes.ts';

/** A corner block of one colour. */
export default defineMotif({
  name: 'plain',
  kind: 'corner',
  summary: 'A plain square, painted between lines of tape.',
  parameters: {},
  ratio: 1,
  lines: { across: PLAIN, along: PLAIN },
  made: 'tape',
  draw({ across, along }, _settings, pen) {
    pen.part('corner');
    rectangle(pen, 0, 0, across, along);
  },
});
