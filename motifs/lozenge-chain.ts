import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { inset, polygon } from '../src/motif/shapes.ts';

/** Lozenges tip to tip, each a frame of four bars, parted at its tips, about a smaller lozenge of the second colour. */
export default defineMotif({
  name: 'lozenge-chain',
  kind: 'border',
  summary: 'Lozenges tip to tip, each a frame of four bars about a smaller lozenge.',
  parameters: {
    frame: { kind: 'ratio', says: 'width of the frame as a share of the border', min: 0.09, max: 0.15, default: 0.12 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two bars and inside the frame as a share of the border',
      min: 0.025,
      max: 0.06,
      default: 0.05,
    },
  },
  ratio: 1.3,
  lines: { across: CENTRED, along: CENTRED },
  symmetry: 'p2mm',
  made: 'sheet',
  draw({ across, along }, { frame, rib }, pen) {
    const ground = rib * along;
    const [rx, ry] = [across / 2, along / 2];
    const lozenge = (by: number): Point[] =>
      inset(
        [
          [0, -ry],
          [rx, 0],
          [0, ry],
          [-rx, 0],
        ],
        by,
      );
    // Half the height of the inside of the frame; its sides are as steep as the outer ones.
    const inside = -lozenge(frame * along)[0]![1];
    const half = ground / 2;
    pen.part('border');
    for (const [sx, sy] of [
      [1, -1],
      [1, 1],
      [-1, 1],
      [-1, -1],
    ] as const) {
      const upright = (height: number): Point => [sx * half, sy * (height - (half * ry) / rx)];
      const level = (height: number): Point => [sx * (height - half) * (rx / ry), sy * half];
      polygon(pen, [upright(ry), level(ry), level(inside), upright(inside)]);
    }
    pen.part('border-alternate');
    polygon(pen, lozenge(frame * along + ground));
  },
});
