import { Clipper, EndType, JoinType } from 'clipper2-ts';
import { expect, test } from 'vitest';
import type { Point } from '../../src/geometry/path.ts';
import { inset } from '../../src/motif/shapes.ts';

const ring = (sides: number, radius: (i: number) => number): Point[] =>
  Array.from({ length: sides }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / sides;
    return [radius(i) * Math.cos(angle), radius(i) * Math.sin(angle)];
  });

const SHAPES: [name: string, points: Point[], by: number][] = [
  ['hexagon', ring(6, () => 80), 7],
  ['star with notches', ring(16, (i) => (i % 2 === 0 ? 100 : 76)), 4],
  ['long diamond', [[0, -90], [40, 0], [0, 90], [-40, 0]], 5], // biome-ignore format: a row of corners
  ['slanting block', [[0, 0], [50, 20], [50, 90], [0, 70]], 3], // biome-ignore format: a row of corners
];

// clipper2 moves sides in by a negative distance and keeps corners sharp when mitres may be long enough.
const STEPS = 10_000;
const clipped = (points: Point[], by: number): number => {
  const path = points.map(([x, y]) => ({ x: Math.round(x * STEPS), y: Math.round(y * STEPS) }));
  const found = Clipper.inflatePaths([path], -by * STEPS, JoinType.Miter, EndType.Polygon, 20);
  return Math.abs(Clipper.areaPaths(found)) / (STEPS * STEPS);
};

const area = (points: readonly Point[]): number =>
  points.reduce((sum, [x, y], i) => {
    const [u, v] = points[(i + 1) % points.length]!;
    return sum + (x * v - u * y) / 2;
  }, 0);

test.each(SHAPES)('%s: covers what clipper2 leaves of it', (_name, points, by) => {
  expect(Math.abs(area(inset(points, by)))).toBeCloseTo(clipped(points, by), 1);
});

test.each(SHAPES)('%s: runs the same way, whichever way that is', (_name, points, by) => {
  const back = [...points].reverse();
  expect(Math.sign(area(inset(points, by)))).toBe(Math.sign(area(points)));
  expect(Math.sign(area(inset(back, by)))).toBe(Math.sign(area(back)));
  expect(Math.abs(area(inset(back, by)))).toBeCloseTo(Math.abs(area(inset(points, by))), 9);
});

test('a regular hexagon stays regular, its apothem shorter by the distance (plane geometry)', () => {
  const found = inset(
    ring(6, () => 80),
    7,
  );
  for (const [x, y] of found) expect(Math.hypot(x, y)).toBeCloseTo(80 - 7 / Math.cos(Math.PI / 6), 9);
});

test('each side may have its own distance', () => {
  const square: Point[] = [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ];
  const found = inset(square, [1, 2, 3, 0]);
  [0, 1, 8, 1, 8, 7, 0, 7].forEach((value, i) => {
    expect(found[Math.floor(i / 2)]![i % 2]).toBeCloseTo(value, 12);
  });
});
