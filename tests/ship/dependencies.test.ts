import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';

const ROOT = resolve(import.meta.dirname, '../..');
const { dependencies, devDependencies } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
const text = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8');
const rows = new Map(
  [...text.matchAll(/^\| `([^`]+)` \| ([^|]+) \| ([^|]+) \|$/gm)].map(([, name, purpose, licence]) => [
    name!,
    { purpose: purpose!.trim(), licence: licence!.trim() },
  ]),
);

test.each(Object.keys({ ...dependencies, ...devDependencies }))(
  '%s is in the table of dependencies, with what it is for and the licence that it states itself',
  (name) => {
    const own = JSON.parse(readFileSync(join(ROOT, 'node_modules', name, 'package.json'), 'utf8'));
    expect(rows.get(name)?.purpose).toBeTruthy();
    expect(rows.get(name)?.licence).toBe(own.license);
  },
);
