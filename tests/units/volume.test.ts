import { expect, test } from 'vitest';
import { parseCover, writeCover } from '../../src/units/cover.ts';
import { parseDuration, writeDuration } from '../../src/units/duration.ts';
import { nameVolume, parseVolume, writeVolume } from '../../src/units/volume.ts';

// 16 CFR 500.19 and NIST Handbook 44, Appendix C: a gallon is 231 cubic inches, 3.785411784 litres.
test.each([
  ['1 gallon', 3785.411784],
  ['1 qt', 946.352946],
  ['1 pint', 473.176473],
  ['1/2 pint', 236.5882365],
  ['½ pt', 236.5882365],
  ['1 cup', 236.5882365],
  ['1 fl oz', 29.5735295625],
  ['1 quart 4 fl oz', 946.352946 + 118.29411825],
  ['250 ml', 250],
  ['2.5 l', 2500],
  ['0.75 litres', 750],
])('%s is %s ml', (text, ml) => {
  const read = parseVolume(text);
  expect(read.ok && read.ml).toBeCloseTo(ml, 9);
});

test.each(['', 'a pint', '1', '1 bucket', '-1 pint', '0 ml', '1,5 l', '1 pint 20 ml', '2000 l'])(
  '%j is no volume, and what to write instead is said',
  (text) => {
    const read = parseVolume(text);
    expect(read.ok).toBe(false);
    expect(!read.ok && read.hint).toBeTruthy();
  },
);

test.each([
  [29.57, 'inch', '1 fl oz'],
  [29.58, 'inch', '2 fl oz'],
  [237, 'inch', '1 1/4 cups'],
  [473.176473, 'inch', '1 pint'],
  [950, 'inch', '1 1/4 quarts'],
  [3785.411784, 'inch', '1 gallon'],
  [231, 'metric', '240 ml'],
  [1001, 'metric', '1.1 l'],
] as const)('%s ml is written %s: %s, never less than it is', (ml, system, text) => {
  expect(writeVolume(ml, system)).toBe(text);
  const read = parseVolume(text);
  expect(read.ok && read.ml).toBeGreaterThanOrEqual(ml - 1e-6);
});

test('a tin goes by the name it is sold under', () => {
  expect([3785.411784, 946.352946, 473.176473, 236.5882365, 118.29411825, 750, 2500].map(nameVolume)).toEqual([
    '1 gallon',
    '1 quart',
    '1 pint',
    '1/2 pint',
    '4 fl oz',
    '750 ml',
    '2.5 l',
  ]);
});

test('what a label says of cover is read in either system: 400 sq ft per gallon are 9.8170 m² per litre', () => {
  for (const text of ['400 sq ft per gallon', '400 ft2/gal', '100 sq ft per quart']) {
    const read = parseCover(text);
    expect(read.ok && read.cover / 1000).toBeCloseTo(9.817, 4);
    expect(read.ok && writeCover(read.cover, 'inch')).toBe('400 sq ft per gallon');
  }
  const metric = parseCover('10 m2 per l');
  expect(metric.ok && metric.cover).toBe(10_000);
  for (const text of ['400', '400 sq ft', '4 sq ft per gallon', '10 m per l']) expect(parseCover(text).ok).toBe(false);
});

test('times of a label', () => {
  expect(['30 min', '4 hours', '3 days'].map((text) => parseDuration(text))).toEqual(
    [0.5, 4, 72].map((hours) => ({ ok: true, hours })),
  );
  expect(parseDuration('4').ok).toBe(false);
  expect([4 / 60, 1.5, 4, 72].map(writeDuration)).toEqual(['4 min', '1 h 30 min', '4 hours', '3 days']);
});
