import { expect, test } from 'vitest';
import type { Piece, Ring, Side } from '../../src/geometry/path.ts';
import { ShapeBook } from '../../src/stencil/shape.ts';

type Point = [number, number];
const ring = (points: Point[]): Ring => ({
  start: points[0]!,
  sides: [...points.slice(1), points[0]!].map((to): Side => ({ kind: 'line', to })),
});

const L: Point[] = [
  [0, 0],
  [30, 0],
  [30, 10],
  [10, 10],
  [10, 40],
  [0, 40],
];
const from = (at: number): Piece => [ring([...L.slice(at), ...L.slice(0, at)])];

test('a point more on a straight side makes no other shape', () => {
  const book = new ShapeBook();
  const { shape } = book.find(from(0));
  const more = [ring([...L.slice(0, 5), [5, 40], L[5]!])];
  expect(book.find(more).shape).toBe(shape);
  const longer = [ring(L.map(([x, y]): Point => [x, y === 40 ? 40.1 : y]))];
  expect(book.find(longer).shape).not.toBe(shape);
});

test('an outline is one shape wherever it begins, and another when it is turned or seen in a mirror', () => {
  const book = new ShapeBook();
  const { shape } = book.find(from(0));
  for (const at of [1, 2, 3, 4, 5]) expect(book.find(from(at)).shape).toBe(shape);
  expect(new Set([0, 1, 2, 3].map((turns) => book.turn(shape, turns))).size).toBe(4);
  expect(book.mirror(shape)).not.toBe(shape);
  expect(book.turn(shape, 4)).toBe(shape);
});
