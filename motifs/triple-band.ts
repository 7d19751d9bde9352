import { defineMotif, PLAIN } from '../src/motif/motif.ts';
import { rectangle } from '../src/motif/shapes.ts';

/** A broad band between two narrow ones, which lie on the outer and the inner edge of the border. */
export default defineMotif({
  name: 'triple-band',
  kind: 'border',
  summary: 'A broad band between two narrow ones, painted between lines of tape.',
  parameters: {
    broad: {
      kind: 'ratio',
      says: 'width of the broad band as a share of the border',
      min: 0.3,
      max: 0.5,
      default: 0.42,
    },
    narrow: {
      kind: 'ratio',
      says: 'width of a narrow band as a share of the border',
      min: 0.08,
      max: 0.16,
      default: 0.12,
    },
  },
  ratio: 1,
  lines: { across: PLAIN, along: PLAIN },
  symmetry: 'p2mm',
  refuses: { butt: 'the bands of one side would run dead against the side of another; mitre them' },
  made: 'tape',
  draw({ across, along }, { broad, narrow }, pen) {
    const middle = (along / 2) * (1 - narrow);
    pen.part('border');
    rectangle(pen, 0, 0, across, along * broad);
    pen.part('border-alternate');
    for (const y of [-middle, middle]) rectangle(pen, 0, y, across, along * narrow);
  },
});
