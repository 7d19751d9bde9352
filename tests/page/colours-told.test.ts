import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fail } from '../../src/issue.ts';
import { coloursOf, proposeColours, seenPalettes } from '../../src/page/engine/colours.ts';

const passage = readFileSync('samples/passage-runner.job.yaml', 'utf8');
const none = async () => fail('asset/missing', [], 'no file is here');

/** WCAG 2.2, relative luminance and contrast ratio (W3C Recommendation), written down here once more. */
function contrast(one: string, other: string): number {
  const luminance = (hex: string): number => {
    const [r, g, b] = [1, 3, 5].map((at) => {
      const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
      return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
    }) as [number, number, number];
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

describe('what is told of colours', () => {
  test('parts share the whole work between them, and every colourway is judged', async () => {
    const told = await coloursOf(passage, 0, none);
    if (!told.ok) throw new Error('not read');
    expect(told.value.parts.map(({ part }) => part)).toEqual([
      'ground',
      'field',
      'border',
      'corner',
      'corner-alternate',
    ]);
    expect(told.value.parts.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 6);
    // Plain geometry: squares on point take half of the field, which is most of the work.
    expect(told.value.parts.find(({ part }) => part === 'field')!.share).toBeCloseTo(0.41, 1);
    expect(told.value.ways).toHaveLength(4);
    const palette: Record<string, string> = {
      linen: '#e9dfc7',
      slate: '#536b7c',
      oxblood: '#6a2826',
      brass: '#c99a45',
    };
    for (const { pairs } of told.value.ways)
      for (const pair of pairs)
        expect(pair.contrast).toBeCloseTo(contrast(palette[pair.colours[0]]!, palette[pair.colours[1]]!), 6);
  });

  test('a job that cannot be read says so', async () => {
    const told = await coloursOf('evenfield: 1', 0, none);
    expect(told.ok).toBe(false);
  });
});

describe('colours as they are seen', () => {
  // The rows of the matrices of Machado, Oliveira and Fernandes (IEEE TVCG 15(6) 2009) sum to 1: who sees no red or no green sees greys as they are.
  test('greys stay greys without red and without green', () => {
    const greys = Object.fromEntries(['00', '33', '7f', 'c8', 'ff'].map((two) => [two, `#${two}${two}${two}`]));
    const { protan, deutan } = seenPalettes(greys);
    expect(protan).toEqual(greys);
    expect(deutan).toEqual(greys);
  });

  test('red and green of one lightness become nearly one without red or green, and stay apart without blue', () => {
    const seen = seenPalettes({ red: '#b0483a', green: '#5f7a3a' });
    const apart = ({ red, green }: Record<string, string>) =>
      [1, 3, 5].reduce(
        (sum, at) =>
          sum + Math.abs(Number.parseInt(red!.slice(at, at + 2), 16) - Number.parseInt(green!.slice(at, at + 2), 16)),
        0,
      );
    // That these two are mixed up is what the two deficiencies are named for; how nearly is our own bound.
    expect(apart(seen.deutan)).toBeLessThan(apart(seen.tritan) / 2);
    expect(Object.keys(seen.faded)).toEqual(['red', 'green']);
  });
});

describe('colours to try', () => {
  test('shades of a paint keep it, and every other colour is new', async () => {
    const found = await proposeColours(passage, 0, { from: 'shades', colour: 'slate' }, none);
    if (!found.ok) throw new Error('not found');
    expect(found.value.ways.length).toBeGreaterThan(0);
    for (const { colours } of found.value.ways) expect(Object.values(colours)).toContain('slate');
    expect(Object.keys(found.value.palette).every((name) => name.startsWith('slate '))).toBe(true);
  });

  test('a colour that is none says what would be one', async () => {
    const found = await proposeColours(passage, 0, { from: 'shades', colour: 'sky' }, none);
    expect(found.ok).toBe(false);
    if (!found.ok)
      expect(found.issues[0]).toMatchObject({ code: 'colours/unknown', hint: expect.stringContaining('#') });
  });
});
