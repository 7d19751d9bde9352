import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkFiles } from '../src/check/index.ts';
import { good } from '../src/issue.ts';
import { type Assets, fitJob, makeFiles } from '../src/pipeline.ts';

const samples = readdirSync('samples').filter((name) => name.endsWith('.job.yaml'));
const read = (name: string) => readFileSync(`samples/${name}`, 'utf8');
/** Drawings that a sample names lie beside it. */
const assets: Assets = async (path) => good(new Uint8Array(readFileSync(join('samples', path))));

describe.each(samples)('%s', (name) => {
  test('every listed layout adds up', async () => {
    const fitted = await fitJob(read(name), name, 10, assets);
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

  test('is made, every claim of the written files holds, and made again it is the same to the byte', async () => {
    const [made, again] = [await makeFiles(read(name), name, 1, assets), await makeFiles(read(name), name, 1, assets)];
    if (!made.ok || !again.ok) throw new Error(`${name} is refused`);
    const checked = await checkFiles(made.value.files);
    expect(checked.claims.filter((claim) => !claim.holds)).toEqual([]);
    expect(checked.claims.length).toBeGreaterThan(100);
    expect([...again.value.files]).toEqual([...made.value.files]);
  });
});
