import { describe, expect, test } from 'vitest';
import { parseLength, parseNumber, type Unit } from '../../src/units/index.ts';

const FEET = 12 * 304.8 + (6 + 3 / 8) * 25.4;

describe('lengths as people write them', () => {
  test.each([
    [`12' 6 3/8"`, FEET],
    [`12'6 3/8"`, FEET],
    [`12'-6 3/8"`, FEET],
    [`12' - 6-3/8"`, FEET],
    ['12 ft 6 3/8 in', FEET],
    ['12 feet 6 3/8 inches', FEET],
    ['12 ft. 6 3/8 in.', FEET],
    ['12 FT 6 3/8 IN', FEET],
    ['12′ 6⅜″', FEET],
    ['12’ 6 3⁄8”', FEET],
    ['12′ 6³⁄₈″', FEET],
    [`12' 6 3/8''`, FEET],
    ['12\u00a0ft\u20096\u202f3/8\u00a0in', FEET],
    [`12' 6 3/8`, FEET],
    [`  12'   6  3/8 "  `, FEET],
    ['150.4 cm', 1504],
    ['150.4cm', 1504],
    ['3 m', 3000],
    ['3 metres', 3000],
    ['3 meters', 3000],
    ['3 m 25 cm', 3250],
    ['3 m 25 cm 4 mm', 3254],
    ['.5 m', 500],
    ['½ m', 500],
    ['1-1/2 in', 38.1],
    ['1–1/2 in', 38.1],
    ['1 1/2"', 38.1],
    ['1½"', 38.1],
    ['1½ in', 38.1],
    ['⅜″', 9.525],
    [`12' 0 3/8"`, 12 * 304.8 + 9.525],
    [`12' 3/8"`, 12 * 304.8 + 9.525],
    ['5 yd', 4572],
    ['0', 0],
    ['0"', 0],
  ])('%s', (text, mm) => {
    const read = parseLength(text);
    expect(read).toMatchObject({ ok: true });
    expect(read.ok && read.mm).toBeCloseTo(mm, 9);
  });

  test.each<[string, Unit, number]>([
    ['34', 'in', 863.6],
    ['34 1/2', 'in', 876.3],
    ['150.4', 'cm', 1504],
    ['3', 'm', 3000],
    ['12 1/2', 'ft', 3810],
    ['12', 'mm', 12],
    ['3 m', 'in', 3000],
    [`12' 6`, 'mm', 3810],
  ])('%s in a job in %s', (text, bare, mm) => {
    const read = parseLength(text, bare);
    expect(read.ok && read.mm).toBeCloseTo(mm, 9);
  });
});

const EXAMPLES = `12' 6 3/8", 3.25 m or 150.4 cm`;

describe('what is refused, and what is said', () => {
  test.each([
    ['', 'nothing is written here; a length belongs here', EXAMPLES],
    ['\u00a0 ', 'nothing is written here; a length belongs here', EXAMPLES],
    ['12', '12 has no unit', '12 in, 12 cm or 12 mm'],
    ['-3 in', '-3 in is below zero; a length is zero or more', '3 in'],
    ['–½ in', '–½ in is below zero; a length is zero or more', '1/2 in'],
    ['−2 m', '−2 m is below zero; a length is zero or more', '2 m'],
    ['NaN', 'NaN is not a length', EXAMPLES],
    ['.nan', '.nan is not a length', EXAMPLES],
    ['Infinity', 'Infinity is not a length', EXAMPLES],
    ['1e3 in', '1e3 in: e3 in is not a unit; allowed are in, ft, yd, mm, cm and m', EXAMPLES],
    ['0x10 in', '0x10 in: x10 in is not a unit; allowed are in, ft, yd, mm, cm and m', EXAMPLES],
    ['3 furlongs', '3 furlongs: furlongs is not a unit; allowed are in, ft, yd, mm, cm and m', EXAMPLES],
    ['3 in x', '3 in x is not a length', EXAMPLES],
    ['12:30', '12:30: :30 cannot be read', EXAMPLES],
    ['5. in', '5. in: . in cannot be read', EXAMPLES],
    ['1/0 in', '1/0: nothing can be divided by 0', 'a fraction such as 1/2 or 3/8'],
    ['63/8"', '63/8: the top of a fraction must be smaller than its bottom', '7 7/8 or 6 3/8'],
    ['5/4 in', '5/4: the top of a fraction must be smaller than its bottom', '1 1/4'],
    [
      '1.5 1/2 in',
      '1.5 1/2 in: a number has a decimal point or a fraction, not both and not two of them',
      'a number such as 6.5 or 6 1/2',
    ],
    [
      '1/2/3 in',
      '1/2/3 in: a number has a decimal point or a fraction, not both and not two of them',
      'a number such as 6.5 or 6 1/2',
    ],
    [
      '1,500 mm',
      '1,500 mm: a comma is read differently in different countries, so it is not allowed in a number',
      'a point for decimals, nothing between thousands: 1.500 mm or 1500 mm',
    ],
    ['12 6"', '12 6": two numbers stand side by side with no unit between', `12' 6"`],
    ['12 14', '12 14: two numbers stand side by side with no unit between', EXAMPLES],
    ['17-9 7/16', '17-9 7/16: two numbers stand side by side with only a dash between', `17' 9 7/16"`],
    ['17 – 11"', '17 – 11": two numbers stand side by side with only a dash between', `17' 11"`],
    ['34-38', '34-38: two numbers stand side by side with only a dash between', EXAMPLES],
    [`6" 12'`, `6" 12': ft cannot follow in; the larger unit comes first, each once`, EXAMPLES],
    ['3 cm 4 cm', '3 cm 4 cm: cm cannot follow cm; the larger unit comes first, each once', EXAMPLES],
    ['3 m 2 in', '3 m 2 in mixes inches and metric in one length', EXAMPLES],
    ['3 m 25', '3 m 25: the last number has no unit', '3 m 25 cm'],
    [`3' 14"`, `3' 14": the in after ft come to a whole ft or more`, `4' 2"`],
    ['3 m 125 cm', '3 m 125 cm: the cm after m come to a whole m or more', '4.25 m'],
    [`12.5' 3"`, `12.5' 3": only the last number may have a fraction or a decimal point`, EXAMPLES],
    ['1001 m', '1001 m is longer than 1 km, the longest length read', EXAMPLES],
    ['9'.repeat(70), `${'9'.repeat(37)}… is too long to be one length`, EXAMPLES],
    ['3 \u001b[31m in', '3 ?[31m in: ?[31m in cannot be read', EXAMPLES],
  ])('%j', (text, says, hint) => expect(parseLength(text)).toEqual({ ok: false, says, hint }));

  test('the hint reads as a length wherever it is one', () => {
    for (const text of ['-3 in', `3' 14"`, '3 m 125 cm', '3 m 25', '17-9 7/16', '12 6"']) {
      const refused = parseLength(text);
      expect(refused.ok ? refused : parseLength(refused.hint).ok, text).toBe(true);
    }
  });
});

describe('plain numbers', () => {
  test.each([
    ['5', 5],
    ['0.97', 0.97],
    ['5 1/2', 5.5],
    ['5½', 5.5],
  ])('%s', (text, value) => expect(parseNumber(text)).toEqual({ ok: true, value }));

  test.each(['', 'nan', '1e3', '5 in', '-3', '7/2', '1/0', '0x1f', '1_000', '12:30'])('%j is refused', (text) =>
    expect(parseNumber(text).ok).toBe(false),
  );
});
