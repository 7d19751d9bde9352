import { defineMotif, type Lines } from '../src/motif/motif.ts';
import { arc, ellipse, movedPen } from '../src/motif/shapes.ts';

/** Every ring passes over and under by turns, which no mirror image would do in the same way. Every straight line cuts rings. */
const WOVEN: Lines = { mirrors: [], whole: [0], half: [] };

/**
 * Radius of a ring to the middle of its band, and distance from a ring to the four it is linked with; the repeat is 1 wide.
 * An arc begins a few degrees before the ring's own centre lines, so that an edge there cuts no sliver off it.
 */
const RADIUS = 0.425;
const APART = Math.SQRT1_2;

/** Angle between the line from one circle's middle to the other's, `APART` away, and where the two meet, seen from the circle of radius `own`. */
const meeting = (own: number, other: number): number =>
  Math.acos((own * own + APART * APART - other * other) / (2 * own * APART));

/**
 * Rings on point, each linked with its four neighbours, over and under by turns. Where a ring passes under, it stops short of the
 * one above by a rib of ground, so that it comes in four arcs. Laid out on a cell of 1 × 1 and stretched to the cell.
 */
export default defineMotif({
  name: 'interlaced-circles',
  kind: 'field',
  summary: 'Rings linked with their neighbours, over and under by turns, each about a boss.',
  parameters: {
    band: {
      kind: 'ratio',
      says: 'width of a ring’s band as a share of the repeat',
      min: 0.05,
      max: 0.07,
      default: 0.064,
    },
    boss: { kind: 'ratio', says: 'width of the boss as a share of the repeat', min: 0.1, max: 0.24, default: 0.16 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground where a ring passes under as a share of the repeat',
      min: 0.022,
      max: 0.028,
      default: 0.024,
    },
  },
  ratio: 1,
  lattice: 'on-point',
  lines: { across: WOVEN, along: WOVEN },
  symmetry: 'p4',
  made: 'sheet',
  draw({ across, along }, { band, boss, rib }, page) {
    // About the middle of the cell's left side, so that none stands on a corner of the field, where it would be quartered.
    const pen = movedPen(page, ([x, y]) => [x - across / 2, y]);
    const [outer, inner] = [RADIUS + band / 2, RADIUS - band / 2];
    // How near to the middle of a ring above, and how far from it, the arcs of one below end.
    const [near, far] = [inner - rib, outer + rib];
    const swing = (x: number, y: number, r: number, from: number, to: number): void =>
      arc(pen, across * x, along * y, across * r, along * r, from, to);

    pen.part('field');
    for (let i = 0; i < 4; i++) {
      // From the neighbour at `first` the arc comes out from below; it passes over that at `last` and ends below it.
      const [first, last] = [(2 * i + 1) * (Math.PI / 4), (2 * i + 3) * (Math.PI / 4)];
      const start = first + meeting(outer, far);
      pen.moveTo(across * outer * Math.cos(start), along * outer * Math.sin(start));
      swing(0, 0, outer, start, last + meeting(outer, near));
      swing(
        APART * Math.cos(last),
        APART * Math.sin(last),
        near,
        last + Math.PI - meeting(near, outer),
        last + Math.PI - meeting(near, inner),
      );
      swing(0, 0, inner, last + meeting(inner, near), first + meeting(inner, far));
      swing(
        APART * Math.cos(first),
        APART * Math.sin(first),
        far,
        first + Math.PI - meeting(far, inner),
        first + Math.PI - meeting(far, outer),
      );
      pen.close();
    }
    pen.part('alternate');
    ellipse(pen, 0, 0, (across * boss) / 2, (along * boss) / 2);
  },
});
