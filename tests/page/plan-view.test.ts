import fc from 'fast-check';
import paper from 'paper/dist/paper-core.js';
import { expect, test } from 'vitest';
import { moved, pinched, toPlan, toScreen, type View, wholeView, within, zoomed } from '../../src/page/plan/view.ts';

// The same moves as matrices of paper 0.12 (a general-purpose library for drawings), which knows nothing of ours.
const { Matrix, Point } = paper;
const matrixOf = ({ scale, x, y }: View) => new Matrix(scale, 0, 0, scale, x, y);
const near = (a: readonly number[], b: { x: number; y: number }) => {
  expect(a[0]).toBeCloseTo(b.x, 6);
  expect(a[1]).toBeCloseTo(b.y, 6);
};

const finite = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const view = fc.record({ scale: finite(0.01, 8), x: finite(-2000, 2000), y: finite(-2000, 2000) });
const point = fc.tuple(finite(-5000, 5000), finite(-5000, 5000));
const pixel = fc.tuple(finite(0, 1500), finite(0, 1000));

test('plan to screen and back, as the matrix and its inverse', () => {
  fc.assert(
    fc.property(view, point, (v, p) => {
      near(toScreen(v, p), matrixOf(v).transform(new Point(p[0], p[1])));
      near(toPlan(v, toScreen(v, p)), { x: p[0], y: p[1] });
    }),
  );
});

test('moving and zooming about a point, as matrices multiplied', () => {
  fc.assert(
    fc.property(view, pixel, point, finite(0.2, 5), (v, about, p, factor) => {
      const centre = new Point(about[0], about[1]);
      const want = new Matrix().scale(factor, centre).append(matrixOf(v));
      near(toScreen(zoomed(v, factor, about), p), want.transform(new Point(p[0], p[1])));
      const shift = new Matrix().translate(new Point(12, -7)).append(matrixOf(v));
      near(toScreen(moved(v, 12, -7), p), shift.transform(new Point(p[0], p[1])));
    }),
  );
});

test('a pinch without turning leaves under each finger what lay under it', () => {
  fc.assert(
    fc.property(
      view,
      pixel,
      finite(30, 300),
      finite(0, 6.28),
      pixel,
      finite(0.3, 3),
      (v, a, apart, turn, to, factor) => {
        const way = [Math.cos(turn), Math.sin(turn)] as const;
        const b = [a[0] + apart * way[0], a[1] + apart * way[1]] as const;
        const c = [to[0] + factor * apart * way[0], to[1] + factor * apart * way[1]] as const;
        const after = pinched(v, [a, b], [to, c]);
        // What a finger holds stays under it: the definition of the gesture.
        near(toScreen(after, toPlan(v, a)), { x: to[0], y: to[1] });
        near(toScreen(after, toPlan(v, b)), { x: c[0], y: c[1] });
      },
    ),
  );
});

const REACH = { left: -480, right: 480, top: -2700, bottom: 2700 };
const SIZE = { width: 800, height: 600 };
const MARGINS = { left: 50, right: 100, top: 40, bottom: 30 };
const whole = wholeView(REACH, SIZE, MARGINS);

test('the whole lies between its margins and touches two of them', () => {
  const [left, top] = toScreen(whole, [REACH.left, REACH.top]);
  const [right, bottom] = toScreen(whole, [REACH.right, REACH.bottom]);
  // 600 − 40 − 30 px for 5400 mm, by hand.
  expect(whole.scale).toBeCloseTo(530 / 5400, 9);
  expect([top, bottom]).toEqual([expect.closeTo(40, 6), expect.closeTo(570, 6)]);
  expect(left - 50).toBeCloseTo(700 - right, 6);
});

test('however it is moved, the middle of the screen stays on the plan, no further away than the whole', () => {
  fc.assert(
    fc.property(view, (v) => {
      const kept = within(v, whole, REACH, SIZE);
      if (v.scale <= whole.scale) expect(kept).toEqual(whole);
      const [x, y] = toPlan(kept, [400, 300]);
      expect(kept.scale).toBeGreaterThanOrEqual(whole.scale);
      expect(x).toBeGreaterThanOrEqual(REACH.left - 1e-6);
      expect(x).toBeLessThanOrEqual(REACH.right + 1e-6);
      expect(y).toBeGreaterThanOrEqual(REACH.top - 1e-6);
      expect(y).toBeLessThanOrEqual(REACH.bottom + 1e-6);
    }),
  );
});
