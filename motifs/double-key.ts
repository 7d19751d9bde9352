import type { Point } from '../src/geometry/path.ts';
import { defineMotif } from '../src/motif/motif.ts';
import { band, polygon } from '../src/motif/shapes.ts';

/** Nothing but moving it on by a repeat brings the border onto itself, since its two keys differ in colour. */
const ONE_WAY = { mirrors: [], whole: [0], half: [] };

/** Lines across and along in one repeat, evenly spaced, the outermost half a spacing inside it. */
const ACROSS = 4;
const ALONG = 5;

/**
 * Two rails, each with a hook to every repeat, the hooks caught in one another. Half a turn brings either key onto the other.
 */
export default defineMotif({
  name: 'double-key',
  kind: 'border',
  summary: 'Two keys of two colours, one from either edge, their hooks caught in each other.',
  parameters: {
    line: { kind: 'ratio', says: 'width of the lines as a share of their spacing', min: 0.42, max: 0.6, default: 0.52 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two repeats as a share of the border; 0 lets the rails run on',
      min: 0,
      max: 0.06,
      default: 0.05,
    },
  },
  ratio: ACROSS / ALONG,
  lines: { across: ONE_WAY, along: ONE_WAY },
  symmetry: 'p1',
  refuses: {
    mitre: 'cut on the diagonal, a hook would meet its own image in a closed ring with a chip of the other key inside',
    butt: 'the rails of two sides would end in the air on the edge of the work',
  },
  made: 'sheet',
  corner(size, { line, rib }, pen) {
    const spacing = size / ALONG;
    const width = line * spacing;
    const at = (x: number, y: number): Point => [(x - 2) * spacing, (y - 2) * spacing];
    const end = size / 2 - (rib * size) / 2;
    const angle = (first: number, last: number): Point[] => [at(last, first), at(first, first), at(first, last)];
    pen.part('border');
    band(pen, [[end, at(0, 0)[1]], at(0, 0), [at(0, 0)[0], end]], width);
    const [low, high] = [at(2, 2)[0] - width / 2, at(3, 3)[0] + width / 2];
    polygon(pen, [
      [low, low],
      [high, low],
      [high, high],
      [low, high],
    ]);
    pen.part('border-alternate');
    band(pen, angle(1, 4), width);
    // The inner rails cross and run on round the boss.
    const [tip, near, far] = [at(2, 2)[0] - width / 2, at(4, 4)[0] - width / 2, at(4, 4)[0] + width / 2];
    polygon(pen, [
      [near, tip],
      [far, tip],
      [far, near],
      [end, near],
      [end, far],
      [far, far],
      [far, end],
      [near, end],
      [near, far],
      [tip, far],
      [tip, near],
      [near, near],
    ]);
  },
  draw({ across, along }, { line, rib }, pen) {
    const [dx, dy] = [across / ACROSS, along / ALONG];
    const half = (line / 2) * Math.min(dy, 1.3 * dx);
    const x = (i: number, side: number): number => (i - 1.5) * dx + side * half;
    const y = (i: number, side: number): number => (i - 2) * dy + side * half;
    // Half a rib before the boundary, but never inside a hook.
    const end = Math.max(across / 2 - (rib * along) / 2, x(3, 1));
    const key: Point[] = [
      [-end, y(0, -1)],
      [end, y(0, -1)],
      [end, y(0, 1)],
      [x(0, 1), y(0, 1)],
      [x(0, 1), y(3, -1)],
      [x(2, -1), y(3, -1)],
      [x(2, -1), y(2, -1)],
      [x(2, 1), y(2, -1)],
      [x(2, 1), y(3, 1)],
      [x(0, -1), y(3, 1)],
      [x(0, -1), y(0, 1)],
      [-end, y(0, 1)],
    ];
    pen.part('border');
    polygon(pen, key);
    pen.part('border-alternate');
    polygon(
      pen,
      key.map(([px, py]): Point => [-px, -py]),
    );
  },
});
