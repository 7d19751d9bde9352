import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { contrast, luminance } from '../../src/colour/contrast.ts';
import { difference, fromOklch, type Lab, labOf, oklchOf } from '../../src/colour/difference.ts';
import { faded } from '../../src/colour/fade.ts';
import { hexOf, rgbOf } from '../../src/colour/rgb.ts';
import { DEFICIENCIES, seenWith } from '../../src/colour/vision.ts';

/** Rows of a table in this folder; each file names its source at its top. */
const table = (name: string): string[][] =>
  readFileSync(new URL(name, import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '' && !line.startsWith('#'))
    .slice(1)
    .map((line) => line.split(','));

const hexes = fc.integer({ min: 0, max: 0xffffff }).map((value) => `#${value.toString(16).padStart(6, '0')}`);

test('a colour reads back from its hex', () => {
  fc.assert(
    fc.property(hexes, (hex) => {
      expect(hexOf(rgbOf(hex))).toBe(hex);
    }),
  );
});

describe('contrast by WCAG 2', () => {
  test.each(table('wcag-contrast.csv').map((row) => row as [string, string, string]))(
    '#%s: luminance %s, %s against white',
    (hex, light, ratio) => {
      expect(luminance(`#${hex}`)).toBeCloseTo(Number(light), 5);
      expect(contrast(`#${hex}`, '#ffffff')).toBeCloseTo(Number(ratio), 5);
    },
  );

  test('runs from 1 to 21 and cares for no order', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 9);
    fc.assert(
      fc.property(hexes, hexes, (one, other) => {
        expect(contrast(one, other)).toBe(contrast(other, one));
        expect(contrast(one, other)).toBeGreaterThanOrEqual(1);
      }),
    );
  });
});

describe('colour difference', () => {
  const pairs = table('ciede2000-sharma.csv').map((row) => row.map(Number));

  test('there are 34 published pairs', () => expect(pairs).toHaveLength(34));

  test.each(pairs)('CIEDE2000 pair %d', (_, l1, a1, b1, l2, a2, b2, published) => {
    const [one, other]: [Lab, Lab] = [
      [l1!, a1!, b1!],
      [l2!, a2!, b2!],
    ];
    expect(Math.abs(difference(one, other) - published!)).toBeLessThan(1e-4);
    expect(difference(other, one)).toBeCloseTo(difference(one, other), 9);
  });

  test('white is 100 light and hueless (CIE 15)', () => {
    const [l, a, b] = labOf('#ffffff');
    expect(l).toBeCloseTo(100, 3);
    expect(Math.hypot(a, b)).toBeLessThan(0.02);
  });

  test('OKLCH reads back to the byte', () => {
    fc.assert(
      fc.property(hexes, (hex) => {
        const off = (back: string) =>
          Math.max(...rgbOf(back).map((share, at) => Math.abs(share - rgbOf(hex)[at]!) * 255));
        expect(off(fromOklch(oklchOf(hex)))).toBeLessThan(1.01);
      }),
    );
  });
});

describe('colours as others see them', () => {
  // Golden colours worked out from the two published tables: linear light, clamped, rounded.
  test.each([
    ['protan', '#ff0000', '#6d5f00'],
    ['deutan', '#ff0000', '#a39000'],
    ['protan', '#00ff00', '#ffe500'],
    ['deutan', '#00ff00', '#efd63a'],
    ['protan', '#b5482f', '#665c2c'],
    ['deutan', '#b5482f', '#81742c'],
    ['tritan', '#ff0000', '#ff004e'],
    ['tritan', '#0000ff', '#006288'],
  ] as const)('%s: %s is seen as %s', (deficiency, hex, seen) => {
    expect(seenWith(deficiency, hex)).toBe(seen);
  });

  test('greys stay as they are', () => {
    for (const deficiency of DEFICIENCIES)
      for (const byte of [0, 1, 64, 128, 200, 255]) {
        const grey = hexOf([byte / 255, byte / 255, byte / 255]);
        const off = rgbOf(seenWith(deficiency, grey)).map((share) => Math.abs(share * 255 - byte));
        expect(Math.max(...off)).toBeLessThan(1.01);
      }
  });

  test('the matrices are those of the published tables', () => {
    const machado = table('cvd-machado-2009.csv').filter(([, severity]) => severity === '1.0');
    const light = (value: number) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
    const code = (value: number) =>
      Math.round(
        255 * (value <= 0.0031308 ? 12.92 * Math.max(0, value) : 1.055 * Math.min(1, value) ** (1 / 2.4) - 0.055),
      );
    fc.assert(
      fc.property(hexes, fc.constantFrom('protan' as const, 'deutan' as const), (hex, deficiency) => {
        const m = machado
          .find(([type]) => type === deficiency)!
          .slice(2)
          .map(Number);
        const [r, g, b] = rgbOf(hex).map(light) as [number, number, number];
        const seen = [0, 3, 6].map((row) => code(m[row]! * r + m[row + 1]! * g + m[row + 2]! * b));
        expect(rgbOf(seenWith(deficiency, hex)).map((share) => Math.round(share * 255))).toEqual(seen);
      }),
    );
  });
});

test('fading takes chroma away, never adds any, and ends without any', () => {
  fc.assert(
    fc.property(hexes, fc.double({ min: 0, max: 1, noNaN: true }), (hex, share) => {
      expect(oklchOf(faded(hex, share)).c).toBeLessThanOrEqual(oklchOf(hex).c + 0.004);
      expect(oklchOf(faded(hex, 1)).c).toBeLessThan(0.004);
    }),
  );
  expect(faded('#22384f', 0)).toBe('#22384f');
});
