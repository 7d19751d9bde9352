import { describe, expect, test } from 'vitest';
import type { Drawing, Element } from '../../src/compose/drawing.ts';
import { pieceArea, pieceBox } from '../../src/geometry/measure.ts';
import type { Box, Piece, Point } from '../../src/geometry/path.ts';
import { mirrored } from '../../src/geometry/transform.ts';
import { coveredArea, differingArea, sharedArea, woundArea } from '../support/areas.ts';
import { composeNamed, painted, paintedIn, partsOf } from '../support/compose.ts';
import type { LayoutWish } from '../support/layout.ts';

const WISH: Partial<LayoutWish> = {
  repeats: { across: 3, along: 4 },
  pitch: { across: 150, along: 150 },
  border: 90,
  borderRepeats: { across: 5, along: 7 },
};
const SIDES: Element[] = ['border-near', 'border-far', 'border-left', 'border-right'];

const of = (drawing: Drawing, element: Element): Piece[] => paintedIn(drawing, (region) => region.element === element);
const corners = (piece: Piece): Point[] => [...piece[0]!.sides.map(({ to }) => to)];

/** How far a point lies inside the outer edge of the work on the side named. */
const depth = (box: Box, element: Element, [x, y]: Point): number =>
  ({
    'border-near': box.bottom - y,
    'border-far': y - box.top,
    'border-left': x - box.left,
    'border-right': box.right - x,
  })[element as string] ?? Number.NaN;

describe('boxes', () => {
  test('border inside the work, reserve inside the border, field inside that', async () => {
    const drawing = await composeNamed({ ...WISH, reserve: { across: 10, along: 25 } }, { field: 'diamond' });
    expect(drawing.work).toEqual({ left: -325, right: 325, top: -415, bottom: 415 });
    expect(drawing.border.outer).toEqual(drawing.work);
    expect(drawing.border.inner).toEqual({ left: -235, right: 235, top: -325, bottom: 325 });
    expect(drawing.field).toEqual({ left: -225, right: 225, top: -300, bottom: 300 });
  });

  test('without a border outer and inner edge are one', async () => {
    const drawing = await composeNamed(
      { ...WISH, border: 0 },
      { field: 'diamond', border: 'sawtooth', corner: 'plain' },
    );
    expect(drawing.border.outer).toEqual(drawing.border.inner);
    expect(drawing.regions.map(({ element }) => element)).toEqual(['field']);
  });
});

describe('sawtooth', () => {
  test('has the layout’s count of teeth on each side, equally far apart', async () => {
    const drawing = await composeNamed(WISH, { field: 'diamond', border: 'sawtooth', corner: 'quarter-fan' });
    expect(SIDES.map((side) => of(drawing, side).length)).toEqual([5, 5, 7, 7]);
    const middles = of(drawing, 'border-far').map((tooth) => (pieceBox(tooth).left + pieceBox(tooth).right) / 2);
    // Between the corner blocks: 450 mm in 5.
    expect(middles.map((x) => Math.round(x * 1e6) / 1e6)).toEqual([-180, -90, 0, 90, 180]);
  });

  test.each(SIDES)('stands on the outer edge and points inward: %s', async (side) => {
    const drawing = await composeNamed(WISH, { field: 'diamond', border: 'sawtooth', corner: 'quarter-fan' });
    const teeth = of(drawing, side);
    const pitch = side === 'border-left' || side === 'border-right' ? 600 / 7 : 450 / 5;
    for (const tooth of teeth) {
      const depths = corners(tooth).map((point) => depth(drawing.work, side, point));
      depths.sort((a, b) => a - b);
      expect(depths[0]).toBeCloseTo(0, 9);
      expect(depths[1]).toBeCloseTo(0, 9);
      expect(depths[2]).toBeCloseTo((90 * Math.sqrt(3)) / 2, 9);
      const box = pieceBox(tooth);
      const run = side === 'border-left' || side === 'border-right' ? box.bottom - box.top : box.right - box.left;
      expect(run).toBeCloseTo(pitch, 9);
    }
  });
});

describe('plain band', () => {
  test('is one rectangle a side, and with plain corners fills the whole border', async () => {
    const drawing = await composeNamed(WISH, { field: 'diamond', border: 'plain-band', corner: 'plain' });
    for (const side of SIDES) expect(of(drawing, side)).toHaveLength(1);
    const border = paintedIn(drawing, ({ element }) => element !== 'field');
    // 630 × 780 less 450 × 600.
    expect(coveredArea(border)).toBeCloseTo(630 * 780 - 450 * 600, 3);
    expect(woundArea(border)).toBeCloseTo(630 * 780 - 450 * 600, 3);
  });

  test('is left out where the layout has no border repeats', async () => {
    const drawing = await composeNamed(
      { ...WISH, borderRepeats: { across: 0, along: 0 } },
      { field: 'diamond', border: 'plain-band' },
    );
    expect(drawing.regions.map(({ element }) => element)).toEqual(['field']);
  });
});

