import { pointOnCurve } from './flatten.ts';
import type { Point, Side } from './path.ts';

type Curve = Side & { kind: 'curve' };

const between = (a: Point, b: Point, t: number): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

/** The stretch of a side between two parameters, 0 to 1, and where it starts. The whole side comes back as it is. */
export function stretchOf(from: Point, side: Side, t0: number, t1: number): { from: Point; side: Side } {
  if (t0 === 0 && t1 === 1) return { from, side };
  if (side.kind === 'line') {
    const start = t0 === 0 ? from : between(from, side.to, t0);
    return { from: start, side: { kind: 'line', to: t1 === 1 ? side.to : between(from, side.to, t1) } };
  }
  return stretchOfCurve(from, side, t0, t1);
}

/** A cubic between two parameters: its ends lie on it, its handles a third of the way along its slope there. */
function stretchOfCurve(from: Point, curve: Curve, t0: number, t1: number): { from: Point; side: Side } {
  const slope = (t: number): Point => {
    const a = between(from, curve.out, t);
    const b = between(curve.out, curve.into, t);
    const c = between(curve.into, curve.to, t);
    const [p, q] = [between(a, b, t), between(b, c, t)];
    return [q[0] - p[0], q[1] - p[1]];
  };
  const start = t0 === 0 ? from : pointOnCurve(from, curve, t0);
  const end = t1 === 1 ? curve.to : pointOnCurve(from, curve, t1);
  const [s0, s1] = [slope(t0), slope(t1)];
  const span = t1 - t0;
  return {
    from: start,
    side: {
      kind: 'curve',
      out: [start[0] + s0[0] * span, start[1] + s0[1] * span],
      into: [end[0] - s1[0] * span, end[1] - s1[1] * span],
      to: end,
    },
  };
}
