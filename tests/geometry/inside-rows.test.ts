import fc from 'fast-check';
import paper from 'paper/dist/paper-core.js';
import { expect, test } from 'vitest';
import { insideRows } from '../../src/geometry/inside-rows.ts';
import type { Point } from '../../src/geometry/path.ts';

const whole = fc.integer({ min: -50, max: 50 });
const polygon = fc.array(fc.tuple(whole, whole), { minLength: 3, maxLength: 60 });
// Half way between whole numbers, where no corner lies.
const places = fc.array(fc.tuple(whole, whole), { minLength: 20, maxLength: 20 });

test('a point lies inside where paper says that it does, even-odd', () => {
  paper.setup(new paper.Size(1, 1));
  fc.assert(
    fc.property(polygon, places, (corners: Point[], points: Point[]) => {
      const path = new paper.Path({ segments: corners, closed: true, fillRule: 'evenodd', insert: false });
      const inside = insideRows(corners);
      for (const [x, y] of points) {
        const at = new paper.Point(x + 0.31, y + 0.47);
        if (path.getNearestPoint(at).getDistance(at) < 1e-6) continue;
        expect(inside(at.x, at.y)).toBe(path.contains(at));
      }
    }),
    { numRuns: 200 },
  );
});
