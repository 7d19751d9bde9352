import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checkFiles } from '../src/check/index.ts';
import { fitJob, makeFiles } from '../src/pipeline.ts';

const samples = readdirSync('samples').filter((name) => name.endsWith('.job.yaml'));
const read = (name: string) => readFileSync(`samples/${name}`, 'utf8');

describe.each(samples)('%s', (name) => {
  test('every listed layout adds up', async () => {
    const fitted = await fitJob(read(name), name);
    expect(fitted.ok).toBe(true);
    if (!fitted.ok) return;
    expect(fitted.value.fit.layouts.length).toBeGreaterThan(3);
    for (const one of fitted.value.fit.layouts) {
      for (const direction of ['across', 'along'] as const) {
        expect(Math.abs(one.field[direction] - one.repeats[direction] * one.pitch[direction])).toBeLessThan(1e-6);
        const ends = direction === 'along' ? 2 * one.endGap : 0;
        const around = 2 * (one.border + one.reserve[direction]) + ends;
        expect(Math.abs(one.overall[direction] - one.field[direction] - around)).toBeLessThan(1e-6);
      }
      expect(one.says.length).toBeGreaterThan(40);
    }
  });

  test('is made, and every claim of the written files holds', async () => {
    const made = await makeFiles(read(name), name);
    expect(made.ok).toBe(true);
    if (!made.ok) return;
    const checked = await checkFiles(made.value.files);
    expect(checked.claims.filter((claim) => !claim.holds)).toEqual([]);
    expect(checked.claims.length).toBeGreaterThan(100);
  });

  test('same job, same bytes', async () => {
    const [one, two] = [await makeFiles(read(name), name), await makeFiles(read(name), name)];
    expect(one.ok && two.ok && [...one.value.files]).toEqual(two.ok && [...two.value.files]);
  });
});
