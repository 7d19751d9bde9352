import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { arc } from '../src/motif/shapes.ts';

/**
 * A four-lobed leaf within a band of four cusped arcs, parted at the cusps by ribs of ground so that nothing cut
 * falls out. At a roundness of 1 the lobes are half circles on the sides of a square, as they are set out with a
 * compass; less makes deeper notches. The leaf keeps the same distance from the outline all round, so its own notches
 * are rounded. Laid out on a cell of 2 × 2 and stretched to the cell.
 */
export default defineMotif({
  name: 'quatrefoil',
  kind: 'field',
  summary: 'Four-lobed leaves, each within a cusped band, lobe to lobe, stars of ground between them.',
  parameters: {
    roundness: {
      kind: 'ratio',
      says: 'radius of a lobe as a share of its distance from the middle',
      min: 0.85,
      max: 1.1,
      default: 1,
    },
    band: { kind: 'ratio', says: 'width of the band as a share of the repeat', min: 0.05, max: 0.085, default: 0.07 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between bands, and between band and leaf, as a share of the repeat',
      min: 0.02,
      max: 0.045,
      default: 0.035,
    },
  },
  ratio: 1,
  lines: { across: CENTRED, along: CENTRED },
  symmetry: 'p4mm',
  made: 'sheet',
  rooms({ across, along }, { roundness, rib }) {
    // In the star of ground between four bands: a square whose corners lie a rib away from the lobes.
    const out = (1 - rib) / (1 + roundness);
    const clear = roundness * out + 2 * rib;
    const half = (2 - out - Math.sqrt((2 - out) ** 2 - 2 * ((1 - out) ** 2 + 1 - clear * clear))) / 2;
    return [{ x: across / 2, y: -along / 2, across: across * half, along: along * half }];
  },
  draw({ across, along }, { roundness, band, rib }, pen) {
    const [rx, ry] = [across / 2, along / 2];
    const out = (1 - rib) / (1 + roundness);
    const lobe = roundness * out;
    // Two lobes meet at (cusp, cusp), which a lobe's middle sees at this angle.
    const cusp = (out + Math.sqrt(2 * lobe * lobe - out * out)) / 2;
    const reach = Math.atan2(cusp, cusp - out);
    // A band ends `rib` beside the slanting axis, on y = x - k.
    const k = rib * Math.SQRT2;
    const end = (out + k + Math.sqrt(2 * lobe * lobe - (out - k) ** 2)) / 2;
    const shoulder = Math.atan2(end - k, end - out);
    const back = Math.asin(rib / (2 * band)) - (3 * Math.PI) / 4;

    const quarters = [0, 1, 2, 3].map((i) => {
      const axis = (i * Math.PI) / 2;
      const [c, s] = [Math.cos(axis), Math.sin(axis)];
      const place = (u: number, v: number): Point => [rx * (c * u - s * v), ry * (s * u + c * v)];
      const swing = (u: number, v: number, r: number, from: number, to: number): void =>
        arc(pen, ...place(u, v), rx * r, ry * r, axis + from, axis + to);
      return { place, swing };
    });

    pen.part('field');
    for (const { place, swing } of quarters) {
      pen.moveTo(...place(end, k - end));
      swing(out, 0, lobe, -shoulder, shoulder);
      pen.lineTo(...place(cusp + 2 * band * Math.cos(back), cusp + 2 * band * Math.sin(back)));
      swing(cusp, cusp, 2 * band, back, reach - Math.PI);
      swing(out, 0, lobe - 2 * band, reach, -reach);
      swing(cusp, -cusp, 2 * band, Math.PI - reach, -back);
      pen.close();
    }

    pen.part('alternate');
    const inward = 2 * (band + rib);
    pen.moveTo(...quarters[0]!.place(out + (lobe - inward) * Math.cos(reach), -(lobe - inward) * Math.sin(reach)));
    for (const { swing } of quarters) {
      swing(out, 0, lobe - inward, -reach, reach);
      swing(cusp, cusp, inward, reach - Math.PI, -Math.PI / 2 - reach);
    }
    pen.close();
  },
});
