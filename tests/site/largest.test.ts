import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isInside } from '../../src/geometry/inside.ts';
import type { Box, Point } from '../../src/geometry/path.ts';
import { isClear, largestClear } from '../../src/site/largest.ts';

const areaOf = ({ left, right, top, bottom }: Box): number => (right - left) * (bottom - top);

/** The longest upright stretch above every one of these places that lies in the room and in no obstacle: by crossing the outlines, nothing else. */
function freeStretch(xs: number[], room: Point[], obstacles: Point[][]): { top: number; bottom: number } {
  const cuts = (outline: Point[], x: number): [number, number][] => {
    const ys: number[] = [];
    outline.forEach(([x0, y0], at) => {
      const [x1, y1] = outline[(at + 1) % outline.length]!;
      if (x0 < x !== x1 < x) ys.push(y0 + ((x - x0) * (y1 - y0)) / (x1 - x0));
    });
    ys.sort((a, b) => a - b);
    return Array.from({ length: ys.length / 2 }, (_, n) => [ys[2 * n]!, ys[2 * n + 1]!]);
  };
  let free: [number, number][] = [[Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]];
  const keep = (parts: [number, number][]) => {
    free = free.flatMap(([a, b]) =>
      parts.map(([c, d]): [number, number] => [Math.max(a, c), Math.min(b, d)]).filter(([c, d]) => d > c),
    );
  };
  for (const x of xs) {
    keep(cuts(room, x));
    for (const obstacle of obstacles)
      for (const [a, b] of cuts(obstacle, x))
        keep([
          [Number.NEGATIVE_INFINITY, a],
          [b, Number.POSITIVE_INFINITY],
        ]);
  }
  const [top, bottom] = free.sort((a, b) => b[1] - b[0] - (a[1] - a[0]))[0] ?? [0, 0];
  return { top, bottom };
}

/** Every pair of a dense row of left and right edges, those at corners among them; then the best of them moved in ever smaller steps. */
function bruteForce(room: Point[], obstacles: Point[][], places = 48): Box {
  const all = [room, ...obstacles].flat().map(([x]) => x);
  const [from, to] = [Math.min(...room.map(([x]) => x)), Math.max(...room.map(([x]) => x))];
  const within = (left: number, right: number) => [
    left + 1e-7,
    ...all.filter((x) => x > left && x < right).flatMap((x) => [x - 1e-7, x + 1e-7]),
    right - 1e-7,
  ];
  const tried = (left: number, right: number): Box => ({
    left,
    right,
    ...freeStretch(within(left, right), room, obstacles),
  });
  let best: Box = { left: 0, right: 0, top: 0, bottom: 0 };
  const row = Array.from({ length: places + 1 }, (_, n) => from + ((to - from) * n) / places);
  const tries = [...row, ...all.filter((x) => x > from && x < to)].sort((one, other) => one - other);
  for (const left of tries)
    for (const right of tries) {
      if (right <= left) continue;
      const box = tried(left, right);
      if (areaOf(box) > areaOf(best)) best = box;
    }
  for (let step = (to - from) / places; step > 1e-3; step /= 2)
    for (let moved = true, turns = 0; moved && turns < 20; turns++) {
      moved = false;
      for (const [l, r] of [
        [1, 0],
        [-1, 0],
        [0, 1],
        [0, -1],
        [1, 1],
        [-1, -1],
        [1, -1],
        [-1, 1],
      ] as const) {
        const box = tried(best.left + l * step, best.right + r * step);
        if (box.right > box.left && areaOf(box) > areaOf(best) * (1 + 1e-12)) [best, moved] = [box, true];
      }
    }
  return best;
}

const grown = (box: Box, side: keyof Box, by = 1): Box => ({
  ...box,
  [side]: box[side] + (side === 'left' || side === 'top' ? -by : by),
});
const SIDES = ['left', 'right', 'top', 'bottom'] as const;

/** Judged by points along its edges, a hair inside, and not by the code under test. */
function liesInside({ left, right, top, bottom }: Box, room: Point[], obstacles: Point[][]): boolean {
  const hair = 1e-4;
  return Array.from({ length: 41 }, (_, n) => n / 40).every((share) => {
    const x = left + hair + share * (right - left - 2 * hair);
    const y = top + hair + share * (bottom - top - 2 * hair);
    const edge: Point[] = [
      [x, top + hair],
      [x, bottom - hair],
      [left + hair, y],
      [right - hair, y],
    ];
    return edge.every((point) => isInside(room, point) && !obstacles.some((one) => isInside(one, point)));
  });
}

const off = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
const quadrilateral = fc
  .tuple(
    fc.double({ min: 2000, max: 9000, noNaN: true }),
    fc.double({ min: 2000, max: 9000, noNaN: true }),
    off(0.35),
    fc.array(off(600), { minLength: 8, maxLength: 8 }),
  )
  .map(([wide, long, turn, moved]): Point[] => {
    const plain: Point[] = [
      [0, 0],
      [wide, 0],
      [wide, -long],
      [0, -long],
    ];
    return plain.map(([x, y], at) => {
      const [u, v] = [x + moved[2 * at]!, y + moved[2 * at + 1]!];
      return [u * Math.cos(turn) + v * Math.sin(turn), v * Math.cos(turn) - u * Math.sin(turn)];
    });
  });

