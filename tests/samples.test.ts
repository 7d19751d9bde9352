import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkFiles } from '../src/check/index.ts';
import type { Layout } from '../src/fit/layout.ts';
import { good } from '../src/issue.ts';
import { type Assets, fitAny, makeFiles } from '../src/pipeline.ts';
import type { RoomLayout } from '../src/room-border/layout.ts';
import type { RoomOutline } from '../src/site/walls-outline.ts';

const samples = readdirSync('samples').filter((name) => name.endsWith('.job.yaml'));
const read = (name: string) => readFileSync(`samples/${name}`, 'utf8');
/** Drawings that a sample names lie beside it. */
const assets: Assets = async (path) => good(new Uint8Array(readFileSync(join('samples', path))));

function addsUp(one: Layout): void {
  for (const direction of ['across', 'along'] as const) {
    expect(Math.abs(one.field[direction] - one.repeats[direction] * one.pitch[direction])).toBeLessThan(1e-6);
    const ends = direction === 'along' ? 2 * one.endGap : 0;
    const around = 2 * (one.border + one.reserve[direction]) + ends;
    expect(Math.abs(one.overall[direction] - one.field[direction] - around)).toBeLessThan(1e-6);
  }
}

/** Each wall, less what the corners at its two ends take of it or add to it, is its whole repeats. */
function runsAddUp({ runs, width }: RoomLayout, { walls }: RoomOutline): void {
  runs.forEach(({ repeats, pitch }, at) => {
    const [before, next] = [(at + runs.length - 1) % runs.length, (at + 1) % runs.length];
    const taken = (corner: number, strip: number) => (walls[corner]!.corner === 'inside' ? strip + width : -strip);
    const left = walls[at]!.length - taken(before, runs[before]!.strip) - taken(at, runs[next]!.strip);
    expect(Math.abs(left - repeats * pitch)).toBeLessThan(1e-6);
  });
}

describe.each(samples)('%s', (name) => {
  test('every listed layout adds up', async () => {
    const fitted = await fitAny(read(name), name, 10, assets);
    if (!fitted.ok) throw new Error(`${name} is refused`);
    const { kind, value } = fitted.value;
    expect(value.fit.layouts.length).toBeGreaterThan(3);
    for (const { says } of value.fit.layouts) expect(says.length).toBeGreaterThan(40);
    if (kind === 'rectangle') value.fit.layouts.forEach(addsUp);
    else for (const one of value.fit.layouts) runsAddUp(one, value.outline);
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
