import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { arc } from '../src/motif/shapes.ts';

/** Half the opening of the arc that ends a blade. */
const BULGE = Math.PI / 3;

/**
 * Half-round fans in rows, every second row moved half a fan across. Round-ended blades open about a half disc. Laid out on a cell of
 * 1 × 1, the pivot at its middle, and stretched to the cell.
 */
export default defineMotif({
  name: 'fan',
  kind: 'field',
  summary: 'Rows of half-round fans of round-ended blades, every second row moved half a fan across.',
  parameters: {
    blades: { kind: 'count', says: 'blades in a fan', min: 5, max: 9, default: 7 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two blades as a share of the repeat',
      min: 0.02,
      max: 0.03,
      default: 0.025,
    },
  },
  ratio: 1,
  lattice: 'brick',
  lines: { across: CENTRED, along: { mirrors: [], whole: [0], half: [] } },
  symmetry: 'cm',
  made: 'sheet',
  draw({ across, along }, { blades, rib }, pen) {
    const half = Math.PI / 2 / blades;
    const inner = 0.16;
    const disc = inner - rib;
    const reach = 0.5 - rib / 2;

    pen.part('field');
    // The end is an arc of 2 × BULGE about a point on the blade's axis, between flanks half a rib inside the rays at ± half.
    const round =
      (reach * Math.sin(half) - rib / 2) / (Math.sin(BULGE) * Math.cos(half) + (1 - Math.cos(BULGE)) * Math.sin(half));
    const middle = reach - round;
    const foot = half - Math.asin(rib / 2 / inner);
    for (let i = 0; i < blades; i++) {
      const axis = Math.PI + (2 * i + 1) * half;
      const place = (r: number, angle: number): Point => [
        across * r * Math.cos(axis + angle),
        along * r * Math.sin(axis + angle),
      ];
      const [mx, my] = place(middle, 0);
      const shoulder: Point = [
        mx + across * round * Math.cos(axis - BULGE),
        my + along * round * Math.sin(axis - BULGE),
      ];
      pen.moveTo(...place(inner, -foot));
      pen.lineTo(...shoulder);
      arc(pen, mx, my, across * round, along * round, axis - BULGE, axis + BULGE);
      pen.lineTo(...place(inner, foot));
      arc(pen, 0, 0, across * inner, along * inner, axis + foot, axis - foot);
      pen.close();
    }
    pen.part('alternate');
    const edge = Math.asin(rib / 2 / disc);
    pen.moveTo(-across * disc * Math.cos(edge), (-along * rib) / 2);
    arc(pen, 0, 0, across * disc, along * disc, Math.PI + edge, 2 * Math.PI - edge);
    pen.close();
  },
});
