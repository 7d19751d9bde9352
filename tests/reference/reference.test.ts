import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { jobSchema } from '../../src/job/schema.ts';
import { allMotifs } from '../../src/motif/library.ts';
import { BEGINS, ENDS, withReference } from './write.ts';

const README = readFileSync(join(resolve(import.meta.dirname, '../..'), 'README.md'), 'utf8');
const reference = README.slice(README.indexOf(BEGINS), README.indexOf(ENDS));
const rows = [...reference.matchAll(/^\| `([^`]+)` \| (.*) \| (?:`.*`)? \|$/gm)].map(([, key, says]) => ({
  key: key!,
  says: says!,
}));

test('the README has every key as the schema has it today; `npm run reference` writes it', () => {
  expect(withReference(README, jobSchema()) === README, 'the reference is out of date: npm run reference').toBe(true);
});

test('every key and word of the schema is somewhere in it', () => {
  // What a JSON Schema (2020-12, sec. 10.3.2.1 of its core) calls `properties`, wherever they stand.
  const names = new Set<string>();
  const walk = (part: unknown): void => {
    if (typeof part !== 'object' || part === null) return;
    for (const [key, value] of Object.entries(part)) {
      if (key === 'properties') for (const name of Object.keys(value)) names.add(name);
      walk(value);
    }
  };
  walk(jobSchema());
  const told = new Set(rows.flatMap(({ key }) => key.split(': ')));
  // A range is told above the tables, and `name` and the settings of a motif in the row of that motif.
  const settings = new Set(allMotifs().flatMap(({ parameters }) => Object.keys(parameters)));
  const left = [...names].filter((name) => !told.has(name) && !['to', 'wish'].includes(name));
  expect(left.filter((name) => !settings.has(name))).toEqual([]);
  for (const name of left) expect(reference).toContain(`\`${name}\`: `);
});

test('every motif stands in it with each of its settings', () => {
  for (const { name, parameters } of allMotifs()) {
    const row = rows.find(({ key }) => key === name);
    expect(row, name).toBeDefined();
    for (const setting of Object.keys(parameters)) expect(row!.says).toContain(`\`${setting}\`: `);
  }
});

test('every row says something, and its columns are three', () => {
  const lines = reference.split('\n').filter((line) => line.startsWith('| `'));
  expect(lines.length).toBe(rows.length);
  expect(rows.length).toBeGreaterThan(250);
  expect(rows.filter(({ says }) => says.trim() === '')).toEqual([]);
});
