import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Drawing } from '../../src/compose/drawing.ts';
import { pieceArea, pieceBox } from '../../src/geometry/measure.ts';
import type { Piece } from '../../src/geometry/path.ts';
import { mirrored, shifted } from '../../src/geometry/transform.ts';
import { coveredArea, differingArea, rectanglePiece, sharedArea } from '../support/areas.ts';
import { composeNamed, paintedIn, partsOf } from '../support/compose.ts';
import { type LayoutWish, makeLayout } from '../support/layout.ts';
import { piecesOf } from '../support/motifs.ts';

const area = (pieces: Piece[]): number => pieces.reduce((sum, piece) => sum + pieceArea(piece), 0);
const all = (drawing: Drawing): Piece[] => paintedIn(drawing, () => true);

/** How uneven a drawing is about its centre lines: area, mm², that its mirror image paints otherwise, by clipper2. */
function unevenness(drawing: Drawing, axis: 'across' | 'along'): number {
  return partsOf(drawing)
    .map((part) => paintedIn(drawing, (region) => region.part === part))
    .reduce(
      (sum, pieces) =>
        sum +
        differingArea(
          pieces,
          pieces.map((piece) => mirrored(piece, axis)),
        ),
      0,
    );
}

describe('whole repeats', () => {
  test('stand where the layout says, each once, in one region a part', async () => {
    const drawing = await composeNamed(
      { repeats: { across: 3, along: 4 }, pitch: { across: 120, along: 90 } },
      { field: 'diamond' },
    );
    expect(drawing.regions).toHaveLength(1);
    const [region] = drawing.regions;
    expect(region).toMatchObject({ element: 'field', part: 'field', cut: false });
    const places = Array.from({ length: 12 }, (_, i) => [region!.at[2 * i]!, region!.at[2 * i + 1]!]);
    // Row by row from the near end (y down, so the largest y first), left to right.
    const wanted = [135, 45, -45, -135].flatMap((y) => [-120, 0, 120].map((x) => [x, y]));
    expect(places).toEqual(wanted);
    expect(drawing.field).toEqual({ left: -180, right: 180, top: -180, bottom: 180 });
  });

  test('are one object, however often they are painted', async () => {
    const drawing = await composeNamed({ repeats: { across: 300, along: 300 } }, { field: 'eight-point-star' });
    expect(drawing.regions.map(({ part, at }) => [part, at.length])).toEqual([
      ['field', 180_000],
      ['alternate', 180_000],
    ]);
  });
});

describe('an edge that cuts', () => {
  test('through the middle of diamonds leaves wholes, halves and quarters', async () => {
    const drawing = await composeNamed(
      { repeats: { across: 3, along: 4 }, phase: { across: 0.5, along: 0.5 } },
      { field: 'diamond' },
    );
    const counts = new Map<number, number>();
    for (const piece of all(drawing)) {
      const size = Math.round(pieceArea(piece) * 1e6) / 1e6;
      counts.set(size, (counts.get(size) ?? 0) + 1);
    }
    // 2 × 3 whole of 5000 mm², 2 (2 + 3) halves, 4 quarters.
    expect(Object.fromEntries(counts)).toEqual({ 5000: 6, 2500: 10, 1250: 4 });
    expect(drawing.regions.filter(({ cut }) => cut)).toHaveLength(8);
  });

  test('needs eight distinct clips at most for a part, however large the field', async () => {
    const drawing = await composeNamed(
      { repeats: { across: 200, along: 300 }, phase: { across: 0.31, along: 0.77 } },
      { field: 'lozenge' },
    );
    expect(drawing.regions.filter(({ cut }) => cut)).toHaveLength(8);
    expect(drawing.regions.filter(({ cut }) => !cut)).toHaveLength(1);
    // Whole repeats across or along tile, so whatever the phase, half of the field is painted.
    const total = drawing.regions.reduce((sum, { pieces, at }) => sum + area(pieces) * (at.length / 2), 0);
    expect(total / (200 * 100 * 300 * 100)).toBeCloseTo(0.5, 9);
  });

  test('on both sides of one repeat clips it to what is left', async () => {
    const drawing = await composeNamed(
      { repeats: { across: 0.5, along: 0.5 }, phase: { across: 0.25, along: 0.25 } },
      { field: 'diamond' },
    );
    // A 50 × 50 window in the middle of a diamond of 100 × 100 lies inside it: its corners touch the sides.
    expect(area(all(drawing))).toBeCloseTo(2500, 6);
  });

  test('cuts no square of a checkerboard that lands on its squares', async () => {
    const drawing = await composeNamed({ repeats: { across: 3.5, along: 2.5 } }, { field: 'checkerboard' });
    const squares = all(drawing);
    // 7 × 5 squares with painted corners: 18 painted, 17 bare.
    expect(squares).toHaveLength(18);
    for (const square of squares) expect(pieceArea(square)).toBeCloseTo(2500, 9);
    const { left, right, top, bottom } = drawing.field;
    for (const [x, y] of [
      [left, top],
      [right, top],
      [left, bottom],
      [right, bottom],
    ] as const) {
      const boxes = squares.map(pieceBox);
      const atCorner = boxes.filter(
        (box) =>
          Math.min(Math.abs(box.left - x), Math.abs(box.right - x)) < 1e-9 &&
          Math.min(Math.abs(box.top - y), Math.abs(box.bottom - y)) < 1e-9,
      );
      expect(atCorner).toHaveLength(1);
    }
  });

  test('keeps rounding noise from cutting: a third of a metre divided by 37', async () => {
    const pitch = { across: 1000 / 3 / 37, along: 5000 / 7 / 53 };
    const drawing = await composeNamed({ repeats: { across: 37, along: 53 }, pitch }, { field: 'diamond' });
    expect(drawing.regions.map(({ cut, at }) => [cut, at.length / 2])).toEqual([[false, 37 * 53]]);
  });
});

