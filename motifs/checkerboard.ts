import { defineMotif, type Lines } from '../src/motif/motif.ts';
import { rectangle } from '../src/motif/shapes.ts';

/**
 * No square is cut where two squares meet (0 and 0.5), but only the middle of a square mirrors the board (0.25 and 0.75).
 * An odd number of squares therefore lands whole and mirrors; with odd numbers both ways all four corners are alike,
 * and painted where the field starts with a whole repeat.
 */
const SQUARES: Lines = { mirrors: [0.25, 0.75], whole: [0, 0.5], half: [0.25, 0.75] };

/** One repeat is a block of 2 × 2 squares; the left near one and the right far one are painted. */
export default defineMotif({
  name: 'checkerboard',
  kind: 'field',
  summary: 'Squares, painted and bare by turns.',
  parameters: {},
  ratio: 1,
  counts: { each: 'square', many: 'squares', across: 2, along: 2 },
  symmetry: 'p4mm',
  lines: { across: SQUARES, along: SQUARES },
  made: 'sheet',
  draw({ across, along }, _settings, pen) {
    pen.part('field');
    rectangle(pen, -across / 4, along / 4, across / 2, along / 2);
    rectangle(pen, across / 4, -along / 4, across / 2, along / 2);
  },
});
