import type { Point } from '../src/geometry/path.ts';
import { defineMotif, type Lines } from '../src/motif/motif.ts';
import { inset, polygon } from '../src/motif/shapes.ts';

/** No plank is cut between two mills. They all turn the same way, so nothing mirrors. */
const MILLS: Lines = { mirrors: [], whole: [0], half: [] };

/** Four planks laid end to flank round a square, as pavers do. A third of the repeat as width makes planks of two squares. */
export default defineMotif({
  name: 'windmill',
  kind: 'field',
  summary: 'Four planks laid end to flank round a square.',
  parameters: {
    plank: { kind: 'ratio', says: 'width of a plank as a share of the repeat', min: 0.24, max: 0.36, default: 1 / 3 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between planks as a share of the repeat',
      min: 0.02,
      max: 0.05,
      default: 0.03,
    },
  },
  ratio: 1,
  lines: { across: MILLS, along: MILLS },
  symmetry: 'p4',
  made: 'sheet',
  draw({ across, along }, { plank, rib }, pen) {
    const half = (rib * Math.min(across, along)) / 2;
    const core = 0.5 - plank;
    /** A box given for the far side of a square of 1 × 1, turned clockwise in quarters with the mill. */
    const box = (turns: number, left: number, top: number, right: number, bottom: number): Point[] =>
      (
        [
          [left, top],
          [right, top],
          [right, bottom],
          [left, bottom],
        ] as const
      ).map(([u, v]) => {
        const [x, y] = [
          [u, v],
          [-v, u],
          [-u, -v],
          [v, -u],
        ][turns] as [number, number];
        return [across * x, along * y];
      });
    pen.part('field');
    for (const turns of [0, 1, 2, 3]) polygon(pen, inset(box(turns, -0.5, -0.5, core, -core), half));
    pen.part('alternate');
    polygon(pen, inset(box(0, -core, -core, core, core), half));
  },
});
