import { expect, test } from 'vitest';
import { readBack, readBackRange } from '../../src/page/fields/read-back.ts';

// 1 in = 25.4 mm exactly (NIST SP 811, Appendix B.8).
test.each([
  [`12' 6 3/8"`, undefined, `12' 6 3/8" · 3820 mm`],
  ['34', 'in', `34" · 864 mm`],
  ['150.4 cm', undefined, `4' 11 3/16" · 1504 mm`],
] as const)('%s is read back in both systems', (text, bare, says) => {
  expect(readBack(text, bare)).toEqual({ says });
  expect(readBackRange(text, bare)).toEqual({ says });
});

test.each([
  ['34 to 38', 'in', `34" to 38" · 864 mm to 965 mm`],
  ['5 to 10 cm', undefined, `1 15/16" to 3 15/16" · 50 mm to 100 mm`],
  ['2 1/2 to 4, wish 3', 'in', `2 1/2" to 4", wish 3" · 64 mm to 102 mm, wish 76 mm`],
] as const)('the ends of %s are read back', (text, bare, says) => {
  expect(readBackRange(text, bare)).toEqual({ says });
});

test.each(['', '34 to', '1 to 2 to 3', '34 - 38'])('%j is not read back', (text) => {
  expect(readBackRange(text, 'in')).toBeUndefined();
});
