import { describe, expect, test } from 'vitest';
import { edgeFor, sayEdge } from '../../src/cloth/edge.ts';
import { MM_PER_INCH, writeLength } from '../../src/units/index.ts';

const inch = (value: number): number => value * MM_PER_INCH;

// 2010 ADA Standards for Accessible Design, 303.2 to 303.4: 1/4 in may be vertical; from 1/4 to 1/2 in bevelled, not steeper than 1 : 2; above 1/2 in a ramp.
describe('the edge of a cloth by the ADA Standards', () => {
  test.each([
    [1 / 16, 'upright'],
    [1 / 4, 'upright'],
    [5 / 16, 'bevel'],
    [1 / 2, 'bevel'],
    [9 / 16, 'ramp'],
    [3 / 4, 'ramp'],
  ])('%d in: %s', (height, way) => {
    expect(edgeFor(inch(height)).way).toBe(way);
  });

  test('a bevel is not steeper than 1 : 2', () => {
    for (const height of [0.26, 0.3, 0.375, 0.5].map(inch)) {
      const edge = edgeFor(height);
      expect(edge.way === 'bevel' && height / edge.run).toBeCloseTo(1 / 2, 12);
    }
  });

  test('says what to do, and the limits', () => {
    const length = (mm: number) => writeLength(mm, 'in', inch(1 / 16));
    expect(sayEdge(inch(3 / 8), length)).toMatch(/3\/8" .*bevel it over at least 3\/4".*303/);
    expect(sayEdge(inch(3 / 16), length)).toMatch(/left upright.*1\/4 in/);
    expect(sayEdge(inch(5 / 8), length)).toMatch(/too high.*thinner pad/);
    expect(sayEdge(undefined, length)).toMatch(/^Keep the edge low: .*1\/2 in/);
  });
});
