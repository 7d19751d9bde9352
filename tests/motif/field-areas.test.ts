import { describe, expect, test } from 'vitest';
import { pieceArea, pieceBox } from '../../src/geometry/measure.ts';
import { drawMotif } from '../../src/motif/record.ts';
import { needMotif, settingsOf } from '../support/motifs.ts';

/** Painted area of each part of one unit as a share of its cell. Settings may lie outside their ranges, down to no ribs. */
function shares(name: string, given: Record<string, number> = {}): { field: number; alternate: number } {
  const motif = needMotif(name);
  const cell = { across: 240, along: 240 * motif.ratio };
  const drawn = drawMotif(motif, cell, { ...settingsOf(motif), ...given });
  const share = (part: string): number =>
    drawn
      .filter((one) => one.part === part)
      .flatMap(({ pieces }) => pieces)
      .reduce((sum, piece) => sum + pieceArea(piece), 0) /
    (cell.across * cell.along);
  return { field: share('field'), alternate: share('alternate') };
}

const { PI, SQRT2, sqrt, acos } = Math;
const ROOT3 = sqrt(3);

const STRAIGHT = 12;

/**
 * A circle of four cubics lies up to 0.0273 % of its radius outside the true one (known of the usual handles, 4/3 · (√2 - 1)),
 * so that its area is up to twice that too large.
 * @param discs area of the circles that the outline is made of, as a share of the cell
 */
function expectRound(found: number, expected: number, discs: number): void {
  expect(Math.abs(found - expected)).toBeLessThan(2 * 0.000273 * discs + 1e-9);
}

describe('harlequin-with-dots', () => {
  // The four corners of a quadrilateral add up to 360°, so that the hollows take one whole circle off half the cell.
  test.each([
    [0.18, 0.04],
    [0.26, 0.02],
  ])('dot %d, rib %d: half the cell less one circle; two dots', (dot, rib) => {
    const { field, alternate } = shares('harlequin-with-dots', { dot, rib });
    const hollow = (PI * (dot / 2 + rib) ** 2) / ROOT3;
    expectRound(field, 1 / 2 - hollow, hollow);
    const dots = (2 * PI * (dot / 2) ** 2) / ROOT3;
    expectRound(alternate, dots, dots);
  });
});

describe('lozenge-in-lozenge', () => {
  test('without ribs, frame and diamond together are half the cell', () => {
    const { field, alternate } = shares('lozenge-in-lozenge', { rib: 0 });
    expect(field + alternate).toBeCloseTo(1 / 2, STRAIGHT);
    // Similar figures: areas as the squares of their heights. A diamond of 60° is √3 / 4 of its width high, from the middle.
    expect(alternate).toBeCloseTo((1 - 0.1 / (ROOT3 / 4)) ** 2 / 2, STRAIGHT);
  });
});

describe('trellis', () => {
  test.each([
    [0.11, 1.7, 0.03],
    [0.16, 1.2, 0.02],
  ])('lath %d, boss %d, rib %d: rectangles and squares', (lath, boss, rib) => {
    const { field, alternate } = shares('trellis', { lath, boss, rib });
    expect(field).toBeCloseTo(2 * lath * (1 / SQRT2 - boss * lath - 2 * rib), STRAIGHT);
    expect(alternate).toBeCloseTo((boss * lath) ** 2, STRAIGHT);
  });
});

describe('quatrefoil', () => {
  test('of half circles on the sides of a square, without ribs: 4 c² + 2 π c² in all', () => {
    const { field, alternate } = shares('quatrefoil', { rib: 0 });
    expectRound(field + alternate, (4 + 2 * PI) / 16, (2 * PI) / 16);
  });

  // A parallel curve inside: four half rings narrower, and a quarter disc off at every cusp (Steiner's formula).
  test.each([0.05, 0.07, 0.085])('leaf within a band of %d: Steiner’s formula', (band) => {
    const rib = 0.035;
    const c = (1 - rib) / 4;
    const d = band + rib;
    const leaf = (4 + 2 * PI) * c * c - 4 * PI * c * d + PI * d * d;
    expectRound(shares('quatrefoil', { band, rib }).alternate, leaf, PI * (2 * (c - d) ** 2 + d * d));
  });
});

