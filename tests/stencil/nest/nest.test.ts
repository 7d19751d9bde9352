import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Nested, nest } from '../../../src/stencil/nest/nest.ts';
import type { Size } from '../../../src/stencil/nest/rectangle.ts';
import { packOnShelves } from '../../../src/stencil/nest/shelves.ts';

const STOCK: Size = { across: 450, along: 600 };
const area = (sizes: Size[]): number => sizes.reduce((sum, { across, along }) => sum + across * along, 0);

/** Everything lies on a film, nothing on anything else, no nearer than the gap. */
function expectSound(sizes: Size[], { places, films }: Nested, stock: Size, gap = 0): void {
  const boxes = places.map(({ x, y, turned, film }, at) => {
    const { across, along } = sizes[at]!;
    return { film, left: x, top: y, right: x + (turned ? along : across), bottom: y + (turned ? across : along) };
  });
  expect(places).toHaveLength(sizes.length);
  for (const [at, box] of boxes.entries()) {
    expect(box.left).toBeGreaterThanOrEqual(-1e-6);
    expect(box.top).toBeGreaterThanOrEqual(-1e-6);
    expect(box.right).toBeLessThanOrEqual(stock.across + 1e-6);
    expect(box.bottom).toBeLessThanOrEqual(stock.along + 1e-6);
    expect(box.film).toBeLessThan(films);
    for (const other of boxes.slice(at + 1)) {
      const apart =
        box.film !== other.film ||
        box.right + gap <= other.left + 1e-6 ||
        other.right + gap <= box.left + 1e-6 ||
        box.bottom + gap <= other.top + 1e-6 ||
        other.bottom + gap <= box.top + 1e-6;
      expect(apart).toBe(true);
    }
  }
}

/** Cuts a rectangle in two, again and again, straight through: what comes out fits back with nothing left over. */
function cutUp(size: Size, pieces: number, random: () => number): Size[] {
  const found = [size];
  while (found.length < pieces) {
    found.sort((a, b) => b.across * b.along - a.across * a.along);
    const { across, along } = found.shift()!;
    const share = 0.3 + 0.4 * random();
    if (across >= along) found.push({ across: share * across, along }, { across: (1 - share) * across, along });
    else found.push({ across, along: share * along }, { across, along: (1 - share) * along });
  }
  return found;
}

const scatter = (seed: number) => {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1103515245) + 12345) >>> 0;
    return state / 2 ** 32;
  };
};

describe('against the area bound: rectangles cut from one film, so that a film as long as the film is the optimum', () => {
  // Own stated set: a film of 450 × 1,200 mm cut into so many pieces, four ways each; the film they are laid on has no end.
  test.each([10, 16, 25, 40])('%i pieces lie within 10 % of it, on average', (pieces) => {
    const ratios = Array.from({ length: 4 }, (_, seed) => {
      const sizes = cutUp({ across: 450, along: 1200 }, pieces, scatter(seed + 1));
      const stock = { across: 450, along: 1e5 };
      const nested = nest(sizes, stock);
      expectSound(sizes, nested, stock);
      return nested.used / (area(sizes) / stock.across);
    });
    for (const ratio of ratios) expect(ratio).toBeGreaterThanOrEqual(1 - 1e-9);
    expect(ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length).toBeLessThan(1.1);
  });
});

test('never more films than shelves, nor a longer stretch of the last, whatever the pieces', () => {
  const side = fc.integer({ min: 20, max: 440 });
  fc.assert(
    fc.property(fc.array(fc.record({ across: side, along: side }), { minLength: 1, maxLength: 14 }), (sizes) => {
      const nested = nest(sizes, STOCK);
      expectSound(sizes, nested, STOCK);
      const shelves = packOnShelves(sizes, STOCK);
      const films = 1 + Math.max(...shelves.map(({ film }) => film));
      expect(nested.films).toBeLessThanOrEqual(films);
      expect(nested.films).toBeGreaterThanOrEqual(Math.ceil(area(sizes) / (STOCK.across * STOCK.along) - 1e-9));
    }),
    { numRuns: 25, seed: 4 },
  );
});

test('a gap is kept between pieces and not beyond the edges', () => {
  const sizes = Array.from({ length: 4 }, () => ({ across: 220, along: 295 }));
  const nested = nest(sizes, STOCK, 10);
  expect(nested.films).toBe(1);
  expectSound(sizes, nested, STOCK, 10);
  expect(nest(sizes, STOCK, 11).films).toBe(2);
});

test('the same pieces lie the same every time, and nothing is nothing', () => {
  const sizes = cutUp({ across: 450, along: 600 }, 12, scatter(3));
  expect(nest(sizes, STOCK)).toEqual(nest(sizes, STOCK));
  expect(nest([], STOCK)).toEqual({ places: [], films: 0, used: 0 });
});
