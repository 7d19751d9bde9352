import type { Point } from '../src/geometry/path.ts';
import { defineMotif, PLAIN } from '../src/motif/motif.ts';
import { arc, crossing, inset, movedPen, onCircle, polygon } from '../src/motif/shapes.ts';

/**
 * A quarter of a star about the outer corner of the block: one long point on the diagonal, half a one along either side, and short
 * points behind them. Laid out on a block of 1 × 1 with its outer corner at 0, 0, and stretched to the cell.
 */
export default defineMotif({
  name: 'quarter-star',
  kind: 'corner',
  summary: 'A quarter of a star that shines from the outer corner, long points over short ones.',
  parameters: {
    waist: {
      kind: 'ratio',
      says: 'distance of the notches between the long points from the outer corner as a share of the block',
      min: 0.4,
      max: 0.5,
      default: 0.45,
    },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two points as a share of the block',
      min: 0.025,
      max: 0.045,
      default: 0.041,
    },
  },
  ratio: 1,
  lines: { across: PLAIN, along: PLAIN },
  made: 'sheet',
  draw({ across, along }, { waist, rib }, pen) {
    const unit = movedPen(pen, ([x, y]) => [across * (x - 0.5), along * (y - 0.5)]);
    const half = rib / 2;
    const hub = 0.17;
    const ray = (r: number, eighths: number): Point => [
      r * Math.cos((eighths * Math.PI) / 8),
      r * Math.sin((eighths * Math.PI) / 8),
    ];
    const origin: Point = [0, 0];
    const side = ray(1 - rib, 0);
    const diagonal = ray(1.28, 2);
    const notch = ray(waist, 1);
    const swap = ([x, y]: Point): Point => [y, x];
    const both: ((point: Point) => Point)[] = [(point) => point, swap];

    /** A point of the star less its tip towards the hub, which is cut off round. */
    const fromHub = (outline: Point[], move: (point: Point) => Point): void => {
      const ring = hub + rib;
      const points = outline.map(move);
      const [start, end] = [
        onCircle(points[0]!, points[1]!, ring),
        onCircle(points[0]!, points[points.length - 1]!, ring),
      ];
      unit.moveTo(...start);
      for (const point of points.slice(1)) unit.lineTo(...point);
      unit.lineTo(...end);
      arc(unit, 0, 0, ring, ring, Math.atan2(end[1], end[0]), Math.atan2(start[1], start[0]));
      unit.close();
    };

    unit.part('corner');
    fromHub(inset([origin, notch, diagonal, swap(notch)], half), (point) => point);
    for (const move of both) fromHub(inset([origin, side, notch], half), move);

    unit.part('corner-alternate');
    const tip = ray(0.98, 1);
    const base = waist * 0.62;
    const upper = crossing(tip, ray(base, 0), side, notch);
    const lower = crossing(tip, ray(base, 2), diagonal, notch);
    for (const move of both) polygon(unit, inset([notch, upper, tip, lower], [rib, 0, 0, rib]).map(move));
    const edge = Math.asin(half / hub);
    unit.moveTo(half, half);
    unit.lineTo(hub * Math.cos(edge), half);
    arc(unit, 0, 0, hub, hub, edge, Math.PI / 2 - edge);
    unit.close();
  },
});
