import type { Point } from '../src/geometry/path.ts';
import { defineMotif, PLAIN } from '../src/motif/motif.ts';
import { arc } from '../src/motif/shapes.ts';

/**
 * A fan of blades that opens from the outer corner of the work towards the field, round a quarter disc.
 *
 * Drawn for the left far corner, outer corner at the top left; the other corners are quarter turns of it. It mirrors about
 * its own diagonal, so turned corners are mirror images as well. A rib of ground parts every blade from its neighbours, from
 * the disc and from the sides of the block; a blade is nowhere narrower than a rib.
 */
export default defineMotif({
  name: 'quarter-fan',
  kind: 'corner',
  summary: 'A fan of round-ended blades opening from the outer corner.',
  parameters: {
    blades: { kind: 'count', says: 'blades in the fan', min: 3, max: 9, default: 5 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two blades as a share of the block',
      min: 0.02,
      max: 0.055,
      default: 0.035,
    },
  },
  ratio: 1,
  lines: { across: PLAIN, along: PLAIN },
  made: 'sheet',
  draw({ across, along }, { blades, rib }, pen) {
    // Laid out on a block of 1 × 1 with its outer corner at 0, 0, then stretched to the cell.
    const half = Math.PI / 4 / blades;
    const pivot = rib / 2;
    const inner = Math.max(0.3, rib / Math.sin(half));
    const reach = 1 - rib;
    const disc = inner - rib;
    const [cx, cy] = [across * (pivot - 0.5), along * (pivot - 0.5)];
    const place = (u: number, v: number): Point => [cx + across * u, cy + along * v];

    const blade = (axis: number): void => {
      const [c, s] = [Math.cos(axis), Math.sin(axis)];
      const turned = (u: number, v: number): Point => place(c * u - s * v, s * u + c * v);
      // The round end touches both flanks, which lie half a rib inside the rays at ± half. Its middle lies on a curve between
      // a circle and a square, so that the fan fills the block: blades towards the diagonal are the longer ones.
      const middle = reach / ((c ** 4 + s ** 4) ** (1 / 4) + Math.sin(half));
      const round = middle * Math.sin(half) - rib / 2;
      const shoulder: Point = [middle - round * Math.sin(half), round * Math.cos(half)];
      const foot = half - Math.asin(rib / 2 / inner);
      const quarter = Math.PI / 2 + half;
      pen.moveTo(...turned(inner * Math.cos(foot), -inner * Math.sin(foot)));
      pen.lineTo(...turned(shoulder[0], -shoulder[1]));
      arc(pen, ...turned(middle, 0), across * round, along * round, axis - quarter, axis + quarter);
      pen.lineTo(...turned(inner * Math.cos(foot), inner * Math.sin(foot)));
      arc(pen, cx, cy, across * inner, along * inner, axis + foot, axis - foot);
      pen.close();
    };

    pen.part('corner');
    for (let i = 0; i < blades; i++) blade((2 * i + 1) * half);

    const edge = Math.asin(rib / 2 / disc);
    pen.part('corner-alternate');
    pen.moveTo(...place(rib / 2, rib / 2));
    pen.lineTo(...place(disc * Math.cos(edge), rib / 2));
    arc(pen, cx, cy, across * disc, along * disc, edge, Math.PI / 2 - edge);
    pen.close();
  },
});
