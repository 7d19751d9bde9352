import type { Point } from '../src/geometry/path.ts';
import { defineMotif, PLAIN } from '../src/motif/motif.ts';
import { band, movedPen, polygon } from '../src/motif/shapes.ts';

/**
 * A flight of steps in the outer corner of the block and a band that follows it. Laid out on a block of 1 × 1 with its outer corner at
 * 0, 0, and stretched to the cell.
 */
export default defineMotif({
  name: 'stepped',
  kind: 'corner',
  summary: 'A flight of steps in the outer corner, followed by a stepped band.',
  parameters: {
    steps: { kind: 'count', says: 'steps of the flight', min: 2, max: 4, default: 3 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between the flight and the band as a share of the block',
      min: 0.03,
      max: 0.07,
      default: 0.05,
    },
  },
  ratio: 1,
  lines: { across: PLAIN, along: PLAIN },
  made: 'sheet',
  draw({ across, along }, { steps, rib }, pen) {
    const unit = movedPen(pen, ([x, y]) => [across * (x - 0.5), along * (y - 0.5)]);
    const edge = rib / 2;
    // The band is as wide as half a step.
    const step = (1 - 2 * rib) / (steps + 0.6);
    const width = 0.6 * step;
    const flight = (away: number): Point[] =>
      Array.from({ length: steps }, (_, i) => i).flatMap((i): Point[] => {
        const x = edge + (steps - i) * step + away;
        return [
          [x, i === 0 ? edge : edge + i * step + away],
          [x, edge + (i + 1) * step + away],
        ];
      });
    unit.part('corner');
    polygon(unit, [[edge, edge], ...flight(0), [edge, edge + steps * step]]);
    unit.part('corner-alternate');
    const away = rib + width / 2;
    band(unit, [...flight(away), [edge, edge + steps * step + away]], width);
  },
});
