import { describe, expect, test } from 'vitest';
import { motifSaid } from '../../src/check/read/motif-said.ts';
import { allMotifs } from '../../src/motif/library.ts';
import { motifWords } from '../../src/motif/words.ts';

test.each([
  ['diamond', 'diamond'],
  ['eight-point-star', 'eight-point star'],
  ['four-petal', 'four-petal flower'],
  ['greek-key', 'Greek key'],
  ['lozenge-in-lozenge', 'lozenge in lozenge'],
  ['./drawings/three-leaves.svg', 'three-leaves.svg'],
  ['C:\\drawings\\Three-Leaves.SVG', 'Three-Leaves.SVG'],
])('%s is said as %s', (name, words) => expect(motifWords(name)).toBe(words));

describe('every motif', () => {
  const names = allMotifs().map(({ name }) => name);

  test('is said without a hyphen, but where a number of points or petals has one, and like no other', () => {
    const said = names.map(motifWords);
    expect(said.filter((words) => /-/.test(words.replace(/^(four|eight)-(petal|point) /, '')))).toEqual([]);
    expect(new Set(said).size).toBe(names.length);
  });

  test('is said as the check says it', () => expect(names.map(motifSaid)).toEqual(names.map(motifWords)));
});
