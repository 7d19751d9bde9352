import fc from 'fast-check';
import { expect, test } from 'vitest';
import { eachToken } from '../../../src/check/read/tokens.ts';

function told(text: string): (number | string)[] | undefined {
  const all: (number | string)[] = [];
  const isWhole = eachToken(text, {
    number: (value) => void all.push(value),
    operand: (one) => void all.push(one),
    operator: (name) => void all.push(`${name}()`),
  });
  return isWhole ? all : undefined;
}

// ISO 32000-1, 7.3.3: the real and whole numbers shown there as examples.
test('numbers as the standard shows them', () => {
  expect(told('34.5 -3.62 +123.6 4. -.002 0.0 123 43445 +17 -98 0')).toEqual([
    34.5, -3.62, 123.6, 4, -0.002, 0, 123, 43445, 17, -98, 0,
  ]);
});

// ISO 32000-1, 8.9.5 and 9.4.2: an image set and a string shown, as the examples there write them.
test('names, strings, arrays, comments and operators', () => {
  expect(told('q 132 0 0 132 45 140 cm /Im1 Do Q')).toEqual([
    'q()',
    132,
    0,
    0,
    132,
    45,
    140,
    'cm()',
    '/Im1',
    'Do()',
    'Q()',
  ]);
  expect(told('BT /F1 12 Tf [<0041>-250<0042 43>]TJ ET % the end\nf*')).toEqual([
    'BT()',
    '/F1',
    12,
    'Tf()',
    '<0041>',
    -250,
    '<0042 43>',
    'TJ()',
    'ET()',
    'f*()',
  ]);
  expect(told('')).toEqual([]);
});

test.each(['(words) Tj', '-', '.', '1 2 & m', '<00zz>', '<0041', '{', '+-1'])('%s is refused', (text) => {
  expect(told(text)).toBeUndefined();
});

test('every number is read to the last bit as the language itself reads it', () => {
  const digits = fc.stringMatching(/^[-+]?(?:\d{1,18}\.?\d{0,12}|\.\d{1,18})$/);
  fc.assert(
    fc.property(digits, (text) => {
      expect(told(text)?.map((value) => Number(value) + 0)).toEqual([Number(text) + 0]);
    }),
    { numRuns: 3000 },
  );
});
