import { expect, test } from 'vitest';
import { lineNamed } from '../../src/check/read/line-named.ts';
import { lineWords } from '../../src/marks/line-words.ts';

test.each([
  ['axis', 'axis'],
  ['left-edge', 'left edge'],
  ['near-opening', 'near opening'],
  ['across-left', 'line across to the left'],
  ['along-near', 'line along to the near wall'],
  ['cut-across', 'cut line across the cloth'],
  ['hem-along', 'hem line along the cloth'],
  ['border-right', 'right border'],
  ['inner-border-left', 'left inner border'],
  ['border-near-left', 'near border to the left'],
  ['inner-border-far-right', 'far inner border to the right'],
  ['lettering-left', 'lettering to the left'],
  ['near-lettering-right', 'near lettering to the right'],
  ['riser-3-across', 'across riser 3'],
  ['riser-12-up', 'up riser 12'],
  ['tread-1-back', 'back over tread 1'],
  ['wall-2', 'wall 2'],
  ['wall-2-back', 'back along wall 2'],
  ['off-wall-4', 'off wall 4'],
  ['near-wall', 'near wall'],
  ['axis-in-room', 'axis in the room'],
])('%s is said as %s, and the check reads it back', (name, words) => {
  expect(lineWords(name)).toBe(words);
  expect(lineNamed(words)).toBe(name);
});
