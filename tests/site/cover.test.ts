import fc from 'fast-check';
import { expect, test } from 'vitest';
import { coveringWidth } from '../../src/site/cover.ts';

const inches = (...values: number[]): number[] => values.map((value) => value * 25.4);

// Common practice, no source: the first even whole inch, or 2 cm, that covers both openings.
test.each([
  [[32.5, 30], 34],
  [[30, 32.5], 34],
  [[31.25, 28.375], 32],
  [[32, 30], 32],
  [[32.0625, 32.0625], 34],
  [[33.9375, 12], 34],
  [[0.5, 0.25], 2],
])('openings of %j in take a field of %d in', (widths, width) =>
  expect(coveringWidth(inches(...widths), 'inch') / 25.4).toBeCloseTo(width, 12),
);

test.each([
  [[812, 760], 820],
  [[820, 760], 820],
  [[820.4, 760], 840],
  [[1, 1], 20],
])('openings of %j mm take a field of %d mm', (widths, width) => expect(coveringWidth(widths, 'metric')).toBe(width));

test('a width counted together from sixteenths is not pushed on to the next even inch', () =>
  expect(
    coveringWidth(
      [
        Array(512)
          .fill(25.4 / 16)
          .reduce((a: number, b: number) => a + b),
      ],
      'inch',
    ),
  ).toBeCloseTo(812.8, 9));

test('it covers, by less than one grain, whatever the order', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 100_000 }), fc.integer({ min: 1, max: 100_000 }), (near, far) => {
      const [a, b] = [near / 16, far / 16];
      for (const system of ['inch', 'metric'] as const) {
        const width = coveringWidth([a, b], system);
        const grain = system === 'inch' ? 50.8 : 20;
        expect(width).toBe(coveringWidth([b, a], system));
        expect(width - Math.max(a, b)).toBeGreaterThan(-1e-5);
        expect(width - Math.max(a, b)).toBeLessThan(grain);
        expect(Math.abs(width / grain - Math.round(width / grain))).toBeLessThan(1e-9);
      }
    }),
  );
});
