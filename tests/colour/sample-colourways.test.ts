import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { differenceCiede2000 } from 'culori';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { sayPairs } from '../../src/colour/pairs.ts';
import { colourwaysOf } from '../../src/colour/ways.ts';
import { good } from '../../src/issue.ts';
import { drawJob } from '../../src/pipeline.ts';

const samples = readdirSync('samples').filter((name) => name.endsWith('.job.yaml'));
const texts = new Map(samples.map((name) => [name, readFileSync(join('samples', name), 'utf8')]));

/** What is allowed to read less than well, and why: sample, colourway, the two colours. None so far. */
const WEAK: readonly [sample: string, way: string, colours: string, why: string][] = [];

describe.each(samples)('%s', (name) => {
  const job = parse(texts.get(name)!);

  test('has at least two colourways besides its own colours, each by a name of its own', () => {
    const names: string[] = job.colourways.map((way: { name: string }) => way.name);
    expect(names.length).toBeGreaterThanOrEqual(2);
    expect(new Set(names.map((one) => one.toLowerCase())).size).toBe(names.length);
  });

  test('every colour of its palette is used somewhere', () => {
    const ways: { colours: Record<string, string> }[] = [...job.colourways, { colours: job.colours ?? {} }];
    const used = new Set(ways.flatMap(({ colours }) => Object.values(colours)));
    // A job without `colours` takes them from the palette in their order.
    if (!job.colours) for (const first of Object.keys(job.palette).slice(0, 3)) used.add(first);
    expect(Object.keys(job.palette).filter((colour) => !used.has(colour))).toEqual([]);
  });

  test('no two colours of its palette are alike: CIEDE2000 of culori at 10 or more', () => {
    const apart = differenceCiede2000();
    const hexes = Object.values<string>(job.palette);
    for (const [at, one] of hexes.entries())
      for (const other of hexes.slice(at + 1)) expect(apart(one, other), `${one} and ${other}`).toBeGreaterThan(10);
  });

  test('in every colourway all colours that lie beside each other read well', async () => {
    const drawn = await drawJob(texts.get(name)!, name, 1, async (path) =>
      good(new Uint8Array(readFileSync(join('samples', path)))),
    );
    if (!drawn.ok) throw new Error(JSON.stringify(drawn.issues));
    const ways = colourwaysOf(drawn.value.drawing, drawn.value.job);
    expect(ways).toHaveLength(1 + job.colourways.length);
    const weak = ways.flatMap(({ name: way, pairs }) => {
      expect(pairs.length).toBeGreaterThan(0);
      return pairs.map((pair) => [way, pair] as const).filter(([, { reads }]) => reads !== 'well');
    });
    const found = weak.map(([way, pair]) => [name, way, [...pair.colours].sort().join(' and ')].join(': '));
    const allowed = WEAK.filter(([sample]) => sample === name).map(([, way, colours]) =>
      [name, way, colours].join(': '),
    );
    expect(found, sayPairs(weak.map(([, pair]) => pair)).join('\n')).toEqual(allowed);
    expect(weak.filter(([, { reads }]) => reads === 'hardly')).toEqual([]);
  });
});

test('no two samples have a colourway of the same name', () => {
  const names = samples.flatMap((name) => parse(texts.get(name)!).colourways.map((way: { name: string }) => way.name));
  expect(new Set(names).size).toBe(names.length);
});
