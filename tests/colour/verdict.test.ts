import { readFileSync } from 'node:fs';
import { differenceCiede2000, lab65, wcagContrast } from 'culori';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { oklchOf } from '../../src/colour/difference.ts';
import { faded } from '../../src/colour/fade.ts';
import { rgbOf } from '../../src/colour/rgb.ts';
import { FADING, judgePair } from '../../src/colour/verdict.ts';
import { DEFICIENCIES, seenWith } from '../../src/colour/vision.ts';

const hexes = fc.integer({ min: 0, max: 0xffffff }).map((value) => `#${value.toString(16).padStart(6, '0')}`);

// The table of libDaltonLens (public domain) beside this file: H. Brettel, F. Viénot, J. D. Mollon 1997, both planes, on linear light.
test('blue is missed as the published planes have it, on both sides of what parts them', () => {
  const planes = readFileSync(new URL('cvd-brettel-1997.csv', import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => line.startsWith('tritan'))
    .map((line) => line.split(',').slice(2).map(Number));
  expect(planes).toHaveLength(2);
  const light = (value: number) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
  const code = (value: number) => {
    const held = Math.min(1, Math.max(0, value));
    return Math.round(255 * (held <= 0.0031308 ? 12.92 * held : 1.055 * held ** (1 / 2.4) - 0.055));
  };
  const sides = new Set<number>();
  const seen = (hex: string): number[] => {
    const rgb = rgbOf(hex).map(light);
    const dot = (m: number[], from: number) => rgb.reduce((sum, value, at) => sum + value * m[from + at]!, 0);
    const side = dot(planes[0]!, 9) >= 0 ? 0 : 1;
    sides.add(side);
    return [0, 3, 6].map((row) => code(dot(planes[side]!, row)));
  };
  fc.assert(
    fc.property(hexes, (hex) => {
      expect(rgbOf(seenWith('tritan', hex)).map((share) => Math.round(share * 255))).toEqual(seen(hex));
    }),
  );
  expect(sides.size).toBe(2);
});

test('what is measured of a pair is what culori measures of it, whichever comes first', () => {
  const apart = differenceCiede2000();
  fc.assert(
    fc.property(hexes, hexes, (one, other) => {
      const verdict = judgePair(one, other);
      expect(verdict.contrast).toBeCloseTo(wcagContrast(one, other), 6);
      expect(verdict.difference).toBeCloseTo(apart(one, other), 6);
      expect(verdict.lightness).toBeCloseTo(Math.abs(lab65(one)!.l - lab65(other)!.l), 6);
      for (const deficiency of DEFICIENCIES)
        expect(verdict.seen[deficiency]).toBeCloseTo(apart(seenWith(deficiency, one), seenWith(deficiency, other)), 6);
      expect(verdict.faded).toBeCloseTo(apart(faded(one, FADING), faded(other, FADING)), 6);
      const turned = judgePair(other, one);
      expect([turned.reads, turned.because]).toEqual([verdict.reads, verdict.because]);
    }),
    { numRuns: 60 },
  );
});

test('it reads well just where nothing is named, and one colour beside itself never does', () => {
  fc.assert(
    fc.property(hexes, hexes, (one, other) => {
      const { reads, because } = judgePair(one, other);
      expect(reads === 'well').toBe(because.length === 0);
      expect(judgePair(one, one).reads).toBe('hardly');
      // From across the room, in dim light, to three eyes, and faded.
      expect(judgePair(one, one).because).toHaveLength(6);
    }),
    { numRuns: 60 },
  );
});

test('a colour fades towards the pale of old boards and keeps its hue', () => {
  fc.assert(
    fc.property(hexes, (hex) => {
      const [before, after] = [oklchOf(hex), oklchOf(faded(hex, FADING))];
      // Two bytes of lightness are lost in rounding at most.
      const off = (of: { l: number }) => Math.abs(of.l - 0.82);
      expect(off(after)).toBeLessThan(off(before) + 0.01);
      if (after.c > 0.05) expect(Math.abs(((after.h - before.h + 540) % 360) - 180)).toBeLessThan(3);
    }),
  );
});
