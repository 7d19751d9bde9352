import { converter, modeOklab, modeRgb, parse, useMode } from 'culori/fn';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dominantColours } from '../../src/picture/dominant.ts';
import type { Raster } from '../../src/picture/raster.ts';

for (const mode of [modeRgb, modeOklab]) useMode(mode);
// OKLab by a general-purpose library.
const toOklab = converter('oklab');
const apart = (one: string, other: string): number => {
  const [a, b] = [toOklab(parse(one)!), toOklab(parse(other)!)];
  return Math.hypot(a.l - b.l, a.a - b.a, a.b - b.b);
};

/** Pixels of colours, so many of each; `grain` spreads every channel evenly by that much to both sides. */
function picture(fields: [hex: string, pixels: number][], grain = 0, opacity = 255): Raster {
  const pixels = fields.flatMap(([hex, count]) => Array<string>(count).fill(hex));
  const data = new Uint8Array(4 * pixels.length);
  let seed = 1;
  const next = (): number => {
    seed = (seed * 48_271) % 2_147_483_647;
    return seed / 2_147_483_647;
  };
  for (const [at, hex] of pixels.entries()) {
    const value = Number.parseInt(hex.slice(1), 16);
    const channel = (byte: number): number => Math.min(255, Math.max(0, Math.round(byte + (2 * next() - 1) * grain)));
    data.set([channel(value >> 16), channel((value >> 8) & 255), channel(value & 255), opacity], 4 * at);
  }
  return { width: pixels.length, height: 1, data };
}

const FLAT: [string, number][] = [
  ['#3b4a57', 600],
  ['#efe4cc', 250],
  ['#9b4a32', 100],
  ['#5d6b4a', 50],
];

test('flat colours come back as they are, the largest first, with their shares', () => {
  expect(dominantColours(picture(FLAT), 4)).toEqual(FLAT.map(([hex, pixels]) => ({ hex, share: pixels / 1000 })));
});

test('more colours than there are give those that there are', () => {
  expect(dominantColours(picture(FLAT), 8)).toHaveLength(4);
});

test('grain does not make colours, and moves them by less than is seen', () => {
  const found = dominantColours(
    picture(
      FLAT.map(([hex, pixels]) => [hex, 20 * pixels]),
      12,
    ),
    4,
  );
  expect(found).toHaveLength(4);
  for (const [at, [hex, pixels]] of FLAT.entries()) {
    expect(apart(found[at]!.hex, hex)).toBeLessThan(0.02);
    expect(found[at]!.share).toBeCloseTo(pixels / 1000, 2);
  }
});

test('two colours for a picture of a light and a dark half are the means of the halves in OKLab', () => {
  const dark: [string, number][] = [
    ['#203040', 300],
    ['#284050', 100],
  ];
  const light: [string, number][] = [
    ['#e0d0c0', 200],
    ['#f0e8d8', 200],
  ];
  const found = dominantColours(picture([...dark, ...light]), 2);
  for (const half of [dark, light]) {
    const labs = half.map(([hex]) => toOklab(parse(hex)!));
    const all = half.reduce((sum, [, pixels]) => sum + pixels, 0);
    const mean = (key: 'l' | 'a' | 'b') => labs.reduce((sum, lab, at) => sum + (lab[key] * half[at]![1]) / all, 0);
    const near = found.map(({ hex }) => {
      const { l, a, b } = toOklab(parse(hex)!);
      return Math.hypot(l - mean('l'), a - mean('a'), b - mean('b'));
    });
    // One step of 255.
    expect(Math.min(...near)).toBeLessThan(0.004);
  }
});

test('see-through pixels are left out', () => {
  const over = picture([['#112233', 10]]);
  const under = picture([['#ffffff', 90]], 0, 0);
  const both: Raster = { width: 100, height: 1, data: Uint8Array.from([...over.data, ...under.data]) };
  expect(dominantColours(both, 3)).toEqual([{ hex: '#112233', share: 1 }]);
  expect(dominantColours(under, 3)).toEqual([]);
});

test('the shares add up to one, no two colours are alike, and nothing depends on the order of the pixels', () => {
  const hexes = fc.integer({ min: 0, max: 0xffffff }).map((value) => `#${value.toString(16).padStart(6, '0')}`);
  const fields = fc.array(fc.tuple(hexes, fc.integer({ min: 1, max: 40 })), { minLength: 1, maxLength: 30 });
  fc.assert(
    fc.property(fields, fc.integer({ min: 1, max: 8 }), (given, count) => {
      const found = dominantColours(picture(given), count);
      expect(found.length).toBeLessThanOrEqual(count);
      expect(found.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
      expect(dominantColours(picture([...given].reverse()), count)).toEqual(found);
      for (const [at, { hex }] of found.entries())
        for (const other of found.slice(at + 1)) expect(apart(hex, other.hex)).toBeGreaterThan(0.03);
    }),
    { numRuns: 150, seed: 8 },
  );
});
