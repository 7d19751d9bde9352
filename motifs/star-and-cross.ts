import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { inset, polygon } from '../src/motif/shapes.ts';

/** Distance of the notches of a star made by two squares, its tips at 1. */
const NOTCH = Math.SQRT1_2 / Math.cos(Math.PI / 8);

/** The star's corners, clockwise from its right tip. */
const STAR = Array.from({ length: 16 }, (_, i): Point => {
  const [angle, r] = [(i * Math.PI) / 8, i % 2 === 0 ? 1 : NOTCH];
  return [r * Math.cos(angle), r * Math.sin(angle)];
});

/** The cross about its own middle: a quarter of the star's outline, as seen from the far right, in all four quarters. */
const CROSS = Array.from({ length: 16 }, (_, i): Point => {
  let [x, y] = STAR[12 + (i % 4)]!;
  [x, y] = [x - 1, y + 1];
  for (let turn = 0; turn < Math.floor(i / 4); turn++) [x, y] = [y, -x];
  return [x, y];
});

/**
 * Eight-pointed stars, each of two squares laid over each other, and the pointed crosses that fill the room between
 * four. The unit is a star and the cross at its right far corner.
 */
export default defineMotif({
  name: 'star-and-cross',
  kind: 'field',
  summary: 'Eight-point stars of two squares, with pointed crosses between them.',
  parameters: {
    rib: {
      kind: 'ratio',
      says: 'width of the ground between stars and crosses as a share of the repeat',
      min: 0.02,
      max: 0.06,
      default: 0.03,
    },
  },
  ratio: 1,
  lines: { across: CENTRED, along: CENTRED },
  symmetry: 'p4mm',
  made: 'sheet',
  draw({ across, along }, { rib }, pen) {
    const half = (rib * Math.min(across, along)) / 2;
    const [a, b] = [across / 2, along / 2];
    pen.part('field');
    polygon(
      pen,
      inset(
        STAR.map(([x, y]): Point => [a * x, b * y]),
        half,
      ),
    );
    pen.part('alternate');
    polygon(
      pen,
      inset(
        CROSS.map(([x, y]): Point => [a * (1 + x), b * (y - 1)]),
        half,
      ),
    );
  },
});
