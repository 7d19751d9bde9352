import { Clipper, EndType, FillRule, JoinType } from 'clipper2-ts';
import { beforeAll, describe, expect, test } from 'vitest';
import { pieceArea } from '../../../src/geometry/measure.ts';
import type { Piece, Point } from '../../../src/geometry/path.ts';
import { shifted } from '../../../src/geometry/transform.ts';
import { circle, polygon, rectangle } from '../../../src/motif/shapes.ts';
import { holdApart, type Stand } from '../../../src/stencil/apart/hold-apart.ts';
import { loadTools, type Tools } from '../../../src/stencil/bridges/bridge-windows.ts';
import { piecePaths } from '../../../src/stencil/clip.ts';
import { drawn } from '../bridges/shapes.ts';

const WIDTH = 3;
const SETTINGS = { bridge: WIDTH, window: 1.5 };
let tools: Tools;
beforeAll(async () => {
  tools = await loadTools();
});

const area = (pieces: Piece[]): number => pieces.reduce((sum, piece) => sum + pieceArea(piece), 0);
const alone = (pieces: Piece[], every: Point): Stand => ({ pieces, at: [0, 0], every });
const diamond = (a: number, b: number): Piece[] =>
  drawn((pen) => {
    polygon(pen, [
      [0, -b],
      [a, 0],
      [0, b],
      [-a, 0],
    ]);
  });

/** By clipper2: whether shapes grown by half of a width all round meet. */
function meet(one: Piece[], other: Piece[], width: number): boolean {
  const grown = (pieces: Piece[]) =>
    Clipper.inflatePaths(pieces.flatMap(piecePaths), (width / 2) * 8000, JoinType.Round, EndType.Polygon, 2, 20);
  return Clipper.intersect(grown(one), grown(other), FillRule.NonZero).length > 0;
}

describe('how much is taken, by closed forms', () => {
  test('the tips of diamonds that touch: four right-angled tips, each 1.5 mm deep', () => {
    const [held] = holdApart([alone(diamond(50, 50), [100, 100])], SETTINGS, tools);
    // A right-angled tip cut across at depth h is a triangle of area h².
    expect(area(diamond(50, 50)) - area(held!)).toBeCloseTo(4 * (WIDTH / 2) ** 2, 6);
    expect(
      meet(
        held!,
        held!.map((piece) => shifted(piece, 100, 0)),
        WIDTH - 0.02,
      ),
    ).toBe(false);
    expect(
      meet(
        held!,
        held!.map((piece) => shifted(piece, 100, 0)),
        WIDTH + 0.02,
      ),
    ).toBe(true);
  });

  test('tips of lozenges: each a triangle of its own shape', () => {
    const [a, b] = [60, 20];
    const [held] = holdApart([alone(diamond(a, b), [2 * a, 2 * b])], SETTINGS, tools);
    // At depth h a tip of half-width b over length a is h·b/a wide each way.
    const h = WIDTH / 2;
    expect(area(diamond(a, b)) - area(held!)).toBeCloseTo(2 * ((h * h * b) / a + (h * h * a) / b), 6);
  });

  test('squares edge to edge lose half a bridge along every edge', () => {
    const square = drawn((pen) => rectangle(pen, 0, 0, 40, 40));
    const [held] = holdApart([alone(square, [40, 40])], SETTINGS, tools);
    expect(area(held!)).toBeCloseTo((40 - WIDTH) ** 2, 6);
  });

  test('circles that touch lose a segment on each side', () => {
    const round = drawn((pen) => circle(pen, 0, 0, 30));
    const [held] = holdApart([alone(round, [60, Infinity])], SETTINGS, tools);
    const [r, h] = [30, WIDTH / 2];
    const segment = r * r * Math.acos(1 - h / r) - (r - h) * Math.sqrt(2 * r * h - h * h);
    // The circle is drawn in cubics, which bulge by 0.0273 % of the radius at most, all along the two arcs taken.
    const bulge = 2 * (2 * r * Math.acos(1 - h / r)) * 0.000273 * r;
    expect(area(round) - area(held!)).toBeGreaterThanOrEqual(2 * segment - 1e-6);
    expect(area(round) - area(held!)).toBeLessThanOrEqual(2 * segment + bulge);
    expect(held![0]![0]!.sides.filter(({ kind }) => kind === 'curve').length).toBeGreaterThanOrEqual(4);
  });
});

test('corners that touch on the diagonal, as on a chequered floor', () => {
  const square = drawn((pen) => rectangle(pen, 0, 0, 50, 50));
  const stands: Stand[] = [
    { pieces: square, at: [0, 0], every: [100, 100] },
    { pieces: square, at: [50, 50], every: [100, 100] },
  ];
  const [one, other] = holdApart(stands, SETTINGS, tools);
  expect(area(square) - area(one!)).toBeCloseTo(4 * (WIDTH / 2) ** 2, 6);
  expect(area(other!)).toBeCloseTo(area(one!), 6);
  expect(
    meet(
      one!,
      other!.map((piece) => shifted(piece, 50, 50)),
      WIDTH - 0.02,
    ),
  ).toBe(false);
});

test('a tip on a flat edge: both give way, and the gap is a bridge wide', () => {
  const flat = drawn((pen) => rectangle(pen, 0, 20, 80, 20));
  const tip = diamond(10, 10);
  const [held, bar] = holdApart(
    [
      { pieces: tip, at: [0, 0], every: [Infinity, Infinity] },
      { pieces: flat, at: [0, 0], every: [Infinity, Infinity] },
    ],
    SETTINGS,
    tools,
  );
  expect(meet(held!, bar!, WIDTH - 0.02)).toBe(false);
  expect(area(held!)).toBeLessThan(area(tip));
  expect(area(bar!)).toBeLessThan(area(flat));
});

test('what stands a bridge apart or more comes back as it was', () => {
  const square = drawn((pen) => rectangle(pen, 0, 0, 40, 40));
  for (const gap of [WIDTH, WIDTH + 1, 20]) {
    expect(holdApart([alone(square, [40 + gap, 40 + gap])], SETTINGS, tools)[0]).toEqual(square);
  }
});

test('a symmetrical pattern stays symmetrical, and copies of a shape lose the same', () => {
  const [held] = holdApart([alone(diamond(50, 35), [100, 70])], SETTINGS, tools);
  const corners = held!.flatMap((piece) => piece.flatMap((ring) => ring.sides.map(({ to }) => to)));
  const known = new Set(corners.map(([x, y]) => `${x.toFixed(3)} ${y.toFixed(3)}`.replaceAll('-0.000', '0.000')));
  for (const [x, y] of corners)
    for (const [sx, sy] of [
      [-1, 1],
      [1, -1],
    ] as const) {
      expect(known).toContain(`${(sx * x).toFixed(3)} ${(sy * y).toFixed(3)}`.replaceAll('-0.000', '0.000'));
    }
});
