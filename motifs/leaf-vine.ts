import type { Point } from '../src/geometry/path.ts';
import { defineMotif } from '../src/motif/motif.ts';
import { arc, leaf, movedPen } from '../src/motif/shapes.ts';

/** The vine grows one way. A glide brings it onto itself, but for the rib where its repeats meet on one side. */
const ONE_WAY = { mirrors: [], whole: [0], half: [] };

const RATIO = 1.3;
/** How far the stem swings to either side; the border is 1 wide. */
const SWING = 0.11;

/** Leaves of the half wave that swings inward: root and tip. The other half has their images. */
const LEAVES: [Point, Point][] = [
  [
    [-0.565, -0.182],
    [-0.035, -0.45],
  ],
  [
    [-0.455, 0.04],
    [-0.13, 0.44],
  ],
];

/** Leaves of the corner, those on its diagonal once; the other stands on both sides of it. */
const CORNER_LEAVES: [Point, Point][] = [
  [
    [0.0, 0.0],
    [-0.43, -0.43],
  ],
  [
    [0.06, -0.11],
    [0.44, -0.43],
  ],
  [
    [0.13, 0.13],
    [0.455, 0.455],
  ],
];

export default defineMotif({
  name: 'leaf-vine',
  kind: 'border',
  summary: 'A vine that swings from edge to edge, two leaves to every swing.',
  parameters: {
    leaf: { kind: 'ratio', says: 'width of a leaf as a share of its length', min: 0.34, max: 0.43, default: 0.4 },
    stem: { kind: 'ratio', says: 'width of the stem as a share of the border', min: 0.06, max: 0.095, default: 0.08 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two repeats as a share of the border; 0 lets the stem run on',
      min: 0,
      max: 0.06,
      default: 0.05,
    },
  },
  ratio: RATIO,
  lines: { across: ONE_WAY, along: ONE_WAY },
  symmetry: 'p1',
  refuses: {
    mitre: 'the stem would meet its image in a kink, and leaves would be cut; turn with its own corner',
    butt: 'the stems of two sides would end in the air on the edge of the work',
  },
  made: 'sheet',
  corner(size, { leaf: plump, stem, rib }, pen) {
    const unit = movedPen(pen, ([x, y]) => [size * x, size * y]);
    const radius = 0.5 + SWING;
    const [outer, inner] = [radius + stem / 2, radius - stem / 2];
    const edge = (r: number): number => Math.asin(rib / 2 / r);
    unit.part('border');
    unit.moveTo(0.5 - rib / 2, 0.5 - outer * Math.cos(edge(outer)));
    arc(unit, 0.5, 0.5, outer, outer, -Math.PI / 2 - edge(outer), edge(outer) - Math.PI);
    unit.lineTo(0.5 - inner * Math.cos(edge(inner)), 0.5 - rib / 2);
    arc(unit, 0.5, 0.5, inner, inner, edge(inner) - Math.PI, -Math.PI / 2 - edge(inner));
    unit.close();
    unit.part('border-alternate');
    for (const [root, tip] of CORNER_LEAVES) {
      const width = plump * Math.hypot(tip[0] - root[0], tip[1] - root[1]);
      leaf(unit, root, tip, width);
      if (root[0] !== root[1]) leaf(unit, [root[1], root[0]], [tip[1], tip[0]], width);
    }
  },
  draw({ across, along }, { leaf: plump, stem, rib }, pen) {
    const unit = movedPen(pen, ([x, y]) => [(across / RATIO) * x, along * y]);
    const quarter = RATIO / 4;
    const radius = (quarter * quarter + SWING * SWING) / (2 * SWING);
    const [outer, inner] = [radius + stem / 2, radius - stem / 2];
    const turn = Math.asin(quarter / radius);
    const up = Math.PI / 2;
    const trim = (r: number): number => Math.asin(rib / 2 / r);
    const y = SWING - radius;
    unit.part('border');
    unit.moveTo(-RATIO / 2 + rib / 2, -y - outer * Math.cos(trim(outer)));
    arc(unit, -RATIO / 2, -y, outer, outer, trim(outer) - up, turn - up);
    arc(unit, 0, y, inner, inner, up + turn, up - turn);
    arc(unit, RATIO / 2, -y, outer, outer, -up - turn, -up - trim(outer));
    unit.lineTo(RATIO / 2 - rib / 2, -y - inner * Math.cos(trim(inner)));
    arc(unit, RATIO / 2, -y, inner, inner, -up - trim(inner), -up - turn);
    arc(unit, 0, y, outer, outer, up - turn, up + turn);
    arc(unit, -RATIO / 2, -y, inner, inner, turn - up, trim(inner) - up);
    unit.close();
    unit.part('border-alternate');
    for (const [root, tip] of LEAVES) {
      const width = plump * Math.hypot(tip[0] - root[0], tip[1] - root[1]);
      leaf(unit, root, tip, width);
      const glide = ([px, py]: Point): Point => [px + RATIO / 2, -py];
      leaf(unit, glide(root), glide(tip), width);
    }
  },
});
