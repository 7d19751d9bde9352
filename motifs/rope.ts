import type { Point } from '../src/geometry/path.ts';
import { defineMotif, type Pen } from '../src/motif/motif.ts';
import { arc, movedPen } from '../src/motif/shapes.ts';

/** Half a turn brings the rope onto itself, nothing mirrors it. */
const ONE_WAY = { mirrors: [], whole: [0], half: [] };

const RATIO = 1.7;
/** Whole strands between two bindings. A strand leans over two others, so the bindings cut off two at either end. */
const WHOLE = 2;
/** Half the width of the rope between the round ends of its strands, and how far these stand out; the border is 1 wide. */
const HALF = 0.4;
const ROUND = 0.06;

type Curve = [Point, Point, Point, Point];

/** The part of a cubic from where it crosses a line across the border on, its points from left to right. */
function rightOf([p0, p1, p2, p3]: Curve, x: number): Curve {
  if (p0[0] >= x) return [p0, p1, p2, p3];
  const mix = (a: Point, b: Point, t: number): Point => [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
  const cut = (t: number): Curve => {
    const [a, b, c] = [mix(p0, p1, t), mix(p1, p2, t), mix(p2, p3, t)];
    const [d, e] = [mix(a, b, t), mix(b, c, t)];
    return [mix(d, e, t), e, c, p3];
  };
  let [low, high] = [0, 1];
  for (let i = 0; i < 50; i++) {
    const t = (low + high) / 2;
    if (cut(t)[0][0] < x) low = t;
    else high = t;
  }
  return cut(high);
}

/**
 * Strands that lean and swell as they come round to the front, bound with cord at both ends of a repeat: where two repeats meet lie two turns of
 * it, which also part strands that lean two ways. Laid out on a border 1 wide and stretched to the cell.
 */
export default defineMotif({
  name: 'rope',
  kind: 'border',
  summary: 'A twisted rope, bound with cord where its repeats meet.',
  parameters: {
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two strands as a share of the border',
      min: 0.035,
      max: 0.055,
      default: 0.05,
    },
    cord: {
      kind: 'ratio',
      says: 'width of a turn of the binding cord as a share of the border',
      min: 0.08,
      max: 0.13,
      default: 0.1,
    },
  },
  ratio: RATIO,
  lines: { across: ONE_WAY, along: ONE_WAY },
  symmetry: 'p2',
  refuses: { mitre: 'a whole length between two bindings would be squeezed into the corner' },
  made: 'sheet',
  draw({ across, along }, { rib, cord }, pen) {
    const unit = movedPen(pen, ([x, y]) => [(across / RATIO) * x, along * y]);
    const turned = movedPen(unit, ([x, y]) => [-x, -y]);
    const start = -RATIO / 2 + 1.5 * rib + cord;
    const pitch = (-2 * start) / (WHOLE + 2);
    const lean = 2 * pitch;
    // The strands slant; the ground between them is as wide as a rib square to them.
    const gap = (1.1 * rib * Math.hypot(lean, 2 * HALF)) / (2 * HALF);
    /** The line between two strands, from the inner edge of the rope to the outer, less half the gap. */
    const edge = (i: number, side: number): Curve => {
      const x = start + i * pitch + (side * gap) / 2;
      return [
        [x, HALF],
        [x + 0.36 * lean, HALF * 0.5],
        [x + 0.64 * lean, -HALF * 0.5],
        [x + lean, -HALF],
      ];
    };
    /** Strand `i`; those below 0 are cut off by the binding on the left. */
    const strand = (to: Pen, i: number): void => {
      const [left, right] = [rightOf(edge(i, 1), start), rightOf(edge(i + 1, -1), start)];
      const roundTo = ([x0, y0]: Point, [x1, y1]: Point, way: 1 | -1): void => {
        const out = (4 / 3) * ROUND * way;
        to.curveTo(x0 - way * 0.1 * pitch, y0 + out, x1 + way * 0.05 * pitch, y1 + out, x1, y1);
      };
      to.moveTo(...left[0]);
      to.curveTo(...left[1], ...left[2], ...left[3]);
      roundTo(left[3], right[3], -1);
      to.curveTo(...right[2], ...right[1], ...right[0]);
      if (i >= 0) roundTo(right[0], left[0], 1);
      to.close();
    };
    pen.part('border');
    for (let i = 0; i < WHOLE; i++) strand(unit, i);
    for (const side of [unit, turned]) for (const i of [-2, -1]) strand(side, i);
    pen.part('border-alternate');
    for (const side of [unit, turned]) {
      const [x, y] = [(RATIO - rib - cord) / 2, HALF + ROUND];
      side.moveTo(x - cord / 2, -y);
      arc(side, x, -y, cord / 2, cord / 4, Math.PI, 2 * Math.PI);
      side.lineTo(x + cord / 2, y);
      arc(side, x, y, cord / 2, cord / 4, 0, Math.PI);
      side.close();
    }
  },
});
