import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { polygon } from '../src/motif/shapes.ts';

const RATIO = Math.sqrt(3);

/**
 * A long diamond within a frame of four bars. Ribs of ground part the bars at the tips, each frame from the next, and
 * the frame from what it holds, so that nothing cut falls out. True to shape both diamonds have corners of 60° and
 * 120°.
 */
export default defineMotif({
  name: 'lozenge-in-lozenge',
  kind: 'field',
  summary: 'Long diamonds, each within a frame of four bars, tip to tip.',
  parameters: {
    frame: { kind: 'ratio', says: 'width of a bar as a share of the repeat', min: 0.06, max: 0.15, default: 0.1 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between bars, and between bars and diamond, as a share of the repeat',
      min: 0.02,
      max: 0.05,
      default: 0.035,
    },
  },
  ratio: RATIO,
  lines: { across: CENTRED, along: CENTRED },
  symmetry: 'p2mm',
  made: 'sheet',
  rooms({ across, along }, { rib }) {
    // In the diamond of ground between four frames, half as wide and long, a rib away from the frames.
    const taken = rib * Math.min(across, along / RATIO) * Math.hypot(1 / across, 1 / along) * 2;
    return [{ x: across / 2, y: -along / 2, across: (across / 2) * (1 - taken), along: (along / 2) * (1 - taken) }];
  },
  draw({ across, along }, { frame, rib }, pen) {
    const width = Math.min(across, along / RATIO);
    const half = (rib * width) / 2;
    const [a, b] = [across / 2, along / 2];
    // A diamond of `s` times the half axes lies s · height from the middle.
    const height = (a * b) / Math.hypot(a, b);
    const outer = 1 - half * Math.abs(1 / a - 1 / b);
    const inner = outer - (frame * width) / height;
    const held = inner - (rib * width) / height;

    pen.part('field');
    for (const [right, far] of [
      [1, -1],
      [1, 1],
      [-1, 1],
      [-1, -1],
    ] as const) {
      polygon(pen, [
        [right * half, far * b * (outer - half / a)],
        [right * a * (outer - half / b), far * half],
        [right * a * (inner - half / b), far * half],
        [right * half, far * b * (inner - half / a)],
      ]);
    }
    pen.part('alternate');
    polygon(pen, [
      [0, -b * held],
      [a * held, 0],
      [0, b * held],
      [-a * held, 0],
    ]);
  },
});
