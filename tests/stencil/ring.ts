import { CENTRED, defineMotif, type Motif } from '../../src/motif/motif.ts';
import { circle } from '../../src/motif/shapes.ts';

/** A motif with an island in it. */
export const ring: Motif = defineMotif({
  name: 'ring-for-a-test',
  kind: 'field',
  summary: '',
  parameters: {},
  ratio: 1,
  lines: { across: CENTRED, along: CENTRED },
  made: 'sheet',
  draw({ across }, _settings, pen) {
    pen.part('field');
    circle(pen, 0, 0, across / 3);
    circle(pen, 0, 0, across / 5);
  },
});
