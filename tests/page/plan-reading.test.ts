import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bothWays, readingOf } from '../../src/page/plan/reading.ts';
import { RoomFor } from '../../src/page/plan/room-for.ts';
import { rowsOf } from '../../src/page/plan/rows.ts';

const INCH = { system: 'inch', units: 'in', step: 25.4 / 16 } as const;
const METRIC = { system: 'metric', units: 'cm', step: 1 } as const;

// 1 in = 25.4 mm exactly: NIST Handbook 44 (2024), appendix C. The conversions are worked out by hand.
test.each([
  [25.4, INCH, '1" · 25 mm'],
  [914.4, INCH, '36" · 914 mm'],
  [1504, INCH, '59 3/16" · 1504 mm'],
  [1504, METRIC, '150.4 cm · 59 3/16"'],
  [0, METRIC, '0 cm · 0"'],
])('%d mm is read as %s', (mm, job, says) => {
  expect(bothWays(mm, job)).toBe(says);
});

test('the tape between two points: the triangle 3-4-5 (Euclid, I.47)', () => {
  expect(readingOf([100, 900], [400, 500], METRIC)).toEqual({
    length: '50 cm · 19 11/16"',
    across: '30 cm · 11 13/16"',
    along: '40 cm · 15 3/4"',
  });
});

test('words get room only where no other words are, as tried against all of them one by one', () => {
  const box = fc.tuple(
    fc.integer({ min: -50, max: 900 }),
    fc.integer({ min: -50, max: 900 }),
    fc.integer({ min: 1, max: 200 }),
    fc.integer({ min: 1, max: 200 }),
  );
  fc.assert(
    fc.property(fc.array(box, { maxLength: 60 }), (boxes) => {
      const room = new RoomFor();
      const taken: (readonly [number, number, number, number])[] = [];
      for (const [x, y, wide, high] of boxes) {
        const free = taken.every(([l, t, r, b]) => l >= x + wide || x >= r || t >= y + high || y >= b);
        expect(room.take(x, y, x + wide, y + high)).toBe(free);
        if (free) taken.push([x, y, x + wide, y + high]);
      }
    }),
  );
});

test('gathered to rows, every place comes once and none is added', () => {
  const coordinate = fc.integer({ min: -3, max: 3 });
  fc.assert(
    fc.property(fc.array(fc.tuple(coordinate, coordinate), { maxLength: 40 }), (places) => {
      const rows = rowsOf(Float64Array.from(places.flat()));
      const found = rows.flatMap(({ xs, ys }) => ys.flatMap((y) => xs.map((x) => `${x} ${y}`)));
      expect(found.sort()).toEqual(places.map(([x, y]) => `${x} ${y}`).sort());
    }),
  );
});

test('a lattice is one set of rows', () => {
  const at = Float64Array.from([0, 0, 10, 0, 20, 0, 0, 7, 10, 7, 20, 7]);
  expect(rowsOf(at)).toEqual([{ xs: [0, 10, 20], ys: [0, 7] }]);
});
