import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatMicrons, formatMm, toMicrons } from '../../src/write/number.ts';

describe('formatMm', () => {
  test.each([
    [0, '0'],
    [-0, '0'],
    [-0.0004, '0'],
    [12, '12'],
    [25.4, '25.4'],
    [0.79375, '0.794'],
    [0.05, '0.05'],
    [0.005, '0.005'],
    [1.01, '1.01'],
    [1.001, '1.001'],
    [-1.1, '-1.1'],
    [120, '120'],
    [1000.001, '1000.001'],
    [9_999_999.9995, '10000000'],
  ])('%d is written %s', (mm, text) => expect(formatMm(mm)).toBe(text));

  test('halves go away from zero on both sides', () => {
    expect([0.0005, -0.0005].map(formatMm)).toEqual(['0.001', '-0.001']);
  });

  test('reads back to within half a micrometre, in plain decimals, the same mirrored', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (mm) => {
        const text = formatMm(mm);
        expect(text).toMatch(/^-?(0|[1-9]\d*)(\.\d{0,2}[1-9])?$/);
        expect(text).not.toBe('-0');
        expect(Math.abs(Number(text) - mm)).toBeLessThanOrEqual(0.0005 + 1e-9);
        expect(Number(formatMm(-mm))).toBe(-Number(text) + 0);
      }),
      { seed: 2, numRuns: 2000 },
    );
  });

  test('writes what toFixed would, zeros trimmed', () => {
    for (let microns = -12_345; microns < 12_345; microns += 7) {
      expect(formatMicrons(microns)).toBe(String(Number((microns / 1000).toFixed(3))));
    }
  });

  test.each([Number.NaN, Infinity, -Infinity])('refuses %d', (mm) =>
    expect(() => formatMm(mm)).toThrow(`cannot write ${mm}`),
  );

  test('toMicrons is whole', () => expect(toMicrons(12.34567)).toBe(12346));
});