describe('ogee', () => {
  test('without ribs, bands and leaf cover half a cell, and so two units all of it', () => {
    const { field, alternate } = shares('ogee', { rib: 0, gap: 0 });
    expectRound(field + alternate, 1 / 2, PI / 4 / ROOT3);
  });

  // Two sectors of 120°, and at each end an equal-sided triangle of side 2R less two sectors of 60° that overlap in half a lens.
  // Lens: MathWorld, "Circle-Circle Intersection".
  test.each([0.1, 0.15, 0.2])('leaf %d inside its outline: sectors, triangles and lenses', (inward) => {
    const rib = 0.035;
    const [R, r] = [0.5, 0.5 + inward];
    const lens = 2 * r * r * acos(R / r) - R * sqrt(4 * r * r - 4 * R * R);
    const leaf = (2 / 3) * PI * (R - inward) ** 2 + 2 * (ROOT3 * R * R - (PI * r * r) / 3 + lens / 2);
    const { alternate } = shares('ogee', { rib, band: 0.05, gap: inward - rib / 2 - 0.05 });
    expectRound(alternate, leaf / ROOT3, (PI * r * r) / ROOT3);
  });
});

describe('scale', () => {
  // A half disc on top, and below it a rectangle less two quarter discs: together the rectangle of 2R × R, whatever π is.
  test('without ribs, band and inner scale cover 2 R², half the cell', () => {
    const { field, alternate } = shares('scale', { rib: 0, gap: 0 });
    expectRound(field + alternate, 1 / 2, PI / 4);
  });

  // In polar coordinates a circle of radius ρ meets the hollow about (1, 1) where sin(φ + 45°) = (ρ² + 1) / (2 √2 ρ).
  // Simpson's rule over 200 strips.
  test.each([0.08, 0.11, 0.16])('band of %d without ribs: rings cut off by the hollows', (band) => {
    const run = (r: number): number => r * (PI + 2 * (Math.asin((r * r + 1) / (2 * SQRT2 * r)) - PI / 4));
    const [from, strips] = [1 - 2 * band, 200];
    const step = (2 * band) / strips;
    let sum = run(from) + run(1);
    for (let i = 1; i < strips; i++) sum += run(from + i * step) * (i % 2 === 1 ? 4 : 2);
    expectRound(shares('scale', { rib: 0, gap: 0, band }).field, (sum * step) / 3 / 4, PI / 4);
  });
});

describe('hexagon', () => {
  // A hexagon w wide between two flat sides covers √3 / 2 · w² (MathWorld, "Regular Hexagon").
  test.each([
    [0.13, 0.08],
    [0.2, 0.02],
  ])('bar %d, gap %d: a regular hexagon', (bar, gap) => {
    const width = 1 - bar - 2 * gap;
    expect(shares('hexagon', { bar, gap }).field).toBeCloseTo(((ROOT3 / 2) * width ** 2) / ROOT3, STRAIGHT);
  });

  test('without ribs and gaps, hexagons and bars leave no ground', () => {
    const { field, alternate } = shares('hexagon', { gap: 0, rib: 0 });
    expect(field + alternate).toBeCloseTo(1 / 2, STRAIGHT);
  });

  test('its ratio of √3 puts all six neighbours equally far', () => {
    const { ratio } = needMotif('hexagon');
    expect(Math.hypot(1 / 2, ratio / 2)).toBeCloseTo(1, STRAIGHT);
  });
});

describe('tumbling-blocks', () => {
  test('without ribs, each of the three sides of a block takes a third', () => {
    const { field, alternate } = shares('tumbling-blocks', { rib: 0 });
    expect(field).toBeCloseTo(1 / 6, STRAIGHT);
    expect(alternate).toBeCloseTo(1 / 6, STRAIGHT);
  });

  // Similar figures: opposite sides of a diamond of 60° lie half a repeat apart.
  test('and a rib makes similar diamonds of them', () => {
    expect(shares('tumbling-blocks', { rib: 0.04 }).field).toBeCloseTo((1 - 0.04 / 0.5) ** 2 / 6, STRAIGHT);
  });
});

