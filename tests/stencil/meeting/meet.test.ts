import { Clipper, EndType, FillRule, JoinType, type Paths64 } from 'clipper2-ts';
import { beforeAll, describe, expect, test } from 'vitest';
import { exchanged } from '../../../src/compose/families.ts';
import type { Standing } from '../../../src/compose/finish.ts';
import { pieceArea, piecesBox } from '../../../src/geometry/measure.ts';
import type { Piece } from '../../../src/geometry/path.ts';
import { mirrored, shifted } from '../../../src/geometry/transform.ts';
import { type Drawn, PARTS, type Part } from '../../../src/motif/motif.ts';
import { circle, rectangle, regularPolygon } from '../../../src/motif/shapes.ts';
import { loadTools, type Tools } from '../../../src/stencil/bridges/bridge-windows.ts';
import { piecePaths } from '../../../src/stencil/clip.ts';
import { meet } from '../../../src/stencil/meeting/meet.ts';
import type { Meeting } from '../../../src/stencil/meeting/meeting.ts';
import { differingArea } from '../../support/areas.ts';
import { drawn } from '../bridges/shapes.ts';

let tools: Tools;
beforeAll(async () => {
  tools = await loadTools();
});

const COLOURS = Object.fromEntries(
  PARTS.map((part) => [part, part === 'field' ? 'ink' : part === 'border' ? 'moss' : 'rust']),
) as Record<Part, string>;
const never = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY] as const;
const alone = (field: Piece[], alternate: Piece[], every: Standing['every'] = never): Standing => ({
  drawn: [
    { part: 'field', pieces: field },
    { part: 'alternate', pieces: alternate },
  ],
  at: [0, 0],
  every,
});
const done = (standing: Standing[], way: Meeting['way'], by: number): Drawn[][] =>
  meet(standing, { way, by }, COLOURS, tools);
const area = (pieces: Piece[]): number => pieces.reduce((sum, piece) => sum + pieceArea(piece), 0);
const areas = (units: Drawn[][]): number[] => units.flat().map(({ pieces }) => area(pieces));

const paths = (pieces: Piece[]): Paths64 => pieces.flatMap(piecePaths);
const grownBy = (pieces: Piece[], by: number): Paths64 =>
  Clipper.inflatePaths(paths(pieces), by * 8000, JoinType.Round, EndType.Polygon, 2, 10);
const mm2 = (found: Paths64): number => Math.abs(Clipper.areaPaths(found)) / 64e6;
/** By clipper2: whether pieces come nearer than a distance. */
const nearer = (one: Piece[], other: Piece[], than: number): boolean =>
  mm2(Clipper.intersect(grownBy(one, than / 2), grownBy(other, than / 2), FillRule.NonZero)) > 1e-3;

const square = (x: number, y: number, size: number) => drawn((pen) => rectangle(pen, x, y, size, size));

describe('two squares side by side', () => {
  const unit = () => alone(square(-20, 0, 40), square(20, 0, 40));

  test('overlap: the first reaches under the second by a strip, which stays', () => {
    const [field, alternate] = areas(done([unit()], 'overlap', 1.5));
    expect(field).toBeCloseTo(1600 + 1.5 * 40, 9);
    expect(alternate).toBeCloseTo(1600, 9);
  });

  test('gap: each gives way by half, the edges stay straight', () => {
    const [units] = done([unit()], 'gap', 2);
    for (const { pieces } of units!) {
      expect(area(pieces)).toBeCloseTo(39 * 40, 9);
      expect(pieces[0]![0]!.sides.every(({ kind }) => kind === 'line')).toBe(true);
    }
    expect(piecesBox(units![0]!.pieces).right).toBeCloseTo(-1, 9);
    expect(piecesBox(units![1]!.pieces).left).toBeCloseTo(1, 9);
  });

  test('edge to edge: nothing moves', () => {
    expect(done([unit()], 'edge to edge', 0)).toEqual([unit().drawn]);
  });
});

