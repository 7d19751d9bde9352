import { describe, expect, test } from 'vitest';
import { isInside, pointInside } from '../../src/geometry/inside.ts';
import { pieceArea, ringArea } from '../../src/geometry/measure.ts';
import { nestRings } from '../../src/geometry/nest.ts';
import type { Point } from '../../src/geometry/path.ts';
import { readRings } from '../support/read-path.ts';

/** A square ring of half-width r about a point, run one way or the other. */
const square = (r: number, x = 0, y = 0, back = false): string =>
  back ? `M${x - r} ${y - r}V${y + r}H${x + r}V${y - r}z` : `M${x - r} ${y - r}H${x + r}V${y + r}H${x - r}z`;

describe('nestRings', () => {
  test('counts as even-odd filling does, whatever the directions', () => {
    for (const back of [true, false]) {
      const pieces = nestRings(readRings([1, 2, 3, 4, 5].map((r) => square(r, 0, 0, back)).join('')));
      expect(pieces.map((piece) => piece.map((ring) => Math.sign(ringArea(ring))))).toEqual([[1], [1, -1], [1, -1]]);
      // 4 (25 − 16 + 9 − 4 + 1)
      expect(pieces.reduce((sum, piece) => sum + pieceArea(piece), 0)).toBe(60);
    }
  });

  test('gives two holes side by side to the one ring round them', () => {
    const pieces = nestRings(readRings(square(10) + square(3, -5) + square(3, 5)));
    expect(pieces.map((piece) => piece.length)).toEqual([3]);
  });

  test('keeps holes that meet at a corner apart, and pieces inside them', () => {
    const pieces = nestRings(readRings(square(10) + square(4, -4, -4) + square(4, 4, 4) + square(1, 4, 4)));
    expect(pieces.map((piece) => piece.length)).toEqual([3, 1]);
  });

  test('a ring in the notch of another is not inside it', () => {
    const pieces = nestRings(readRings(`M0 0H30V30H20V10H10V30H0z${square(4, 15, 20)}`));
    expect(pieces.map((piece) => piece.length)).toEqual([1, 1]);
  });

  test('of nothing is nothing', () => expect(nestRings([])).toEqual([]));
});

describe('pointInside', () => {
  test.each<[string, Point[]]>([
    [
      'a sliver',
      [
        [0, 0],
        [1000, 0.001],
        [0, 0.002],
      ],
    ],
    [
      'a comb',
      [
        [0, 0],
        [30, 0],
        [30, 30],
        [20, 30],
        [20, 5],
        [10, 5],
        [10, 30],
        [0, 30],
      ],
    ],
    [
      'a tilted bar',
      [
        [0, 0],
        [1, -1],
        [101, 99],
        [100, 100],
      ],
    ],
  ])('of %s is inside it', (_name, polygon) => expect(isInside(polygon, pointInside(polygon))).toBe(true));
});
