import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { polygon } from '../src/motif/shapes.ts';

/**
 * Slanting laths with a boss on every crossing. Laths stop short of the bosses by a rib of ground, so that the
 * openings hang together. The unit is a boss and the two laths to its right; its neighbours bring the others.
 */
export default defineMotif({
  name: 'trellis',
  kind: 'field',
  summary: 'Laths crossing on the slant, a boss on every crossing, the openings bare.',
  parameters: {
    lath: { kind: 'ratio', says: 'width of a lath as a share of the repeat', min: 0.07, max: 0.16, default: 0.11 },
    boss: { kind: 'ratio', says: 'width of a boss as a share of a lath’s', min: 1.2, max: 2, default: 1.7 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between lath and boss as a share of the repeat',
      min: 0.02,
      max: 0.04,
      default: 0.03,
    },
  },
  ratio: 1,
  lattice: 'on-point',
  lines: { across: CENTRED, along: CENTRED },
  symmetry: 'p4mm',
  made: 'sheet',
  rooms({ across, along }, { lath, rib }) {
    // Half as wide and long as the opening, a rib away from its laths.
    const taken = (lath / 2 + rib) * Math.min(across, along) * Math.hypot(1 / across, 1 / along) * 2;
    return [{ x: across / 2, y: 0, across: (across / 2) * (1 - taken), along: (along / 2) * (1 - taken) }];
  },
  draw({ across, along }, { lath, boss, rib }, pen) {
    const width = Math.min(across, along);
    const [a, b] = [across / 2, along / 2];
    // Places are counted along the two laths, 1 from crossing to crossing; `away` turns a distance from a lath into such a count.
    const place = (p: number, q: number): Point => [(p + q) * a, (p - q) * b];
    const away = Math.hypot(a, b) / (2 * a * b);
    const thick = (lath * width * away) / 2;
    const knob = boss * thick;
    const stop = knob + rib * width * away;
    const block = (p0: number, p1: number, q0: number, q1: number): void =>
      polygon(pen, [place(p0, q0), place(p1, q0), place(p1, q1), place(p0, q1)]);

    pen.part('field');
    block(stop, 1 - stop, -thick, thick);
    block(-thick, thick, stop, 1 - stop);
    pen.part('alternate');
    block(-knob, knob, -knob, knob);
  },
});
