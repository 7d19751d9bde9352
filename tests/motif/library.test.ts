import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { allMotifs, findMotif } from '../../src/motif/library.ts';

const files = readdirSync('motifs')
  .filter((file) => file.endsWith('.ts'))
  .map((file) => file.slice(0, -3))
  .sort();

describe('the library is the folder', () => {
  test('every file in motifs/ is a motif of its own name, and nothing else is', () => {
    expect(files.length).toBeGreaterThanOrEqual(8);
    expect(allMotifs().map(({ name }) => name)).toEqual(files);
  });

  test.each(files)('%s is found by its name', (file) => expect(findMotif(file)?.name).toBe(file));

  test('an unknown name is not found', () => expect(findMotif('daimond')).toBeUndefined());

  test('a caller cannot change the library', () => {
    allMotifs().pop();
    expect(allMotifs()).toHaveLength(files.length);
  });
});

describe.each(allMotifs().map((motif) => [motif.name, motif] as const))('%s is described', (_name, motif) => {
  test('in one sentence', () => expect(motif.summary).toMatch(/^[A-Z].{10,100}\.$/));

  test('with a true shape', () => expect(motif.ratio).toBeGreaterThan(0));

  test.each(Object.entries(motif.parameters))('with a range and a default for %s', (name, parameter) => {
    expect(name).toMatch(/^[a-z][a-z-]*$/);
    expect(parameter.says).toMatch(/^[a-z]/);
    expect(parameter.min).toBeLessThan(parameter.max);
    expect(parameter.default).toBeGreaterThanOrEqual(parameter.min);
    expect(parameter.default).toBeLessThanOrEqual(parameter.max);
    if (parameter.kind === 'count') {
      for (const value of [parameter.min, parameter.max, parameter.default]) expect(value).toBe(Math.round(value));
    }
  });

  test('with lines that are shares of a repeat', () => {
    for (const { mirrors, whole, half } of [motif.lines.across, motif.lines.along]) {
      for (const share of [...mirrors, ...whole, ...half]) {
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThan(1);
      }
      for (const share of half) expect(mirrors).toContain(share);
    }
  });
});
