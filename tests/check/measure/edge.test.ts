import { describe, expect, test } from 'vitest';
import { type Edge, meet } from '../../../src/check/measure/edge.ts';
import { readPath } from '../../../src/check/read/path.ts';

const EDGES: Edge[] = ['left', 'right', 'near', 'far'];

/** Diamonds of 100 mm, clipped to a square field by hand: a row of them starts `phase` of a diamond before the edge. */
function field(size: number, phase: number) {
  const half = size / 2;
  const found: string[] = [];
  for (let i = 0; i * 100 - phase * 100 < size; i++) {
    for (let j = 0; j * 100 - phase * 100 < size; j++) {
      const [x, y] = [(i + 0.5 - phase) * 100 - half, (j + 0.5 - phase) * 100 - half];
      const ring = clip(
        [
          [x, y - 50],
          [x + 50, y],
          [x, y + 50],
          [x - 50, y],
        ],
        half,
      );
      if (ring.length > 2) found.push(`M${ring.map((point) => point.join(' ')).join('L')}Z`);
    }
  }
  const read = readPath(found.join(''));
  if (!read.ok) throw new Error(read.says);
  return read.value.outlines.map((outline) => ({ element: 'field', part: 'field', fill: '', outline }));
}

/** Sutherland and Hodgman's clipping of a convex polygon by the four sides of a square about the origin. */
function clip(ring: [number, number][], half: number): [number, number][] {
  let points = ring;
  for (const [axis, sign] of [
    [0, 1],
    [0, -1],
    [1, 1],
    [1, -1],
  ] as const) {
    const over = (point: [number, number]) => sign * point[axis] - half;
    points = points.flatMap((point, at): [number, number][] => {
      const before = points[(at + points.length - 1) % points.length]!;
      const [a, b] = [over(before), over(point)];
      const t = a / (a - b);
      const cut: [number, number] = [before[0] + t * (point[0] - before[0]), before[1] + t * (point[1] - before[1])];
      if (b <= 1e-9) return a > 1e-9 && b < -1e-9 ? [cut, point] : [point];
      return a < -1e-9 ? [cut] : [];
    });
  }
  return points;
}

describe.each(EDGES)('at the %s edge', (edge) => {
  test('four whole diamonds of four', () => {
    expect(meet(field(400, 0), edge, 200, 100, [])).toMatchObject({
      whole: 4,
      halves: 0,
      cut: 0,
      over: 0,
      next: { reach: 4, across: 0 },
    });
  });

  test('five halves of four and two half repeats', () => {
    expect(meet(field(400, 0.5), edge, 200, 100, [])).toMatchObject({
      whole: 0,
      halves: 5,
      cut: 0,
      over: 0,
      next: { across: 5 },
    });
  });

  test('a third taken off is neither', () => {
    const found = meet(field(400, 1 / 3), edge, 200, 100, []);
    expect(found.halves).toBe(0);
    expect(found.whole === 0 || found.next.across > 0).toBe(true);
  });

  test('diamonds that reach over it are seen', () => {
    expect(meet(field(400, 0), edge, 190, 100, []).over).toBe(4);
  });

  test('a single repeat is compared with its model', () => {
    const [one] = field(100, 0);
    expect(meet([one!], edge, 50, 100, [one!.outline])).toMatchObject({ whole: 1, halves: 0, alone: true });
  });
});
