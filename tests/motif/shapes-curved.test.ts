import { describe, expect, test } from 'vitest';
import { pieceArea, pieceBox } from '../../src/geometry/measure.ts';
import type { Piece } from '../../src/geometry/path.ts';
import { defineMotif, type Pen, PLAIN } from '../../src/motif/motif.ts';
import { drawMotif } from '../../src/motif/record.ts';
import { band, blade, crossing, leaf, movedPen, onCircle, petal, ringBar } from '../../src/motif/shapes.ts';

const drawn = (draw: (pen: Pen) => void): Piece => {
  const motif = defineMotif({
    name: 'trial',
    kind: 'field',
    summary: '',
    parameters: {},
    ratio: 1,
    lines: { across: PLAIN, along: PLAIN },
    made: 'sheet',
    draw: (_cell, _settings, pen) => {
      pen.part('field');
      draw(pen);
    },
  });
  return drawMotif(motif, { across: 1, along: 1 }, {})[0]!.pieces[0]!;
};

/** An arc of cubics encloses up to about 3 parts in 10 000 more or less than a circle. */
const CUBIC = 4e-4;
const expectArea = (piece: Piece, area: number): void =>
  expect(Math.abs(pieceArea(piece) / area - 1)).toBeLessThan(CUBIC);

describe('areas by the usual formulas', () => {
  test('a leaf of two circles through each other’s middles is the vesica', () => {
    // Two circles of radius 30, middles 30 apart: 30 wide, 30 √3 long, area r² (2π/3 - √3/2) (Euclid, Elements I.1).
    const piece = drawn((pen) => leaf(pen, [5, 2], [5, 2 + 30 * Math.sqrt(3)], 30));
    expectArea(piece, 900 * ((2 * Math.PI) / 3 - Math.sqrt(3) / 2));
    const box = pieceBox(piece);
    expect(box.right - box.left).toBeCloseTo(30, 2);
  });

  test('a petal is two right triangles and the rest of its circle', () => {
    const [from, to, r] = [4, 40, 8];
    const away = to - r - from;
    const lean = Math.asin(r / away);
    const piece = drawn((pen) => petal(pen, 0.7, from, to, 2 * r));
    expectArea(piece, away * Math.cos(lean) * r + (r * r * (Math.PI + 2 * lean)) / 2);
  });

  test('a bar of a ring without ribs is its share of the ring', () => {
    const piece = drawn((pen) => ringBar(pen, 1, Math.PI / 5, 30, 50, 0));
    expectArea(piece, (Math.PI / 5) * (50 ** 2 - 30 ** 2));
  });

  test('a blade without ribs is a sector with a round end', () => {
    const [half, from, to] = [Math.PI / 7, 10, 60];
    const middle = to / (1 + Math.sin(half));
    const r = to - middle;
    const flank = middle * Math.cos(half);
    const piece = drawn((pen) => blade(pen, 2, half, from, to, 0));
    // Kite from the origin to where the end touches the flanks, the end beyond them, less the sector at the foot.
    expectArea(piece, flank * r + (r * r * (Math.PI + 2 * half)) / 2 - half * from * from);
  });

  test('a band with square corners is as large as its middle line is long', () => {
    const piece = drawn((pen) =>
      band(
        pen,
        [
          [0, 0],
          [40, 0],
          [40, 25],
          [10, 25],
        ],
        6,
      ),
    );
    expect(pieceArea(piece)).toBeCloseTo((40 + 25 + 30) * 6, 9);
    expect(pieceBox(piece)).toEqual({ left: 0, top: -3, right: 43, bottom: 28 });
  });
});

test('lines meet, and leave a circle, where they should', () => {
  expect(crossing([0, 0], [4, 4], [0, 4], [4, 0])).toEqual([2, 2]);
  // A 3-4-5 triangle.
  const [x, y] = onCircle([1, 4], [2, 4], 5);
  expect(x).toBeCloseTo(3, 12);
  expect(y).toBeCloseTo(4, 12);
});

test('a moved pen moves handles as well as ends', () => {
  const still = drawn((pen) => leaf(pen, [0, 0], [10, 0], 4));
  const moved = drawn((pen) =>
    leaf(
      movedPen(pen, ([x, y]) => [3 - 2 * x, 1 + 5 * y]),
      [0, 0],
      [10, 0],
      4,
    ),
  );
  expect(pieceArea(moved)).toBeCloseTo(10 * pieceArea(still), 9);
});