describe('a disc in a square with a round hole', () => {
  const disc = drawn((pen) => circle(pen, 0, 0, 20));
  const around = (): Piece[] => tools.booleans.subtract(square(0, 0, 70), disc);
  const annulus = (outer: number, inner: number) => Math.PI * (outer ** 2 - inner ** 2);

  test('overlap: an annulus as wide as stated, on true curves', () => {
    const [units] = done([alone(disc, around())], 'overlap', 2);
    // The circle is drawn in cubics that bulge by 0.027 % at most; curves beside curves are fitted to 0.002 mm.
    expect(area(units![0]!.pieces) - area(disc)).toBeCloseTo(annulus(22, 20), 0);
    expect(Math.abs(area(units![0]!.pieces) - area(disc) - annulus(22, 20))).toBeLessThan(2 * Math.PI * 22 * 0.005);
    expect(area(units![1]!.pieces)).toBeCloseTo(area(around()), 6);
    const { sides } = units![0]!.pieces[0]![0]!;
    expect(sides.length).toBeLessThan(20);
    expect(sides.filter(({ kind }) => kind === 'curve').length).toBe(sides.length);
  });

  test('gap: both lose an annulus half as wide', () => {
    const [units] = done([alone(disc, around())], 'gap', 2);
    expect(Math.abs(area(units![0]!.pieces) - Math.PI * 19 ** 2)).toBeLessThan(2 * Math.PI * 20 * 0.006);
    expect(Math.abs(area(units![1]!.pieces) - (4900 - Math.PI * 21 ** 2))).toBeLessThan(2 * Math.PI * 21 * 0.006);
    expect(nearer(units![0]!.pieces, units![1]!.pieces, 1.98)).toBe(false);
    expect(units!.flatMap(({ pieces }) => pieces.flat()).flatMap(({ sides }) => sides).length).toBeLessThan(40);
  });
});

describe('hexagons in three colours round a corner', () => {
  const hexagon = (x: number, y: number) => drawn((pen) => regularPolygon(pen, x, y, 30, 6));
  const w = 15 * Math.sqrt(3);
  const unit = (): Standing => ({
    drawn: [
      { part: 'field', pieces: hexagon(-w, 0) },
      { part: 'alternate', pieces: hexagon(w, 0) },
      { part: 'border', pieces: hexagon(0, 45) },
    ],
    at: [0, 0],
    every: never,
  });

  test('gap: all three keep it, by clipper2', () => {
    const [units] = done([unit()], 'gap', 2);
    const [one, two, three] = units!.map(({ pieces }) => pieces);
    for (const [a, b] of [
      [one!, two!],
      [two!, three!],
      [one!, three!],
    ] as const) {
      expect(nearer(a, b, 1.95)).toBe(false);
      expect(nearer(a, b, 2.05)).toBe(true);
    }
    // Two edges of 30 mm give way by 1 mm; where they meet, at 120°, a kite is counted once, and at their free ends a little more may go.
    const strips = 2 * 30 - 1 / Math.tan(Math.PI / 3);
    for (const pieces of [one!, two!, three!]) {
      const lost = area(hexagon(0, 0)) - area(pieces);
      expect(lost).toBeGreaterThan(strips - 0.1);
      expect(lost).toBeLessThan(strips + 0.6);
    }
  });

  test('overlap: within its reach, all of the later colours and nothing else is taken', () => {
    const [units] = done([unit()], 'overlap', 2);
    const found = Object.fromEntries(units!.map(({ part, pieces }) => [part, pieces])) as Record<Part, Piece[]>;
    const bare = Object.fromEntries(unit().drawn.map(({ part, pieces }) => [part, pieces])) as Record<Part, Piece[]>;
    // Painted in the order of the parts: field, alternate, border.
    expect(area(found.border) - area(bare.border)).toBeCloseTo(0, 6);
    expect(area(found.field)).toBeGreaterThan(area(found.alternate));
    expect(area(found.alternate) - area(bare.alternate)).toBeGreaterThan(30 * 2);
    const wanted = Clipper.intersect(
      grownBy(bare.field, 2),
      paths([...bare.alternate, ...bare.border]),
      FillRule.NonZero,
    );
    expect(area(found.field) - area(bare.field)).toBeCloseTo(mm2(wanted), 1);
  });
});

