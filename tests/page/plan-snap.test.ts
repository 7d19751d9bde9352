import fc from 'fast-check';
import paper from 'paper/dist/paper-core.js';
import { expect, test } from 'vitest';
import star from '../../motifs/eight-point-star.ts';
import petal from '../../motifs/four-petal.ts';
import { compose } from '../../src/compose/compose.ts';
import type { Region } from '../../src/compose/drawing.ts';
import type { Piece, Point } from '../../src/geometry/path.ts';
import { snapTo } from '../../src/page/plan/snap.ts';
import { makeLayout } from '../support/layout.ts';
import { settingsOf } from '../support/motifs.ts';

/** Corners of the pieces and the points midway along their curves, by paper 0.12: `getPointAtTime(0.5)`. */
function byPaper(pieces: readonly Piece[]): Point[] {
  return pieces.flat().flatMap(({ start, sides }): Point[] => {
    const path = new paper.Path({ insert: false });
    path.moveTo(new paper.Point(start[0], start[1]));
    for (const side of sides)
      if (side.kind === 'line') path.lineTo(new paper.Point(side.to[0], side.to[1]));
      else
        path.cubicCurveTo(
          new paper.Point(side.out[0], side.out[1]),
          new paper.Point(side.into[0], side.into[1]),
          new paper.Point(side.to[0], side.to[1]),
        );
    path.closePath();
    return path.curves.flatMap((curve): Point[] => {
      const middle = curve.getPointAtTime(0.5);
      return [
        [curve.point1.x, curve.point1.y],
        [middle.x, middle.y],
      ];
    });
  });
}

/** Every place of every shape, one after the other. */
const everywhere = (regions: readonly Region[]): Point[] =>
  regions.flatMap(({ pieces, at }) => {
    const own = byPaper(pieces);
    return Array.from({ length: at.length / 2 }, (_, n) =>
      own.map(([x, y]): Point => [x + at[2 * n]!, y + at[2 * n + 1]!]),
    ).flat();
  });

paper.setup(new paper.Size(1, 1));

test.each([
  ['eight-point-star', star],
  ['four-petal', petal],
] as const)('%s: the nearest point is the one found by going through all of them', async (_, motif) => {
  const layout = makeLayout({ repeats: { across: 6, along: 4.5 } });
  const settings = settingsOf(motif);
  const { regions } = await compose(
    layout,
    { field: { settings }, border: { settings: {}, corner: { settings: {} } } },
    { field: motif },
  );
  const marks: Point[] = [
    [0, 0],
    [-123.4, 77],
  ];
  const all = [...everywhere(regions), ...marks];
  const snap = snapTo(regions, marks);
  const coordinate = fc.double({ min: -400, max: 400, noNaN: true });
  fc.assert(
    fc.property(coordinate, coordinate, fc.double({ min: 1, max: 60, noNaN: true }), (x, y, reach) => {
      const least = Math.min(...all.map(([px, py]) => Math.hypot(px - x, py - y)));
      const found = snap([x, y], reach);
      if (least > reach + 1e-6) expect(found).toBeUndefined();
      else if (least < reach - 1e-6) expect(Math.hypot(found![0] - x, found![1] - y)).toBeCloseTo(least, 5);
    }),
    { numRuns: 300 },
  );
});

test('nothing to catch, nothing caught', () => {
  expect(snapTo([], [])([0, 0], 1000)).toBeUndefined();
});
