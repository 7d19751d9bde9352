import { describe, expect, test } from 'vitest';
import { pieceArea, ringArea } from '../../src/geometry/measure.ts';
import { defineMotif, type Pen, PLAIN } from '../../src/motif/motif.ts';
import { drawMotif } from '../../src/motif/record.ts';
import { circle, rectangle } from '../../src/motif/shapes.ts';

const record = (draw: (pen: Pen) => void) =>
  drawMotif(
    defineMotif({
      name: 'trial',
      kind: 'field',
      summary: 'A trial.',
      parameters: {},
      ratio: 1,
      lines: { across: PLAIN, along: PLAIN },
      made: 'sheet',
      draw: (_cell, _settings, pen) => draw(pen),
    }),
    { across: 100, along: 100 },
    {},
  );

describe('rings', () => {
  test('close themselves by a line, also without close()', () => {
    const [drawn] = record((pen) => {
      pen.part('field');
      pen.moveTo(0, 0);
      pen.lineTo(30, 0);
      pen.lineTo(30, 40);
      pen.moveTo(50, 50);
      pen.lineTo(80, 50);
      pen.lineTo(80, 90);
      pen.close();
    });
    expect(drawn!.pieces).toHaveLength(2);
    for (const [ring] of drawn!.pieces) {
      expect(ring!.sides).toHaveLength(3);
      expect(ring!.sides[2]!.to).toEqual(ring!.start);
      expect(ringArea(ring!)).toBe(600);
    }
  });

  test('that end on their start are not closed twice, and lines without length are left out', () => {
    const [drawn] = record((pen) => {
      pen.part('field');
      pen.moveTo(0, 0);
      pen.lineTo(30, 0);
      pen.lineTo(30, 0);
      pen.lineTo(30, 40);
      pen.lineTo(1e-12, 0);
      pen.close();
    });
    expect(drawn!.pieces[0]![0]!.sides.map(({ to }) => to)).toEqual([
      [30, 0],
      [30, 40],
      [0, 0],
    ]);
  });
});

describe('nesting', () => {
  const target = (pen: Pen, ...radii: number[]) => {
    for (const r of radii) circle(pen, 0, 0, r);
  };

  test('rings in rings take turns as pieces and holes, whichever is drawn first', () => {
    for (const radii of [
      [40, 30, 20, 10],
      [10, 20, 30, 40],
    ]) {
      const [drawn] = record((pen) => {
        pen.part('field');
        target(pen, ...radii);
      });
      expect(drawn!.pieces.map((piece) => piece.length)).toEqual([2, 2]);
      const areas = drawn!.pieces.map(pieceArea).sort((a, b) => a - b);
      // π (r² − r²), cubics within 0.06 % of area.
      expect(areas[0]! / (Math.PI * (400 - 100))).toBeCloseTo(1, 3);
      expect(areas[1]! / (Math.PI * (1600 - 900))).toBeCloseTo(1, 3);
      for (const [outer, hole] of drawn!.pieces) {
        expect(ringArea(outer!)).toBeGreaterThan(0);
        expect(ringArea(hole!)).toBeLessThan(0);
      }
    }
  });

  test('direction of drawing does not matter', () => {
    const [drawn] = record((pen) => {
      pen.part('field');
      pen.moveTo(0, 0);
      pen.lineTo(0, 10);
      pen.lineTo(10, 0);
      pen.close();
    });
    expect(ringArea(drawn!.pieces[0]![0]!)).toBe(50);
  });

  test('rings that touch along a side or at a corner stay pieces of their own', () => {
    const [drawn] = record((pen) => {
      pen.part('field');
      rectangle(pen, -10, 0, 20, 20);
      rectangle(pen, 10, 0, 20, 20);
      rectangle(pen, 25, 15, 10, 10);
    });
    expect(drawn!.pieces.map((piece) => piece.length)).toEqual([1, 1, 1]);
  });

  test('a hole may touch the ring it lies in', () => {
    const [drawn] = record((pen) => {
      pen.part('field');
      rectangle(pen, 0, 0, 40, 40);
      rectangle(pen, -10, -10, 20, 20);
    });
    expect(drawn!.pieces.map((piece) => piece.length)).toEqual([2]);
    expect(pieceArea(drawn!.pieces[0]!)).toBe(1200);
  });

  test('parts do not nest in each other', () => {
    const drawn = record((pen) => {
      pen.part('field');
      target(pen, 40, 30);
      pen.part('alternate');
      target(pen, 25);
      pen.part('field');
      target(pen, 10);
    });
    expect(drawn.map(({ part, pieces }) => [part, pieces.map((piece) => piece.length)])).toEqual([
      ['field', [2, 1]],
      ['alternate', [1]],
    ]);
  });
});

describe('a motif at fault is told so by name', () => {
  test('for a ring before any part', () =>
    expect(() => record((pen) => rectangle(pen, 0, 0, 10, 10))).toThrow(
      'motif trial: a ring is drawn before its part is named',
    ));

  test.each<[string, (pen: Pen) => void, string]>([
    ['a width that is no number', (pen) => rectangle(pen, 0, 0, Number.NaN, 10), 'motif trial: a point is no number'],
    ['an endless width', (pen) => rectangle(pen, 0, 0, Infinity, 10), 'motif trial: a point is no number'],
    ['no width', (pen) => rectangle(pen, 0, 0, 0, 10), 'motif trial: a ring has no area'],
    ['a line from nowhere', (pen) => pen.lineTo(1, 1), 'motif trial: a side is drawn before moveTo'],
  ])('for %s', (_what, draw, message) =>
    expect(() =>
      record((pen) => {
        pen.part('field');
        draw(pen);
      }),
    ).toThrow(message),
  );
});
