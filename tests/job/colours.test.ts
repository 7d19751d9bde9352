import { expect, test } from 'vitest';
import { colourParts, PALETTE } from '../../src/job/colours.ts';

const THREE = ['navy', 'cream', 'brick'];

test.each([
  [THREE, {}, 'navy', 'cream', 'brick'],
  [THREE, { ground: 'cream' }, 'cream', 'navy', 'brick'],
  [THREE, { field: 'navy' }, 'cream', 'navy', 'brick'],
  [THREE, { field: 'navy', alternate: 'brick' }, 'cream', 'navy', 'brick'],
  [THREE, { alternate: 'cream' }, 'navy', 'brick', 'cream'],
  [['cream', 'navy'], {}, 'cream', 'navy', 'navy'],
  [['cream', 'navy'], { field: 'cream' }, 'navy', 'cream', 'cream'],
])('%j with %j: ground %s, field %s, alternate %s', (names, named, ground, field, alternate) =>
  expect(colourParts(names, named)).toMatchObject({ ground, field, alternate }),
);

test('what is named is kept, and the field never takes the ground by default', () => {
  expect(colourParts(THREE, { ground: 'brick', corner: 'brick' })).toEqual({
    ground: 'brick',
    field: 'navy',
    alternate: 'cream',
    border: 'navy',
    'border-alternate': 'cream',
    corner: 'brick',
    'corner-alternate': 'navy',
    'inner-border': 'cream',
    'inner-border-alternate': 'navy',
    inset: 'cream',
    medallion: 'navy',
    'medallion-alternate': 'cream',
    lettering: 'navy',
  });
});

test('the default palette has three colours that are told apart by lightness', () => {
  // Relative luminance and contrast: WCAG 2, w3c/wcag guidelines. 3 is its least ratio for graphics.
  const channel = (byte: number): number =>
    byte / 255 <= 0.03928 ? byte / 255 / 12.92 : ((byte / 255 + 0.055) / 1.055) ** 2.4;
  const light = (hex: string): number =>
    [0.2126, 0.7152, 0.0722]
      .map((share, at) => share * channel(Number.parseInt(hex.slice(1 + 2 * at, 3 + 2 * at), 16)))
      .reduce((a, b) => a + b);
  const { cream, navy, brick } = PALETTE;
  const contrast = (a: string, b: string): number =>
    (Math.max(light(a), light(b)) + 0.05) / (Math.min(light(a), light(b)) + 0.05);
  expect(contrast(cream!, navy!)).toBeGreaterThan(3);
  expect(contrast(cream!, brick!)).toBeGreaterThan(3);
});