describe('quarter fan', () => {
  test('opens from each outer corner: its disc lies nearer to it than any blade', async () => {
    const drawing = await composeNamed(WISH, { field: 'diamond', border: 'sawtooth', corner: 'quarter-fan' });
    const { left, right, top, bottom } = drawing.work;
    const discs = paintedIn(drawing, ({ part }) => part === 'corner-alternate').map(pieceBox);
    const blades = paintedIn(drawing, ({ part }) => part === 'corner').map(pieceBox);
    expect(discs).toHaveLength(4);
    expect(blades).toHaveLength(20);
    const rib = 0.035 * 90;
    for (const [x, y] of [
      [left, top],
      [right, top],
      [right, bottom],
      [left, bottom],
    ] as const) {
      const away = (box: Box) =>
        Math.max(
          Math.min(Math.abs(box.left - x), Math.abs(box.right - x)),
          Math.min(Math.abs(box.top - y), Math.abs(box.bottom - y)),
        );
      // One disc starts a rib from both edges of this corner.
      expect(discs.filter((box) => Math.abs(away(box) - rib) < 1e-9)).toHaveLength(1);
      expect(Math.min(...blades.map(away))).toBeGreaterThan(rib + 1);
    }
  });
});

describe.each([
  ['diamond', 'sawtooth', 'quarter-fan', WISH],
  ['eight-point-star', 'sawtooth', 'quarter-fan', { ...WISH, borderRepeats: { across: 4, along: 6 } }],
  ['checkerboard', 'plain-band', 'plain', { ...WISH, repeats: { across: 2.5, along: 3.5 } }],
  ['lozenge', 'sawtooth', 'plain', { ...WISH, phase: { across: 0.5, along: 0.5 }, reserve: { across: 12, along: 20 } }],
] as const)('%s with %s and %s', (field, border, corner, wish) => {
  const composed = composeNamed(wish, { field, border, corner });

  test('is the same from all four sides', async () => {
    const drawing = await composed;
    for (const part of partsOf(drawing)) {
      const pieces = paintedIn(drawing, (region) => region.part === part);
      for (const axis of ['across', 'along'] as const) {
        const image = pieces.map((piece) => mirrored(piece, axis));
        expect(differingArea(pieces, image), `${part} ${axis}`).toBeLessThan(0.1);
      }
    }
  });

  test('paints no place twice', async () => {
    const all = paintedIn(await composed, () => true);
    expect(Math.abs(woundArea(all) - coveredArea(all))).toBeLessThan(0.05);
  });

  test('keeps the field out of the border and the border on its band', async () => {
    const drawing = await composed;
    const { outer, inner } = drawing.border;
    for (const region of drawing.regions) {
      for (const piece of painted(region)) {
        const box = pieceBox(piece);
        const bounds = region.element === 'field' ? drawing.field : outer;
        expect(box.left).toBeGreaterThanOrEqual(bounds.left - 1e-6);
        expect(box.right).toBeLessThanOrEqual(bounds.right + 1e-6);
        expect(box.top).toBeGreaterThanOrEqual(bounds.top - 1e-6);
        expect(box.bottom).toBeLessThanOrEqual(bounds.bottom + 1e-6);
        if (region.element === 'field') continue;
        const clear =
          box.right <= inner.left + 1e-6 ||
          box.left >= inner.right - 1e-6 ||
          box.bottom <= inner.top + 1e-6 ||
          box.top >= inner.bottom - 1e-6;
        expect(clear, region.element).toBe(true);
      }
    }
  });

  test('is the same drawing when composed again', async () => {
    expect(await composeNamed(wish, { field, border, corner })).toEqual(await composed);
  });
});

test('two parts of a star share nothing at all (clipper2)', async () => {
  const drawing = await composeNamed({ phase: { across: 0.5, along: 0.5 } }, { field: 'eight-point-star' });
  const [field, alternate] = (['field', 'alternate'] as const).map((part) =>
    paintedIn(drawing, (region) => region.part === part),
  );
  expect(sharedArea(field!, alternate!)).toBe(0);
  expect(field!.reduce((sum, piece) => sum + pieceArea(piece), 0)).toBeGreaterThan(10_000);
});
