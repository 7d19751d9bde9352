import type { Point } from '../src/geometry/path.ts';
import { defineMotif, type Lines } from '../src/motif/motif.ts';
import { crossing, inset, movedPen, polygon, ringBar } from '../src/motif/shapes.ts';

/** Points and ring are parted on both centre lines. */
const PARTED: Lines = { mirrors: [0, 0.5], whole: [0, 0.5], half: [] };
/** Of a medallion 1 wide: reach of the four long points and of the ring round them. */
const LONG = 0.41;
const RING = 0.485;

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
  lines: { across: PARTED, along: PARTED },
  made: 'sheet',
  draw({ across, along }, { waist, short, bars }, pen) {
    const unit = movedPen(pen, ([x, y]) => [across * x, along * y]);
    const rib = 0.012;
    const quarters = [0, 1, 2, 3].flatMap((i) => {
      const [c, s] = [Math.cos((i * Math.PI) / 2), Math.sin((i * Math.PI) / 2)];
      return [1, -1].map(
        (hand) =>
          ([x, y]: Point): Point => [c * x - s * hand * y, s * x + c * hand * y],
      );
    });
    const ray = (r: number, angle: number): Point => [r * Math.cos(angle), r * Math.sin(angle)];
    const notch = ray(waist * LONG, Math.PI / 4);
    const tip = ray(short * LONG, Math.PI / 4);
    const under = crossing(tip, ray(waist * LONG * 0.9, 0), [LONG, 0], notch);

    unit.part('medallion');
    for (const place of quarters) polygon(unit, inset([[0, 0], [LONG, 0], notch], [rib / 2, 0, rib / 2]).map(place));
    unit.part('medallion-alternate');
    for (const place of quarters) polygon(unit, inset([notch, under, tip], [rib, 0, rib / 2]).map(place));
    const half = Math.PI / 4 / bars;
    for (let i = 0; i < 4 * bars; i++) ringBar(unit, (2 * i + 1) * half, half, LONG + 0.03, RING, 2 * rib);
  },
});