describe('a chequered floor', () => {
  const tile = (part: Part, at: Standing['at']): Standing => ({
    drawn: [{ part, pieces: square(0, 0, 50) }],
    at,
    every: [100, 100],
  });
  const floor = () => [
    tile('field', [0, 0]),
    tile('field', [50, 50]),
    tile('alternate', [50, 0]),
    tile('alternate', [0, 50]),
  ];

  test('overlap: strips on four sides that stop short of the next square of that colour', () => {
    const found = areas(done(floor(), 'overlap', 1));
    // A strip of 50 by 1 less 1 mm at either end, where the square across the corner is nearer than 1 mm.
    expect(found[0]).toBeCloseTo(2500 + 4 * 48, 1);
    expect(found[1]).toBeCloseTo(found[0]!, 6);
    expect(found[2]).toBeCloseTo(2500, 6);
  });

  test('gap: squares 1 mm smaller, all alike', () => {
    for (const left of areas(done(floor(), 'gap', 1))) expect(left).toBeCloseTo(49 ** 2, 6);
  });
});

test('tips that touch are cut straight across', () => {
  const diamond = (x: number) => drawn((pen) => regularPolygon(pen, x, 0, 30, 4, 0));
  const [units] = done([alone(diamond(-30), diamond(30))], 'gap', 2);
  for (const { pieces } of units!) expect(area(diamond(0)) - area(pieces)).toBeCloseTo(1, 1);
  expect(nearer(units![0]!.pieces, units![1]!.pieces, 1.95)).toBe(false);
});

describe('ribs narrower than the gap', () => {
  test('are widened to it from both sides', () => {
    const [units] = done([alone(square(-20.25, 0, 40), square(20.25, 0, 40))], 'gap', 2);
    for (const { pieces } of units!) expect(area(pieces)).toBeCloseTo(40 * 39.25, 2);
  });

  test('are no place to overlap', () => {
    const unit = alone(square(-20.25, 0, 40), square(20.25, 0, 40));
    expect(areas(done([unit], 'overlap', 1))).toEqual([1600, 1600]);
  });
});

describe('mirror images come out as mirror images, and exchanged colours give way alike', () => {
  const disc = (x: number) => drawn((pen) => circle(pen, x, 3, 20));
  const bar = (x: number): Piece[] => tools.booleans.subtract(square(x, 10, 60), disc(0));
  test.each(['overlap', 'gap'] as const)('%s', (way) => {
    const [one] = done([alone(disc(0), bar(15))], way, 1.3);
    const flip = (pieces: Piece[]) => pieces.map((piece) => mirrored(piece, 'across'));
    const [other] = done([alone(flip(disc(0)), flip(bar(15)))], way, 1.3);
    one!.forEach(({ pieces }, n) => {
      // A band of 0.001 mm along the outline.
      expect(differingArea(flip(pieces), other![n]!.pieces)).toBeLessThan(0.3);
    });
    if (way === 'overlap') return;
    const [swapped] = done([{ ...alone([], []), drawn: exchanged(alone(disc(0), bar(15)).drawn) }], way, 1.3);
    for (const [n, { pieces }] of one!.entries()) expect(differingArea(pieces, swapped![n]!.pieces)).toBeLessThan(0.01);
  });

  test('copies are alike wherever they stand', () => {
    const at = (dx: number): Standing => {
      const unit = alone(disc(0), bar(15));
      return {
        ...unit,
        drawn: unit.drawn.map(({ part, pieces }) => ({ part, pieces: pieces.map((piece) => shifted(piece, dx, 0)) })),
      };
    };
    const [one, other] = [done([at(0)], 'gap', 2)[0]!, done([at(400)], 'gap', 2)[0]!];
    one.forEach(({ pieces }, n) => {
      const back = other[n]!.pieces.map((piece) => shifted(piece, -400, 0));
      expect(differingArea(pieces, back)).toBeLessThan(0.01);
    });
  });
});
