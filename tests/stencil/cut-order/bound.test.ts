import { expect, test } from 'vitest';
import type { Point } from '../../../src/geometry/path.ts';
import { heldKarpBound } from './support/bound.ts';
import { exactTravel, triedTravel } from './support/exact.ts';
import { seeded } from './support/rings.ts';

const strew = (count: number, seed: number): Point[] => {
  const random = seeded(seed);
  return Array.from({ length: count }, () => [random() * 100, random() * 100]);
};

test('the bound is never above the exact optimum, and near it', () => {
  for (let count = 3; count <= 10; count++) {
    for (let seed = 1; seed <= 4; seed++) {
      const [home, ...rest] = strew(count, 10 * count + seed);
      const exact = exactTravel(
        rest.map((point) => [point]),
        home!,
      );
      const ratio = heldKarpBound([home!, ...rest]) / exact;
      expect(ratio).toBeLessThan(1 + 1e-9);
      expect(ratio).toBeGreaterThan(0.9);
    }
  }
});

test('a ring of points and a lattice are bounded by what they take', () => {
  const ring = Array.from({ length: 12 }, (_, i): Point => [Math.cos((i * Math.PI) / 6), Math.sin((i * Math.PI) / 6)]);
  expect(heldKarpBound(ring)).toBeCloseTo(24 * Math.sin(Math.PI / 12), 9);
  const lattice = Array.from({ length: 36 }, (_, i): Point => [i % 6, Math.floor(i / 6)]);
  expect(heldKarpBound(lattice)).toBeCloseTo(36, 3);
});

test('the exact optimum is what trying every order and entry gives', () => {
  const random = seeded(5);
  for (let count = 0; count <= 5; count++) {
    const stops = Array.from({ length: count }, () =>
      strew(1 + Math.floor(random() * 3), 1 + Math.floor(random() * 999)),
    );
    expect(exactTravel(stops, [3, 4])).toBeCloseTo(triedTravel(stops, [3, 4]), 9);
  }
});