const wishes = fc.record({
  repeats: fc.record({
    across: fc.integer({ min: 1, max: 9 }).map((n) => n / 2),
    along: fc.integer({ min: 1, max: 9 }).map((n) => n / 2),
  }),
  pitch: fc.record({
    across: fc.integer({ min: 40_000, max: 300_000 }).map((n) => n / 1000),
    along: fc.integer({ min: 40_000, max: 300_000 }).map((n) => n / 1000),
  }),
  phase: fc.record({
    across: fc.integer({ min: 0, max: 999 }).map((n) => n / 1000),
    along: fc.integer({ min: 0, max: 999 }).map((n) => n / 1000),
  }),
});

describe.each(['diamond', 'lozenge', 'checkerboard', 'eight-point-star'])('%s, any layout', (name) => {
  test('paints what clipper2 leaves of an endless pattern inside the field, and stays in it', async () => {
    await fc.assert(
      fc.asyncProperty(wishes, async (wish) => {
        const drawing = await composeNamed(wish, { field: name });
        const { pitch, phase, repeats } = makeLayout(wish);
        const { field } = drawing;
        const one = piecesOf(name, pitch);
        const endless: Piece[] = [];
        for (let i = 0; i <= repeats.across + 1; i++) {
          for (let j = 0; j <= repeats.along + 1; j++) {
            const x = field.left + (i + 0.5 - phase.across) * pitch.across;
            const y = field.bottom - (j + 0.5 - phase.along) * pitch.along;
            endless.push(...one.map((piece) => shifted(piece, x, y)));
          }
        }
        const window = [rectanglePiece(field)];
        const mine = all(drawing);
        const size = (field.right - field.left) * (field.bottom - field.top);
        const tolerance = 0.05 + 2e-6 * size;
        expect(Math.abs(area(mine) - sharedArea(endless, window))).toBeLessThan(tolerance);
        expect(differingArea(mine, endless)).toBeLessThan(coveredArea(endless) - coveredArea(mine) + tolerance);
        for (const piece of mine) {
          const box = pieceBox(piece);
          expect(box.left).toBeGreaterThanOrEqual(field.left - 1e-5);
          expect(box.right).toBeLessThanOrEqual(field.right + 1e-5);
          expect(box.top).toBeGreaterThanOrEqual(field.top - 1e-5);
          expect(box.bottom).toBeLessThanOrEqual(field.bottom + 1e-5);
        }
      }),
      { seed: 11, numRuns: 20 },
    );
  });
});

describe('a layout that lands is the same from the other side', () => {
  const cases: [name: string, wish: Partial<LayoutWish>][] = [
    ['diamond', { repeats: { across: 3, along: 4 } }],
    ['diamond', { repeats: { across: 4, along: 3 }, phase: { across: 0.5, along: 0.5 } }],
    ['diamond', { repeats: { across: 2, along: 3 }, phase: { across: 0, along: 0.5 } }],
    ['lozenge', { repeats: { across: 3, along: 2 }, pitch: { across: 100, along: 173.3 } }],
    ['lozenge', { repeats: { across: 3, along: 2 }, phase: { across: 0.5, along: 0.5 } }],
    ['checkerboard', { repeats: { across: 3.5, along: 2.5 } }],
    ['checkerboard', { repeats: { across: 1.5, along: 3.5 }, phase: { across: 0.5, along: 0.5 } }],
    ['checkerboard', { repeats: { across: 3, along: 2 }, phase: { across: 0.25, along: 0.25 } }],
    ['eight-point-star', { repeats: { across: 3, along: 2 } }],
    ['eight-point-star', { repeats: { across: 2, along: 3 }, phase: { across: 0.5, along: 0.5 } }],
  ];
  test.each(cases)('%s %j', async (name, wish) => {
    const drawing = await composeNamed(wish, { field: name });
    expect(unevenness(drawing, 'across')).toBeLessThan(0.05);
    expect(unevenness(drawing, 'along')).toBeLessThan(0.05);
  });

  test.each<[string, Partial<LayoutWish>]>([
    ['diamond', { phase: { across: 0.2, along: 0.2 } }],
    // An even number of squares does not mirror.
    ['checkerboard', { repeats: { across: 3, along: 3 } }],
  ])('and one that does not is not: %s %j', async (name, wish) => {
    const drawing = await composeNamed(wish, { field: name });
    expect(unevenness(drawing, 'across')).toBeGreaterThan(1000);
    expect(unevenness(drawing, 'along')).toBeGreaterThan(1000);
  });
});
