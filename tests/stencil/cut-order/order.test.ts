import { describe, expect, test } from 'vitest';
import { flatten } from '../../../src/geometry/flatten.ts';
import { isInside } from '../../../src/geometry/inside.ts';
import { ringArea, ringBox } from '../../../src/geometry/measure.ts';
import type { Point, Ring } from '../../../src/geometry/path.ts';
import { ringEnds } from '../../../src/stencil/cut-order/entry.ts';
import { cutOrder, type Entry, penUpTravel } from '../../../src/stencil/cut-order/order.ts';
import { heldKarpBound } from './support/bound.ts';
import { exactTravel } from './support/exact.ts';
import { circle, grid, seeded, square, starts, strewn } from './support/rings.ts';

const HOME: Point = [0, 0];
const ENTRIES: Entry[] = ['fixed', 'free'];
const travel = (rings: Ring[], entry: Entry) => penUpTravel(rings, cutOrder(rings, { entry }));

/** Circles and squares of many sizes, most of them in others. */
function nested(seed: number): Ring[] {
  const random = seeded(seed);
  const rings: Ring[] = [];
  for (let i = 0; i < 8; i++) {
    const [x, y] = [(i % 4) * 60 + 30, Math.floor(i / 4) * 60 + 30];
    for (let r = 28; r > 3; r -= 4 + 6 * random())
      rings.push(random() < 0.5 ? circle(x, y, r) : square(x - r / 1.5, y - r / 1.5, (2 * r) / 1.5));
  }
  const sizes = new Map(rings.map((ring) => [ring, random()]));
  return rings
    .sort((a, b) => sizes.get(a)! - sizes.get(b)!)
    .filter((ring, at, all) => !crosses(ring, all.slice(0, at)));
}

const crosses = (ring: Ring, others: Ring[]): boolean =>
  others.some((other) => {
    const [a, b] = [flatten(ring, 0.1), flatten(other, 0.1)];
    const held = a.filter((point) => isInside(b, point)).length;
    const holding = b.filter((point) => isInside(a, point)).length;
    return (held > 0 && held < a.length) || (holding > 0 && holding < b.length);
  });

describe.each(ENTRIES)('with %s entry', (entry) => {
  test('every ring is cut once, at one of its ends', () => {
    for (const rings of [strewn(40, 5), grid(5, 5, 20, 12), nested(2)]) {
      const cuts = cutOrder(rings, { entry });
      expect(cuts.map(({ ring }) => ring).sort((a, b) => a - b)).toEqual(rings.map((_, i) => i));
      for (const cut of cuts) {
        expect(ringEnds(rings[cut.ring]!)[cut.entry]).toBeDefined();
        if (entry === 'fixed') expect(cut.entry).toBe(0);
      }
    }
  });

  test('inside comes before outside (who lies in whom by even-odd counting of every point)', () => {
    for (const seed of [1, 2]) {
      const rings = nested(seed);
      const polygons = rings.map((ring) => flatten(ring, 0.1));
      const cuts = cutOrder(rings, { entry }).map(({ ring }) => ring);
      let pairs = 0;
      for (const [at, outer] of cuts.entries()) {
        const polygon = polygons[outer]!;
        for (const later of cuts.slice(at + 1))
          expect(
            flatten(rings[later]!).every((point) => isInside(polygon, point)),
            `${later} in ${outer}`,
          ).toBe(false);
        pairs += cuts.slice(0, at).filter((one) => polygons[one]!.every((point) => isInside(polygon, point))).length;
      }
      expect(pairs).toBeGreaterThan(10);
    }
  });

  test('small comes before large near each other: stars of a kind between large squares', () => {
    const large = grid(4, 4, 60, 40);
    const small = grid(3, 3, 60, 14).map(({ start, sides }) => ({
      start: [start[0] + 43, start[1] + 43] as Point,
      sides: sides.map((side) => ({ ...side, to: [side.to[0] + 43, side.to[1] + 43] as Point })),
    }));
    const rings = [...large, ...small];
    const cuts = cutOrder(rings, { entry }).map(({ ring }) => ring);
    small.forEach((ring, i) => {
      const box = ringBox(ring);
      const after = cuts.slice(cuts.indexOf(large.length + i) + 1);
      const near = large
        .map((_, n) => n)
        .filter((n) => {
          const other = ringBox(large[n]!);
          const gap = Math.max(
            other.left - box.right, box.left - other.right, other.top - box.bottom, box.top - other.bottom,
          ); // biome-ignore format: one gap
          return gap <= 6 && ringArea(large[n]!) >= 4 * ringArea(ring);
        });
      expect(near.length).toBeGreaterThan(0);
      expect(near.some((n) => after.includes(n))).toBe(true);
    });
  });

  test('is the shortest there is for up to nine rings, against dynamic programming over subsets', () => {
    const random = seeded(11);
    for (let count = 1; count <= 9; count++) {
      for (let run = 0; run < 3; run++) {
        // Of like size, so that none is small beside another.
        const strewn = Array.from({ length: count }, () => square(random() * 100, random() * 100, 3 + 2 * random()));
        const rings = strewn.filter((ring, at) => !crosses(ring, strewn.slice(0, at)));
        const stops = rings.map((ring) => (entry === 'fixed' ? [ring.start] : ringEnds(ring)));
        expect(travel(rings, entry) / exactTravel(stops, HOME)).toBeLessThan(1 + 1e-9);
      }
    }
  });

  test('the same rings give the same order', () => {
    const rings = [...strewn(40, 9), ...nested(4)];
    expect(cutOrder(rings, { entry })).toEqual(cutOrder(structuredClone(rings), { entry }));
  });

  test.each<[string, Ring[]]>([
    ['none', []],
    ['one', [square(5, 5, 10)]],
    ['two', [square(5, 5, 10), circle(60, 20, 8)]],
    ['three', [square(5, 5, 10), circle(60, 20, 8), circle(90, 90, 3)]],
    ['ten in the same place', Array.from({ length: 10 }, () => square(7, 7, 3))],
    ['points', Array.from({ length: 5 }, () => ({ start: HOME, sides: [{ kind: 'line' as const, to: HOME }] }))],
    ['in one line', Array.from({ length: 30 }, (_, i) => square(((i * 7) % 30) * 10, 0, 5))],
  ])('holds for rings that are %s', (name, rings) => {
    const cuts = cutOrder(rings, { entry });
    expect(cuts.map(({ ring }) => ring).sort((a, b) => a - b)).toEqual(rings.map((_, i) => i));
    if (name === 'in one line' && entry === 'fixed') expect(travel(rings, entry)).toBeCloseTo(2 * 290, 9);
  });
});

describe('travel with the pen up', () => {
  test('200 windows with fixed entry: at most 1.03 times the Held-Karp bound', () => {
    for (const seed of [3]) {
      const rings = strewn(200, seed);
      expect(travel(rings, 'fixed') / heldKarpBound([HOME, ...starts(rings)])).toBeLessThan(1.03);
    }
  });

  test('free entry on a grid of squares: at least 35 % less than the best tour with fixed entry', () => {
    // A round trip through n points of a square lattice has n ways of one pitch at least; with home one of them and n even that is met.
    const rings = grid(14, 14, 20, 15);
    expect(travel(rings, 'fixed')).toBeCloseTo(196 * 20, 6);
    expect(travel(rings, 'free')).toBeLessThan(0.65 * 196 * 20);
  });
});
