import { describe, expect, test } from 'vitest';
import { pointOnCurve } from '../../src/geometry/flatten.ts';
import { pieceArea, pieceBox } from '../../src/geometry/measure.ts';
import type { Piece, Point } from '../../src/geometry/path.ts';
import { defineMotif, type Pen, PLAIN } from '../../src/motif/motif.ts';
import { drawMotif } from '../../src/motif/record.ts';
import { arc, circle, ellipse, polygon, rectangle, regularPolygon } from '../../src/motif/shapes.ts';

const drawn = (draw: (pen: Pen) => void): Piece => {
  const motif = defineMotif({
    name: 'trial',
    kind: 'field',
    summary: 'A trial.',
    parameters: {},
    ratio: 1,
    lines: { across: PLAIN, along: PLAIN },
    made: 'sheet',
    draw(_cell, _settings, pen) {
      pen.part('field');
      draw(pen);
    },
  });
  return drawMotif(motif, { across: 100, along: 100 }, {})[0]!.pieces[0]!;
};

/** Points all along the curves of a piece. */
function along(piece: Piece, count: number): Point[] {
  const points: Point[] = [];
  for (const ring of piece) {
    let from = ring.start;
    for (const side of ring.sides) {
      if (side.kind === 'curve') for (let i = 0; i <= count; i++) points.push(pointOnCurve(from, side, i / count));
      from = side.to;
    }
  }
  return points;
}

describe('circle', () => {
  test('of four cubics strays from the radius by 0.0272530 % at most (handles at 4/3 (√2 − 1): exact)', () => {
    const piece = drawn((pen) => circle(pen, 3, -4, 1000));
    expect(piece[0]!.sides).toHaveLength(4);
    const errors = along(piece, 10_000).map(([x, y]) => Math.sqrt((x - 3) ** 2 + (y + 4) ** 2) / 1000 - 1);
    expect(Math.max(...errors) * 100).toBeCloseTo(0.027253, 6);
    expect(Math.min(...errors)).toBeGreaterThan(-1e-9);
  });

  test('has handles of 0.5522847498 r', () => {
    const [ring] = drawn((pen) => circle(pen, 0, 0, 1));
    const [side] = ring!.sides;
    expect(side!.kind === 'curve' && side!.out[1]).toBeCloseTo(0.5522847498, 10);
  });
});

describe('arc', () => {
  test.each([
    [0, Math.PI / 5],
    [-2.2, 2.2],
    [Math.PI, -0.4],
    [1, 1 + 2 * Math.PI * 0.99],
  ])('from %d to %d stays on its ellipse within 0.0273 % and ends where it should', (from, to) => {
    const piece = drawn((pen) => {
      pen.moveTo(5 + 40 * Math.cos(from), 6 + 25 * Math.sin(from));
      arc(pen, 5, 6, 40, 25, from, to);
      pen.lineTo(5, 6);
      pen.close();
    });
    for (const [x, y] of along(piece, 200)) {
      expect(Math.abs(Math.sqrt(((x - 5) / 40) ** 2 + ((y - 6) / 25) ** 2) - 1)).toBeLessThan(2.73e-4);
    }
    // A sector of an ellipse: a b |angle| / 2.
    expect(pieceArea(piece) / ((40 * 25 * Math.abs(to - from)) / 2)).toBeCloseTo(1, 3);
    const ends = piece[0]!.sides.map((side) => side.to);
    const wanted: Point = [5 + 40 * Math.cos(to), 6 + 25 * Math.sin(to)];
    const near = Math.min(
      ...[...ends, piece[0]!.start].map(([x, y]) => Math.abs(x - wanted[0]) + Math.abs(y - wanted[1])),
    );
    expect(near).toBeLessThan(1e-9);
  });
});

test('ellipse has area π a b and its own box', () => {
  const piece = drawn((pen) => ellipse(pen, 1, 2, 30, 20));
  expect(pieceArea(piece) / (Math.PI * 600)).toBeCloseTo(1, 3);
  const box = pieceBox(piece);
  expect([box.left, box.right, box.top, box.bottom].map((v) => Number(v.toFixed(9)))).toEqual([-29, 31, -18, 22]);
});

test('rectangle', () =>
  expect(pieceBox(drawn((pen) => rectangle(pen, 10, 20, 4, 6)))).toEqual({ left: 8, right: 12, top: 17, bottom: 23 }));

test('polygon: the 3-4-5 triangle has area 6', () =>
  expect(
    pieceArea(
      drawn((pen) =>
        polygon(pen, [
          [0, 0],
          [4, 0],
          [0, 3],
        ]),
      ),
    ),
  ).toBe(6));

test.each([3, 4, 6, 8, 12])('regular polygon of %d sides: n r² sin(2π/n) / 2, first corner at the top', (sides) => {
  const piece = drawn((pen) => regularPolygon(pen, 0, 0, 50, sides));
  expect(pieceArea(piece)).toBeCloseTo((sides * 2500 * Math.sin((2 * Math.PI) / sides)) / 2, 8);
  expect(pieceBox(piece).top).toBeCloseTo(-50, 9);
});
