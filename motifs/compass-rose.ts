import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { arc, circle, inset, movedPen, polygon } from '../src/motif/shapes.ts';

/** Of a medallion 1 wide: reach of the four long points and of the ring round them. */
const LONG = 0.4;
const RING = 0.485;

const crossing = ([x0, y0]: Point, [x1, y1]: Point, [x2, y2]: Point, [x3, y3]: Point): Point => {
  const [ax, ay, bx, by] = [x1 - x0, y1 - y0, x3 - x2, y3 - y2];
  const t = ((x2 - x0) * by - (y2 - y0) * bx) / (ax * by - ay * bx);
  return [x0 + t * ax, y0 + t * ay];
};

/**
 * Four long points over four shorter ones, each split along its middle by a rib, within a ring of bars. Laid out on a cell of 1 × 1 and
 * stretched to the cell.
 */
export default defineMotif({
  name: 'compass-rose',
  kind: 'medallion',
  summary: 'Four long points over four short ones, split along their middles, within a ring of bars.',
  parameters: {
    waist: {
      kind: 'ratio',
      says: 'distance of the notches between the long points from the middle as a share of the long points’ reach',
      min: 0.3,
      max: 0.44,
      default: 0.36,
    },
    short: {
      kind: 'ratio',
      says: 'reach of the short points as a share of the long ones’',
      min: 0.75,
      max: 1,
      default: 0.86,
    },
    bars: { kind: 'count', says: 'bars of the ring in a quarter of it', min: 2, max: 6, default: 4 },
  },
  ratio: 1,
  lines: { across: CENTRED, along: CENTRED },
  made: 'sheet',
  draw({ across, along }, { waist, short, bars }, pen) {
    const unit = movedPen(pen, ([x, y]) => [across * x, along * y]);
    const rib = 0.012;
    const quarters = [0, 1, 2, 3].flatMap((i) => {
      const [c, s] = [Math.cos((i * Math.PI) / 2), Math.sin((i * Math.PI) / 2)];
      return [1, -1].map((hand) => ([x, y]: Point): Point => [c * x - s * hand * y, s * x + c * hand * y]);
    });
    const ray = (r: number, angle: number): Point => [r * Math.cos(angle), r * Math.sin(angle)];
    const notch = ray(waist * LONG, Math.PI / 4);
    const tip = ray(short * LONG, Math.PI / 4);
    const under = crossing(tip, ray(waist * LONG * 0.9, 0), [LONG, 0], notch);

    unit.part('medallion');
    for (const place of quarters) polygon(unit, inset([[0, 0], [LONG, 0], notch], [rib / 2, 0, rib / 2]).map(place));
    unit.part('medallion-alternate');
    for (const place of quarters) polygon(unit, inset([notch, under, tip], [rib, 0, rib / 2]).map(place));
    const [inner, outer] = [LONG + 0.035, RING];
    const step = Math.PI / 2 / bars;
    for (let i = 0; i < 4 * bars; i++) {
      const [a, b] = [step / 2 - rib / inner, step / 2 - rib / outer];
      const axis = (i + 0.5) * step;
      unit.moveTo(...ray(outer, axis - b));
      arc(unit, 0, 0, outer, outer, axis - b, axis + b);
      unit.lineTo(...ray(inner, axis + a));
      arc(unit, 0, 0, inner, inner, axis + a, axis - a);
      unit.close();
    }
    void circle;
  },
});
