import { describe, expect, test } from 'vitest';
import { parseLength, roundToStep, writeArea, writeLength, writeTape } from '../../src/units/index.ts';

const SIXTEENTH = 25.4 / 16;
const mmOf = (text: string): number => {
  const read = parseLength(text);
  if (!read.ok) throw new Error(read.says);
  return read.mm;
};

describe('16 CFR 500.19: exact sizes of the units', () => {
  test.each([
    ['1 in', 25.4],
    ['1 ft', 304.8],
    ['1 yd', 914.4],
    ['1 cm', 10],
    ['1 m', 1000],
  ])('%s is %d mm', (text, mm) => expect(mmOf(text)).toBe(mm));

  test('1 sq in is 6.4516 cm², 1 sq ft is 929.0304 cm²', () => {
    expect(writeArea(100 * 645.16, 'inch')).toBe('100 sq in');
    expect(writeArea(92_903.04, 'inch')).toBe('1 sq ft');
    expect(writeArea(10 * 929.0304 * 100, 'inch')).toBe('10 sq ft');
    expect(writeArea(92_903.04, 'metric')).toBe('929 cm²');
  });
});

describe('exact products with 25.4, to the last bit', () => {
  test.each([
    [`12' 7 3/8"`, 3844.925],
    [`10' 0 11/16"`, 3065.4625],
    [`5 1/2"`, 139.7],
    [`7' 11 15/16"`, 2436.8125],
    ['1/64 in', 0.396875],
    ['1/16 in', 1.5875],
    [`144"`, 3657.6],
  ])('%s is %d mm', (text, mm) => expect(mmOf(text)).toBe(mm));
});

// Rational arithmetic: what the nearest sixteenth shows, and shown minus true.
test.each([
  [100, '3 15/16"', 0.0125],
  [1000, '39 3/8"', 0.125],
  [2438.4, '96"', 0],
  [3000, '118 1/8"', 0.375],
  [613, '24 1/8"', -0.225],
  [910, '35 13/16"', -0.3625],
])('%d mm on a tape in sixteenths shows %s, off by %d mm', (mm, shows, residual) => {
  expect(writeTape(mm, 'in', SIXTEENTH)).toBe(shows);
  expect(roundToStep(mm, SIXTEENTH) - mm).toBeCloseTo(residual, 9);
});

// NIST Handbook 44, Sec. 10.3: a reading midway between two marks is taken to the mark whose value is even.
test.each([
  [0.5, 0],
  [1.5, 2],
  [2.5, 2],
  [3.5, 4],
  [101.5, 102],
  [-0.5, 0],
  [-1.5, -2],
])('midway at %d steps is read as %d steps', (steps, read) => {
  expect(roundToStep(steps * SIXTEENTH, SIXTEENTH)).toBe((read * 127) / 80);
  expect(roundToStep(steps, 1)).toBe(read);
});

// side × √2, to 1/16 and to 1/32 in.
test.each([
  [4, '5 11/16"', '5 21/32"'],
  [6, '8 1/2"', '8 1/2"'],
  [8, '11 5/16"', '11 5/16"'],
  [9, '12 3/4"', '12 23/32"'],
  [10, '14 1/8"', '14 5/32"'],
  [12, '17"', '16 31/32"'],
  [18, '25 7/16"', '25 15/32"'],
])('a square of %d in set on point is %s wide (%s in thirty-seconds)', (side, sixteenths, thirtySeconds) => {
  const wide = side * 25.4 * Math.SQRT2;
  expect(writeTape(wide, 'in', SIXTEENTH)).toBe(sixteenths);
  expect(writeTape(wide, 'in', SIXTEENTH / 2)).toBe(thirtySeconds);
});

// A worked example in circulation takes 116.6 ft for 116 ft 6 in; the diagonal of 60 by 100 ft is √13 600 = 116.619 ft.
test('tenths of a foot are not inches', () => {
  expect(writeLength(Math.sqrt(13_600) * 304.8, 'ft', SIXTEENTH)).toBe(`116' 7 7/16"`);
  expect(mmOf('116.6 ft')).toBeCloseTo(116.6 * 304.8, 9);
  expect(mmOf('116.6 ft')).not.toBeCloseTo(mmOf(`116' 6"`), 0);
});

// Balanced cuts, worked in floor trade papers (fcimag.com/articles/95138; floortrendsmag.com/articles/111279).
test.each([
  [['24"', '1 1/2"'], '12 3/4"'],
  [['1 3/4"', '1 1/4"', '11 3/4"'], '7 3/8"'],
])('%j shared by two sides is %s each', (pieces, each) =>
  expect(writeTape(pieces.map(mmOf).reduce((a, b) => a + b) / 2, 'in', SIXTEENTH)).toBe(each),
);
