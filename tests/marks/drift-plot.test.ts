import svgpath from 'svgpath';
import { expect, test } from 'vitest';
import { drawDrift, driftOf } from '../../src/write/drift.ts';
import { loadLettering } from '../../src/write/label.ts';
import { clashes, labelsOf, readElements } from '../write/drawn.ts';

const job = { units: 'in', system: 'inch', step: 25.4 / 16 } as const;

/** Where each side of a path ends, read by svgpath. */
function points(d: string): [number, number][] {
  const found: [number, number][] = [];
  svgpath(d)
    .abs()
    .iterate(([command, ...v], _, x, y) => {
      const to = v as number[];
      found.push(command === 'H' ? [to[0]!, y] : command === 'V' ? [x, to[0]!] : [to[0]!, to[1]!]);
    });
  return found;
}

test('the plot is to its own scale, and says the numbers it shows', async () => {
  const drift = driftOf(24, job);
  const elements = readElements(drawDrift(drift, job, await loadLettering()));
  const red = elements.find(
    ({ attributes }) => attributes.stroke === '#a33a2a' && Number(attributes['stroke-width']) === 0.6,
  )!;
  const limit = elements.find(({ attributes }) => attributes['stroke-dasharray'] !== undefined)!;
  const [curve, level] = [points(red.attributes.d!), points(limit.attributes.d!)];
  expect(curve).toHaveLength(25);
  const foot = curve[0]![1];
  const perMm = (foot - level[0]![1]) / drift.limit;
  // 24 × 1/64 + √24 × 1/32 in is 0.375 + 0.15309 in.
  expect((foot - curve.at(-1)![1]) / perMm / 25.4).toBeCloseTo(0.52809, 3);
  expect((foot - curve[1]![1]) / perMm / 25.4).toBeCloseTo(1 / 64 + 1 / 32, 3);
  const words = elements.flatMap(({ attributes }) => attributes['data-label'] ?? []);
  expect(words).toContain('stepped off: 17/32" by the last');
  expect(words).toContain('limit: 1/8"');
  expect(clashes(labelsOf(elements))).toEqual([]);
});

test.each([2, 7, 60, 999])('%d placements: everything lies inside the drawing', async (count) => {
  for (const made of [job, { units: 'mm', system: 'metric', step: 1 } as const]) {
    const svg = drawDrift(driftOf(count, made), made, await loadLettering());
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    for (const { attributes } of readElements(svg)) {
      if (attributes.d === undefined || attributes['data-label'] !== undefined) continue;
      for (const [x, y] of points(attributes.d)) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(182);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(48);
      }
    }
  }
});
