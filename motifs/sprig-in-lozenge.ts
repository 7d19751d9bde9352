import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { polygon, rectangle } from '../src/motif/shapes.ts';

const RATIO = Math.sqrt(3);
/** Width of a boss as a share of the repeat. */
const BOSS = 0.09;

/** A cubic of the sprig: first handle, second handle, end. Its places are shares of the repeat's width. */
type Bend = readonly [x1: number, y1: number, x2: number, y2: number, x: number, y: number];

/** What the sprig has twice: where the outline of the right one begins, and how it goes on. */
type Half = readonly [start: Point, bends: readonly Bend[]];

const LEAVES: readonly Half[] = [
  [
    [0.048, 0.345],
    [
      [0.065, 0.2, 0.165, 0.1, 0.31, 0.065],
      [0.3, 0.205, 0.19, 0.325, 0.048, 0.345],
    ],
  ],
  [
    [0.046, -0.025],
    [
      [0.056, -0.125, 0.125, -0.205, 0.235, -0.235],
      [0.232, -0.125, 0.155, -0.045, 0.046, -0.025],
    ],
  ],
];
/**
 * Half the width of the stem, and its lengths, parted below either pair of leaves: an edge on the line between repeats has nothing to cut there, and
 * half a turn brings its halves at one end of the field onto those at the other.
 */
const STEM = 0.0155;
const STEMS: readonly Point[] = [
  [-0.2, -0.018],
  [0.018, 0.344],
  [0.38, 0.562],
];
const PETAL: Half = [
  [0.0135, -0.205],
  [
    [0.13, -0.225, 0.205, -0.335, 0.132, -0.52],
    [0.127, -0.44, 0.1, -0.415, 0.082, -0.37],
    [0.066, -0.33, 0.054, -0.275, 0.0135, -0.205],
  ],
];

/**
 * A lattice of slim laths with a boss on every crossing, and an upright sprig of two pairs of leaves and a flower in each
 * diamond. True to shape the diamonds have corners of 60° and 120°. The unit is a sprig, the boss above it and the two laths that
 * go down from the boss; its neighbours bring the others.
 */
export default defineMotif({
  name: 'sprig-in-lozenge',
  kind: 'field',
  summary: 'A flowering sprig in every diamond of a slim lattice.',
  parameters: {
    lath: { kind: 'ratio', says: 'width of a lath as a share of the repeat', min: 0.03, max: 0.055, default: 0.04 },
    sprig: { kind: 'ratio', says: 'size of the sprig, 1 filling its diamond', min: 0.88, max: 1, default: 1 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between lath and boss as a share of the repeat',
      min: 0.02,
      max: 0.04,
      default: 0.025,
    },
  },
  ratio: RATIO,
  lattice: 'half-drop',
  lines: { across: CENTRED, along: { mirrors: [], whole: [0], half: [] } },
  symmetry: 'cm',
  made: 'sheet',
  draw({ across, along }, { lath, sprig, rib }, pen) {
    const [sx, sy] = [across * sprig, (along / RATIO) * sprig];
    const outline = (side: 1 | -1, [start, bends]: Half): void => {
      const x = sx * side;
      pen.moveTo(x * start[0], sy * start[1]);
      for (const [x1, y1, x2, y2, ex, ey] of bends) pen.curveTo(x * x1, sy * y1, x * x2, sy * y2, x * ex, sy * ey);
      pen.close();
    };

    const width = Math.min(across, along / RATIO);
    const [a, b] = [across / 2, along / 2];
    // Places are counted down the two laths from the boss, 1 from crossing to crossing; `away` turns a distance from a lath into such a count.
    const place = (p: number, q: number): Point => [(p - q) * a, (p + q - 1) * b];
    const away = Math.hypot(a, b) / (2 * a * b);
    const thick = (lath / 2) * width * away;
    const knob = (BOSS / 2) * width * away;
    const stop = knob + rib * width * away;
    const block = (p0: number, p1: number, q0: number, q1: number): void =>
      polygon(pen, [place(p0, q0), place(p1, q0), place(p1, q1), place(p0, q1)]);

    pen.part('field');
    block(stop, 1 - stop, -thick, thick);
    block(-thick, thick, stop, 1 - stop);
    for (const side of [1, -1] as const) for (const leaf of LEAVES) outline(side, leaf);
    const thin = STEM * width;
    for (const [from, to] of STEMS) rectangle(pen, 0, (sy * (from + to)) / 2, 2 * thin, sy * (to - from));

    pen.part('alternate');
    block(-knob, knob, -knob, knob);
    for (const side of [1, -1] as const) outline(side, PETAL);
    pen.moveTo(0, -sy * 0.255);
    pen.curveTo(sx * 0.05, -sy * 0.34, sx * 0.075, -sy * 0.45, 0, -sy * 0.64);
    pen.curveTo(-sx * 0.075, -sy * 0.45, -sx * 0.05, -sy * 0.34, 0, -sy * 0.255);
    pen.close();
  },
});
