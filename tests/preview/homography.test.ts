import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  after,
  type Homography,
  homography,
  inverse,
  mapped,
  type Quad,
  type Spot,
} from '../../src/preview/homography.ts';

const expectSame = (found: Homography | undefined, wanted: readonly number[], digits: number) => {
  expect(found).toBeDefined();
  for (const [at, value] of wanted.entries()) expect(found![at]! / found![8]).toBeCloseTo(value / wanted[8]!, digits);
};

describe('examples worked outside', () => {
  // Printed by getPerspectiveTransform of OpenCV (opencv-python), as quoted in a public test of a port of it; 9 figures.
  test('what OpenCV printed for four corners of a page', () => {
    const found = homography(
      [
        [33, 582],
        [151, 579],
        [145, 702],
        [25, 703],
      ],
      [
        [0, 0],
        [300, 0],
        [300, 300],
        [0, 300],
      ],
    )!;
    const printed = [
      2.86405074, 1.89358727e-1, -2.04720453e2, 7.10878995e-2, 2.79612405, -1.6296901e3, 1.60734029e-4, 1.73337133e-4,
      1,
    ];
    for (const [at, value] of printed.entries()) expect(found[at]! / value).toBeCloseTo(1, 7);
  });

  // TestGetPerspectiveTransform of kyamagu/mexopencv (github.com): a quarter turn, its fourth point inside the other three.
  test('a quarter turn about a point', () => {
    const found = homography(
      [
        [0, 1],
        [1, 1],
        [1, 0],
        [0.25, 0.25],
      ],
      [
        [1, 1],
        [1, 0],
        [0, 0],
        [0.25, 0.75],
      ],
    );
    expectSame(found, [0, 1, 0, -1, 0, 1, 0, 0, 1], 10);
  });
});

/**
 * The unit square to four points in closed form: P. S. Heckbert, Fundamentals of Texture Mapping and Image Warping, UCB/CSD 89/516, 1989, section 2.2.3,
 * equations for square to quadrilateral, with corners (0,0), (1,0), (1,1), (0,1) in turn.
 */
function squareToQuad([[x0, y0], [x1, y1], [x2, y2], [x3, y3]]: Quad): number[] {
  const [dx1, dx2, sx] = [x1 - x2, x3 - x2, x0 - x1 + x2 - x3];
  const [dy1, dy2, sy] = [y1 - y2, y3 - y2, y0 - y1 + y2 - y3];
  const below = dx1 * dy2 - dx2 * dy1;
  const g = (sx * dy2 - dx2 * sy) / below;
  const h = (dx1 * sy - sx * dy1) / below;
  return [x1 - x0 + g * x1, x3 - x0 + h * x3, x0, y1 - y0 + g * y1, y3 - y0 + h * y3, y0, g, h, 1];
}

const UNIT: Quad = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

/** Four corners that run round: one in each quarter about a middle, off its axes. */
const quads = fc
  .record({
    middle: fc.tuple(fc.double({ min: -500, max: 500, noNaN: true }), fc.double({ min: -500, max: 500, noNaN: true })),
    size: fc.double({ min: 20, max: 2000, noNaN: true }),
    offs: fc.array(fc.double({ min: 0.4, max: 0.75, noNaN: true }), { minLength: 8, maxLength: 8 }),
  })
  .map(({ middle: [x, y], size, offs }): Quad => {
    const spot = (at: number, right: number, down: number): Spot => [
      x + right * size * offs[2 * at]!,
      y + down * size * offs[2 * at + 1]!,
    ];
    return [spot(0, -1, -1), spot(1, 1, -1), spot(2, 1, 1), spot(3, -1, 1)];
  });

const shares = fc.array(fc.double({ min: 0.02, max: 0.98, noNaN: true }), { minLength: 4, maxLength: 4 });

describe('for any four corners', () => {
  test('it is what Heckbert’s closed form gives', () => {
    fc.assert(
      fc.property(quads, shares, (quad, [s, t]) => {
        const [found, wanted] = [homography(UNIT, quad)!, squareToQuad(quad) as unknown as Homography];
        const [[x, y], [wx, wy]] = [mapped(found, [s!, t!]), mapped(wanted, [s!, t!])];
        expect(Math.hypot(x - wx, y - wy)).toBeLessThan(1e-7);
      }),
    );
  });

  test('corners go to corners, and the way back leads back', () => {
    fc.assert(
      fc.property(quads, quads, (from, to) => {
        const there = homography(from, to)!;
        const back = inverse(there);
        for (const [at, spot] of from.entries()) {
          const [x, y] = mapped(there, spot);
          expect(Math.hypot(x - to[at]![0], y - to[at]![1])).toBeLessThan(1e-6);
          const [u, v] = mapped(back, to[at]!);
          expect(Math.hypot(u - spot[0], v - spot[1])).toBeLessThan(1e-5);
        }
        const round = after(back, there);
        expectSame(round, [1, 0, 0, 0, 1, 0, 0, 0, 1], 5);
      }),
    );
  });

  // The fundamental theorem of projective geometry: lines stay lines, and the cross-ratio of four points on one is kept (any textbook).
  test('lines stay lines, and cross-ratios are kept', () => {
    fc.assert(
      fc.property(quads, quads, shares, (from, to, at) => {
        const there = homography(from, to)!;
        const sorted = [...at].sort((a, b) => a - b);
        fc.pre(sorted.every((value, n) => n === 0 || value - sorted[n - 1]! > 0.02));
        const [[ax, ay], [bx, by]] = [from[0], from[2]];
        const on = sorted.map((share): Spot => [ax + share * (bx - ax), ay + share * (by - ay)]);
        const images = on.map((spot) => mapped(there, spot));
        const [p, , , q] = images as [Spot, Spot, Spot, Spot];
        const long = Math.hypot(q[0] - p[0], q[1] - p[1]);
        const along = images.map(([x, y]) => ((x - p[0]) * (q[0] - p[0]) + (y - p[1]) * (q[1] - p[1])) / long);
        for (const [x, y] of images)
          expect(Math.abs((x - p[0]) * (q[1] - p[1]) - (y - p[1]) * (q[0] - p[0])) / long).toBeLessThan(
            1e-6 * (1 + long),
          );
        const ratio = ([a, b, c, d]: number[]) => ((c! - a!) * (d! - b!)) / ((c! - b!) * (d! - a!));
        expect(ratio(along) / ratio(sorted)).toBeCloseTo(1, 5);
      }),
    );
  });
});

test('three points in line have no such map', () => {
  const line: Quad = [
    [0, 0],
    [1, 1],
    [2, 2],
    [0, 3],
  ];
  expect(homography(line, UNIT)).toBeUndefined();
  expect(homography(UNIT, line)).toBeUndefined();
  expect(homography(UNIT, [UNIT[0], UNIT[0], UNIT[0], UNIT[0]])).toBeUndefined();
});