describe('the largest true rectangle', () => {
  test('of a true room is the room', () =>
    expect(
      largestClear(
        [
          [0, 0],
          [4000, 0],
          [4000, -3000],
          [0, -3000],
        ],
        [],
      ),
    ).toEqual({ left: 0, right: 4000, top: -3000, bottom: 0 }));

  // Half the area of a triangle, on half of its base: known of any triangle with a level base (calculus, worked in any text on largest areas).
  test.each([1500, 700, -400])('of a triangle with its tip at %s has half its area', (tip) => {
    const box = largestClear(
      [
        [0, 0],
        [3000, 0],
        [tip, -2000],
      ],
      [],
    )!;
    const inner = tip >= 0 ? (3000 * 2000) / 4 : undefined;
    if (inner !== undefined) {
      expect(areaOf(box)).toBeCloseTo(inner, 3);
      expect(box.right - box.left).toBeCloseTo(1500, 6);
    } else expect(areaOf(box)).toBeLessThan((3000 * 2000) / 4);
  });

  // A square on point, diagonal d: the largest box has half of its area, d²/4, and is square.
  test('of a square on point is half of it', () => {
    const box = largestClear(
      [
        [0, 1000],
        [1000, 0],
        [0, -1000],
        [-1000, 0],
      ],
      [],
    )!;
    expect(box.left).toBeCloseTo(-500, 6);
    expect(box.bottom).toBeCloseTo(500, 6);
    expect(areaOf(box)).toBeCloseTo(1e6, 3);
  });

  test('of any quadrilateral lies inside it, cannot grow by 1 mm on any side, and is what a dense search finds', () => {
    fc.assert(
      fc.property(quadrilateral, (room) => {
        const box = largestClear(room, [])!;
        expect(liesInside(box, room, [])).toBe(true);
        expect(isClear(box, room, [])).toBe(true);
        for (const side of SIDES) {
          expect(liesInside(grown(box, side), room, []) && isClear(grown(box, side), room, [])).toBe(false);
          expect(isClear(grown(box, side), room, [])).toBe(false);
        }
        const dense = areaOf(bruteForce(room, [], 24));
        expect(dense).toBeLessThanOrEqual(areaOf(box) * (1 + 1e-6));
        expect(dense).toBeGreaterThan(areaOf(box) * (1 - 1e-3));
      }),
      { numRuns: 60, seed: 5, endOnFailure: true },
    );
  }, 20_000);

  const inRoom = fc.tuple(
    fc.double({ min: 0.1, max: 0.9, noNaN: true }),
    fc.double({ min: 0.1, max: 0.9, noNaN: true }),
    fc.double({ min: 100, max: 1200, noNaN: true }),
    fc.double({ min: 100, max: 900, noNaN: true }),
    off(1.5),
    fc.integer({ min: 3, max: 6 }),
  );
  test('keeps clear of obstacles, in rooms with recesses too, and is what a dense search finds', () => {
    fc.assert(
      fc.property(
        quadrilateral,
        fc.array(inRoom, { minLength: 1, maxLength: 3 }),
        fc.boolean(),
        (walls, things, recess) => {
          const middle = (a: Point, b: Point, share: number): Point => [
            a[0] + share * (b[0] - a[0]),
            a[1] + share * (b[1] - a[1]),
          ];
          const [a, b, c, d] = walls as [Point, Point, Point, Point];
          const room: Point[] = recess
            ? [a, b, c, middle(c, d, 0.3), middle(middle(c, d, 0.4), middle(a, b, 0.5), 0.25), middle(c, d, 0.6), d]
            : walls;
          const obstacles = things.map(([u, v, long, deep, turn, corners]) => {
            const [x, y] = middle(middle(a, b, u), middle(d, c, u), v);
            return Array.from({ length: corners }, (_, n): Point => {
              const angle = turn + (2 * Math.PI * n) / corners;
              return [x + (long / 2) * Math.cos(angle), y + (deep / 2) * Math.sin(angle)];
            });
          });
          const box = largestClear(room, obstacles)!;
          expect(isClear(box, room, obstacles)).toBe(true);
          expect(liesInside(box, room, obstacles)).toBe(true);
          for (const side of SIDES) expect(isClear(grown(box, side), room, obstacles)).toBe(false);
          const dense = areaOf(bruteForce(room, obstacles, 32));
          expect(dense).toBeLessThanOrEqual(areaOf(box) * (1 + 1e-6));
          expect(dense).toBeGreaterThan(areaOf(box) * 0.98);
        },
      ),
      { numRuns: 25, seed: 7, endOnFailure: true },
    );
  }, 20_000);

  test('of a room like an L is its longer arm', () => {
    const room: Point[] = [
      [0, 0],
      [4000, 0],
      [4000, -1500],
      [1800, -1500],
      [1800, -3000],
      [0, -3000],
    ];
    expect(largestClear(room, [])).toEqual({ left: 0, right: 4000, top: -1500, bottom: 0 });
  });

  test('may be centred on the axis', () => {
    const room: Point[] = [
      [0, 0],
      [4000, 0],
      [4000, -3000],
      [0, -3000],
    ];
    expect(largestClear(room, [], 1500)).toEqual({ left: 0, right: 3000, top: -3000, bottom: 0 });
    const crooked: Point[] = [
      [0, 0],
      [4000, 0],
      [4000, -3000],
      [200, -3000],
    ];
    const box = largestClear(crooked, [], 1500)!;
    expect((box.left + box.right) / 2).toBeCloseTo(1500, 6);
    // Left edge at x, half the width 1500 - x: the slanted wall leaves 15x of height up to x = 200, where the area stands at its largest.
    expect(box).toEqual({ left: 200, right: 2800, top: -3000, bottom: 0 });
  });

  test('of a room that an obstacle fills is none', () =>
    expect(
      largestClear(
        [
          [0, 0],
          [100, 0],
          [100, -100],
          [0, -100],
        ],
        [
          [
            [-1, 1],
            [101, 1],
            [101, -101],
            [-1, -101],
          ],
        ],
      ),
    ).toBeUndefined());
});
