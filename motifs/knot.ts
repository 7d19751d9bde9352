import type { Point } from '../src/geometry/path.ts';
import { defineMotif, PLAIN } from '../src/motif/motif.ts';
import { arc, band, circle, leaf, movedPen } from '../src/motif/shapes.ts';

/** Half the side of the square on point that the cord encloses, to the middle of the cord; the block is 1 wide. */
const SQUARE = 0.162;
/** How far the loops reach from the middle. */
const REACH = 0.49;

/** A quarter turn clockwise, and the unit vector at an angle. */
const QUARTER = Math.PI / 2;
const ray = (angle: number, r = 1): Point => [r * Math.cos(angle), r * Math.sin(angle)];
const plus = ([x, y]: Point, [dx, dy]: Point): Point => [x + dx, y + dy];

/** Directions, as angles, of the four crossings from the middle; the cord passes them in this order, each twice, with a loop between. */
const [LEFT, FAR, RIGHT, NEAR] = [Math.PI, -QUARTER, 0, QUARTER];

/**
 * A cord laid in four loops, one towards each side of the block, about a square on point. Where it crosses itself the lower strand
 * stops short of the upper by a rib. It passes over and under by turns but for the two sides of the square that the diagonal from the
 * outer corner cuts: that diagonal mirrors the knot, so that one sheet serves all four corners of the work.
 */
export default defineMotif({
  name: 'knot',
  kind: 'corner',
  summary: 'A cord in four loops about a square on point, woven over and under itself.',
  parameters: {
    cord: { kind: 'ratio', says: 'width of the cord as a share of the block', min: 0.055, max: 0.067, default: 0.063 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground where the cord passes under as a share of the block',
      min: 0.05,
      max: 0.06,
      default: 0.06,
    },
  },
  ratio: 1,
  lines: { across: PLAIN, along: PLAIN },
  made: 'sheet',
  draw({ across, along }, { cord, rib }, pen) {
    const unit = movedPen(pen, ([x, y]) => [across * x, along * y]);
    const half = cord / 2;
    const clear = half + rib;
    // Nothing but ground parts the cord from what stands beside it, in another colour.
    const beside = 0.75 * rib;
    const out = SQUARE * Math.SQRT2;
    const radius = (REACH - half - out) / (1 + Math.SQRT2);

    /** The cord from below one crossing, through loops one after the other, to below another crossing. */
    const strand = (below: number, loops: number[], belowNext: number): void => {
      const [first, last] = [loops[0]!, loops[loops.length - 1]!];
      const middle = (at: number): Point => ray(at, out + radius * Math.SQRT2);
      const start = plus(ray(below, out), ray(first + Math.PI / 4, clear));
      const end = plus(ray(belowNext, out), ray(last - Math.PI / 4, clear));
      const turn = (3 * Math.PI) / 4;
      unit.moveTo(...plus(start, ray(first + turn, half)));
      for (const at of loops) {
        unit.lineTo(...plus(middle(at), ray(at + turn, radius + half)));
        arc(unit, ...middle(at), radius + half, radius + half, at + turn, at - turn);
      }
      unit.lineTo(...plus(end, ray(last - turn, half)));
      unit.lineTo(...plus(end, ray(last - turn, -half)));
      for (const at of [...loops].reverse()) {
        unit.lineTo(...plus(middle(at), ray(at - turn, radius - half)));
        arc(unit, ...middle(at), radius - half, radius - half, at - turn, at + turn);
      }
      unit.lineTo(...plus(start, ray(first + turn, -half)));
      unit.close();
    };

    unit.part('corner');
    strand(LEFT, [LEFT, FAR], FAR);
    strand(FAR, [RIGHT], RIGHT);
    strand(NEAR, [NEAR], LEFT);
    // Between the right and the near crossing it is below at both ends.
    const along45 = ray((3 * Math.PI) / 4);
    const [from, to] = [ray(RIGHT, out), ray(NEAR, out)];
    band(
      unit,
      [
        [from[0] + clear * along45[0], from[1] + clear * along45[1]],
        [to[0] - clear * along45[0], to[1] - clear * along45[1]],
      ],
      cord,
    );
    unit.part('corner-alternate');
    circle(unit, 0, 0, SQUARE - half - beside);
    for (const corner of [1, 3, 5, 7]) {
      const diagonal = (corner * Math.PI) / 4;
      leaf(unit, ray(diagonal, SQUARE + half + beside), ray(diagonal, 0.66), 1.8 * (SQUARE - half - beside));
    }
  },
});
