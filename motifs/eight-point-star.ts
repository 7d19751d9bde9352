import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { arc, ellipse } from '../src/motif/shapes.ts';

/** Half the angle between two neighbouring points of the star. */
const HALF = Math.PI / 8;
const [COS, SIN] = [Math.cos(HALF), Math.sin(HALF)];

/**
 * An eight-point star of kites round an eye, its four straight points on the middles of the cell's sides.
 * Straight and slanting points take turns in colour, parted by ribs of ground. Left alone, star and ground weigh the same
 * before the ribs are taken out; notches at 0.5412 make points of 45°, notches at 0.7654 the star that two squares make.
 * Laid out on a circle of radius 1 and stretched to the cell.
 */
export default defineMotif({
  name: 'eight-point-star',
  kind: 'field',
  summary: 'Eight-point stars, tip to tip, their points in two colours by turns round an eye.',
  parameters: {
    notch: {
      kind: 'ratio',
      says: 'distance of the notches from the middle as a share of the tips’',
      min: 0.52,
      max: 0.8,
      default: 0.65,
    },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two points as a share of the star',
      min: 0.01,
      max: 0.04,
      default: 0.024,
    },
    eye: { kind: 'ratio', says: 'width of the eye as a share of the star', min: 0.08, max: 0.2, default: 0.12 },
  },
  ratio: 1,
  symmetry: 'p4mm',
  lines: { across: CENTRED, along: CENTRED },
  made: 'sheet',
  draw({ across, along }, { notch, rib, eye }, pen) {
    const [rx, ry] = [across / 2, along / 2];
    const inner = eye + 2 * rib;

    /** One point of the star: a kite less half a rib on both flanks, its inner end rounded about the eye. */
    const kite = (axis: number): void => {
      const [c, s] = [Math.cos(axis), Math.sin(axis)];
      const place = (u: number, v: number): Point => [rx * (c * u - s * v), ry * (s * u + c * v)];
      // The flank lies `rib` inside the ray at 22.5°; it ends on the slope from the tip to the notch.
      const [notchU, notchV] = [notch * COS, notch * SIN];
      const t = (SIN - rib) / SIN;
      const shoulder: Point = [1 + t * (notchU - 1), t * notchV];
      const from = HALF - Math.asin(rib / inner);
      pen.moveTo(...place(1, 0));
      pen.lineTo(...place(...shoulder));
      pen.lineTo(...place(inner * Math.cos(from), inner * Math.sin(from)));
      arc(pen, 0, 0, rx * inner, ry * inner, axis + from, axis - from);
      pen.lineTo(...place(shoulder[0], -shoulder[1]));
      pen.close();
    };

    pen.part('field');
    for (let i = 0; i < 4; i++) kite((i * Math.PI) / 2);
    pen.part('alternate');
    for (let i = 0; i < 4; i++) kite(((i + 0.5) * Math.PI) / 2);
    ellipse(pen, 0, 0, rx * eye, ry * eye);
  },
});