describe('octagon-and-dot', () => {
  // Regular octagon of side a: 2 (1 + √2) a² (MathWorld, "Regular Octagon"); a = (√2 - 1) of its width.
  test('left alone, the octagon is regular', () => {
    const side = (SQRT2 - 1) * (1 - 0.03);
    const { field, alternate } = shares('octagon-and-dot', { rib: 0.03 });
    expect(field).toBeCloseTo(2 * (1 + SQRT2) * side ** 2, STRAIGHT);
    expect(alternate).toBeCloseTo((SQRT2 - 1 - 0.03) ** 2, STRAIGHT);
  });

  test('and before the ribs are taken out, the dot is as long as its sides', () => {
    expect(needMotif('octagon-and-dot').parameters.corner!.default * SQRT2).toBeCloseTo(SQRT2 - 1, STRAIGHT);
  });

  test.each([0.16, 0.25, 0.32])('corner %d without ribs: nothing is left over', (corner) => {
    const { field, alternate } = shares('octagon-and-dot', { corner, rib: 0 });
    expect(field).toBeCloseTo(1 - 2 * corner ** 2, STRAIGHT);
    expect(alternate).toBeCloseTo(2 * corner ** 2, STRAIGHT);
  });
});

describe('star-and-cross', () => {
  // Two squares of the same circumcircle: their notches stand at √(2 - √2) of the tips (MathWorld, "Star of Lakshmi").
  test('without ribs, stars of two squares and crosses leave no ground', () => {
    const { field, alternate } = shares('star-and-cross', { rib: 0 });
    expect(field).toBeCloseTo((8 * sqrt(2 - SQRT2) * Math.sin(PI / 8)) / 4, STRAIGHT);
    expect(field + alternate).toBeCloseTo(1, STRAIGHT);
  });

  test('a star is as wide across its straight sides as its square', () => {
    const motif = needMotif('star-and-cross');
    const [star] = drawMotif(motif, { across: 200, along: 200 }, { rib: 0 })[0]!.pieces;
    const box = pieceBox(star!);
    expect(box.right - box.left).toBeCloseTo(200, 9);
    const upright = star![0]!.sides.filter(({ to }) => Math.abs(Math.abs(to[0]) - 100 / SQRT2) < 1e-9);
    expect(upright).toHaveLength(8);
  });
});

describe('compass-star', () => {
  test('the halves of a point are mirror images, so both colours weigh the same, but for the eye', () => {
    const { field, alternate } = shares('compass-star');
    expectRound(alternate - field, PI * 0.05 ** 2, PI * 0.05 ** 2);
  });

  // Eight triangles of two sides and the angle between them; what shows of the short points is triangles too.
  test('without ribs, long points cover 2 √2 · waist of the circle’s four quarters, less the eye’s disc', () => {
    const waist = 0.42;
    const long = 8 * ((waist * Math.sin(PI / 4)) / 2);
    const short = shortPoints(waist, 1.05);
    const { field, alternate } = shares('compass-star', { waist, short: 1.05, rib: 0 });
    expectRound(field + alternate, (long + short) / 4, PI * 0.05 ** 2);
  });
});

/** Eight triangles notch, tip, and where the flanks of a short and a long point cross, on a circle of radius 1. */
function shortPoints(waist: number, reach: number): number {
  // The crossing by Cramer's rule: both flanks as u x + v y = 1, from their two known points.
  const s = Math.SQRT1_2;
  const [u1, v1] = [1, (1 - waist * s) / (waist * s)];
  const u2 = 1 / (waist * reach);
  const v2 = (1 - u2 * reach * s) / (reach * s);
  const det = u1 * v2 - u2 * v1;
  const [x, y] = [(v2 - v1) / det, (u1 - u2) / det];
  // Height of the triangle over its side on the slanting axis.
  return 8 * (((reach - waist) * ((x - y) * s)) / 2);
}
