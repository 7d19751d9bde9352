import type { Point } from '../src/geometry/path.ts';
import { defineMotif, type Lines } from '../src/motif/motif.ts';
import { arc, circle, inset, polygon } from '../src/motif/shapes.ts';

/** Quarter turns bring the star onto itself, nothing mirrors it; no piece reaches over the side of its cell. */
const WHOLE: Lines = { mirrors: [], whole: [0], half: [] };

/** Where the line through two points crosses a circle about the origin, between the two. */
function onCircle([x0, y0]: Point, [x1, y1]: Point, r: number): Point {
  const [dx, dy] = [x1 - x0, y1 - y0];
  const [a, b, c] = [dx * dx + dy * dy, x0 * dx + y0 * dy, x0 * x0 + y0 * y0 - r * r];
  const t = (-b + Math.sqrt(b * b - a * c)) / a;
  return [x0 + t * dx, y0 + t * dy];
}

const crossing = ([x0, y0]: Point, [x1, y1]: Point, [x2, y2]: Point, [x3, y3]: Point): Point => {
  const [ax, ay, bx, by] = [x1 - x0, y1 - y0, x3 - x2, y3 - y2];
  const t = ((x2 - x0) * by - (y2 - y0) * bx) / (ax * by - ay * bx);
  return [x0 + t * ax, y0 + t * ay];
};

/**
 * A mariner's star: four long points over four shorter ones, every point split along its middle into a half of either
 * colour, the way a compass rose is shaded. The eye stays round when the cell is stretched.
 */
export default defineMotif({
  name: 'compass-star',
  kind: 'field',
  summary: 'Compass stars, four long points over four short ones, each split into two colours.',
  parameters: {
    waist: {
      kind: 'ratio',
      says: 'distance of the notches between the long points from the middle, as a share of the long tips’',
      min: 0.38,
      max: 0.48,
      default: 0.44,
    },
    short: {
      kind: 'ratio',
      says: 'reach of the short points as a share of the long ones’',
      min: 1,
      max: 1.15,
      default: 1.05,
    },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two halves as a share of the repeat',
      min: 0.02,
      max: 0.03,
      default: 0.024,
    },
  },
  ratio: 1,
  lines: { across: WHOLE, along: WHOLE },
  symmetry: 'p4',
  made: 'sheet',
  draw({ across, along }, { waist, short, rib }, pen) {
    const width = Math.min(across, along);
    const half = (rib * width) / 2;
    const eye = 0.05 * width;
    const ring = eye + 2 * half;
    /** A point of the laying out, on a circle of radius 1, turned by quarters and mirrored to the other half of a point. */
    const place = (turn: number, hand: 1 | -1, r: number, angle: number): Point => {
      const at = (turn * Math.PI) / 2 + hand * angle;
      return [(across / 2) * r * Math.cos(at), (along / 2) * r * Math.sin(at)];
    };

    const long = (turn: number, hand: 1 | -1): void => {
      const [middle, tip, notch] = inset(
        [[0, 0], place(turn, hand, 1, 0), place(turn, hand, waist, Math.PI / 4)],
        [half, 0, half],
      ) as [Point, Point, Point];
      const [start, end] = [onCircle(middle, tip, ring), onCircle(middle, notch, ring)];
      const from = Math.atan2(end[1], end[0]);
      let to = Math.atan2(start[1], start[0]);
      if (to - from > Math.PI) to -= 2 * Math.PI;
      if (from - to > Math.PI) to += 2 * Math.PI;
      pen.moveTo(...start);
      pen.lineTo(...tip);
      pen.lineTo(...notch);
      pen.lineTo(...end);
      arc(pen, 0, 0, ring, ring, from, to);
      pen.close();
    };
    const ordinal = (turn: number, hand: 1 | -1): void => {
      const [notch, tip] = [place(turn, hand, waist, Math.PI / 4), place(turn, hand, short, Math.PI / 4)];
      const under = crossing(tip, place(turn, hand, waist * short, 0), place(turn, hand, 1, 0), notch);
      polygon(pen, inset([notch, tip, under], [half, 0, 2 * half]));
    };

    for (const [part, hand] of [
      ['field', 1],
      ['alternate', -1],
    ] as const) {
      pen.part(part);
      for (let turn = 0; turn < 4; turn++) {
        long(turn, hand);
        ordinal(turn, hand);
      }
    }
    circle(pen, 0, 0, eye);
  },
});
