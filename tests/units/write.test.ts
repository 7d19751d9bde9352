import { describe, expect, test } from 'vitest';
import { type Unit, writeArea, writeLength, writeTape } from '../../src/units/index.ts';

const SIXTEENTH = 25.4 / 16;
const inches = (value: number): number => value * 25.4;

describe('lengths for a person: inches below 4 ft, feet and inches from there', () => {
  test.each([
    [0, '0"'],
    [inches(3 / 8), '3/8"'],
    [inches(12), '12"'],
    [inches(34), '34"'],
    [inches(47 + 15 / 16), '47 15/16"'],
    [inches(47.99), `4'`],
    [inches(48), `4'`],
    [inches(48 + 1 / 16), `4' 0 1/16"`],
    [inches(61.5), `5' 1 1/2"`],
    [inches(150 + 3 / 8), `12' 6 3/8"`],
    [inches(144), `12'`],
    [-inches(3 / 8), '-3/8"'],
    [-0.1, '0"'],
  ])('%d mm is %s', (mm, text) => {
    expect(writeLength(mm, 'in', SIXTEENTH)).toBe(text);
    expect(writeLength(mm, 'ft', SIXTEENTH)).toBe(text);
  });

  test.each<[number, Unit, number, string]>([
    [1504, 'mm', 1, '1504 mm'],
    [1504.4, 'mm', 1, '1504 mm'],
    [1504.4, 'mm', 0.5, '1504.5 mm'],
    [1504, 'cm', 1, '150.4 cm'],
    [1500, 'cm', 1, '150 cm'],
    [3250, 'm', 1, '3.25 m'],
    [3000, 'm', 1, '3 m'],
    [3254, 'm', 10, '3.25 m'],
    [0, 'm', 1, '0 m'],
    [-3, 'cm', 1, '-0.3 cm'],
  ])('%d mm in %s to %d mm is %s', (mm, unit, step, text) => expect(writeLength(mm, unit, step)).toBe(text));

  test('fractions are in lowest terms and never finer than the tape', () => {
    const fractions = Array.from({ length: 16 }, (_, at) => writeTape(inches(at / 16), 'in', SIXTEENTH));
    expect(fractions).toEqual(
      ['0', '1/16', '1/8', '3/16', '1/4', '5/16', '3/8', '7/16', '1/2']
        .concat(['9/16', '5/8', '11/16', '3/4', '13/16', '7/8', '15/16'])
        .map((text) => `${text}"`),
    );
    expect(writeTape(inches(3 / 16), 'in', inches(1 / 8))).toBe('1/4"');
    expect(writeTape(inches(1 / 64), 'in', inches(1 / 64))).toBe('1/64"');
  });
});

describe('as the tape shows it', () => {
  test.each<[Unit, string]>([
    ['in', '150 3/8"'],
    ['ft', '150 3/8"'],
    ['mm', '3820 mm'],
    ['cm', '382 cm'],
    ['m', '382 cm'],
  ])('in a job in %s', (unit, text) =>
    expect(writeTape(inches(150 + 3 / 8), unit, unit === 'in' || unit === 'ft' ? SIXTEENTH : 1)).toBe(text),
  );
});

test.each<[number, 'inch' | 'metric', string]>([
  [0, 'inch', '0 sq in'],
  [92_903.04 * 12.54, 'inch', '12.5 sq ft'],
  [92_903.04 * 120.33, 'inch', '120.3 sq ft'],
  [92_903.04 / 2, 'inch', '72 sq in'],
  [1_164_000, 'metric', '1.16 m²'],
  [10_000_000, 'metric', '10 m²'],
  [84_000, 'metric', '840 cm²'],
  // A half that misses by the last bit of its sum: eight corner blocks of 2 3/4 in are 60.5 sq in.
  [8 * 69.85 ** 2, 'inch', '61 sq in'],
  [39032.18, 'inch', '61 sq in'],
  [39032.17999999999, 'inch', '61 sq in'],
])('%d mm² in %s is %s', (mm2, system, text) => expect(writeArea(mm2, system)).toBe(text));
