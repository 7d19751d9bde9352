import { expect, test } from 'vitest';
import { LOSS, paintNeeded } from '../../src/paint/need.ts';
import { fromSolids, fromSquareFeet, toSquareFeet, usualRange } from '../../src/paint/spreading.ts';
import { inches, MM_PER_FOOT } from '../../src/units/unit.ts';
import { ML_PER_GALLON, ML_PER_QUART } from '../../src/units/volume.ts';

const mils = (count: number): number => inches(count / 1000);
const us = (solids: number, mil: number): number => toSquareFeet(fromSolids(solids / 100, mils(mil)));

test('a gallon spread 1 mil thin covers 231 / 0.001 / 144 = 1604.1667 sq ft (231 cubic inches: 16 CFR 500.19)', () => {
  expect(us(100, 1)).toBeCloseTo(231 / 0.001 / 144, 6);
  expect(us(100, 1)).toBeCloseTo(1604.1667, 4);
});

// Printed spreading tables of coating technical bulletins: volume solids %, dry film mil, sq ft per gallon.
test.each([
  [30, 1, 481],
  [35, 1, 561],
  [50, 1, 802],
  [65, 1, 1043],
  [35, 2, 281],
  [40, 2, 321],
  [60, 2, 481],
  [50, 3, 267],
  [35, 4, 140],
  [50, 5, 160],
  [65, 5, 208.52],
  [50, 8, 100],
  [100, 10, 160],
])('%s per cent of solids at %s mil: %s sq ft per gallon as printed', (solids, mil, printed) => {
  // Printed to the unit from 1604, which is 0.01 % short of the constant.
  expect(Math.abs(us(solids, mil) - printed)).toBeLessThan(0.5 + printed * 1.1e-4);
});

test('two misprints: 294 for 46 % at 2.5 mil, rounded half way, is 295.1; 527 for 72 % at 2 mil is 577.4', () => {
  expect((1604 * 0.46) / 2.5).toBeCloseTo(295.1, 1);
  expect(us(46, 2.5)).toBeCloseTo(295.17, 2);
  expect(Math.abs(us(46, 2.5) - 294)).toBeGreaterThan(1);
  expect((1604 * 0.72) / 2).toBeCloseTo(577.4, 1);
  expect(us(72, 2)).toBeCloseTo(577.5, 1);
  expect(Math.abs(us(72, 2) - 527)).toBeGreaterThan(50);
});

// Printed SI tables of the same kind: m² per litre = 10 × solids % / dry film µm.
test.each([
  [100, 25, 40],
  [80, 50, 16],
  [75, 75, 10],
  [65, 125, 5.2],
  [60, 75, 8],
  [55, 75, 7.3],
  [50, 25, 20],
  [45, 100, 4.5],
  [71, 125, 5.7],
])('%s per cent of solids at %s µm: %s m² per litre as printed', (solids, micrometres, printed) => {
  expect(Math.abs(fromSolids(solids / 100, micrometres / 1000) / 1000 - printed)).toBeLessThan(0.0501);
});

test('1 sq ft per gallon is 0.02454239 m² per litre: 400 are 9.8170', () => {
  expect(fromSquareFeet(1) / 1000).toBeCloseTo(0.02454239, 8);
  expect(fromSquareFeet(400) / 1000).toBeCloseTo(9.817, 4);
});

// U.S. Army TM 43-0139, Table 3-2: first, second and third coat of oil paint.
test.each([
  ['bare wood', [500, 600], [500, 600], [500, 600]],
  ['painted', [400, 500], [500, 600], [500, 600]],
  ['concrete', [150, 300], [300, 400], [350, 450]],
] as const)('oil paint on %s spreads as the table has it', (floor, ...coats) => {
  expect(coats.map((_, at) => usualRange(floor, 'oil', at))).toEqual(coats);
});

test('other paint is never reckoned to spread over the everyday 350 sq ft per gallon (common practice)', () => {
  expect(usualRange('bare wood', 'water-based', 0)[0]).toBe(350);
  expect(usualRange('concrete', 'water-based', 0)[0]).toBe(150);
});

// A worked room of 120.33 sq ft with two coats, worked by hand from the constants above.
test.each([
  [400, 0, 0.6017, 3],
  [400, LOSS.roller, 0.7078, 3],
  // 120.33 × 2 / 350 / 0.85 = 0.80894.
  [350, LOSS.foam, 0.8089, 4],
])(
  '120.33 sq ft twice at %s sq ft per gallon with a loss of %s: %s gallons, %s whole quarts',
  (rate, loss, gallons, quarts) => {
    const cover = fromSquareFeet(rate);
    const ml = paintNeeded(120.33 * MM_PER_FOOT ** 2, [cover, cover], loss);
    expect(ml / ML_PER_GALLON).toBeCloseTo(gallons, 4);
    expect(Math.ceil(ml / ML_PER_QUART)).toBe(quarts);
  },
);
