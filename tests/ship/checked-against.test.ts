import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';

const ROOT = resolve(import.meta.dirname, '../..');
const readme = readFileSync(join(ROOT, 'README.md'), 'utf8');
const from = readme.indexOf('## What it was checked against');
const rows = [
  ...readme.slice(from, readme.indexOf('\n## ', from + 1)).matchAll(/^\| (.+?) \| .+ \| .+ \| `(tests\/[^`]+)` \|$/gm),
];

test('the table of what was checked against is found', () => expect(rows.length).toBeGreaterThan(25));

test.each(rows.map(([, source, file]) => [source!, file!] as const))('%s is named in %s', (source, file) => {
  expect(existsSync(join(ROOT, file))).toBe(true);
  const text = readFileSync(join(ROOT, file), 'utf8').toLowerCase();
  // The first word that is a name, a number of a standard or of a law.
  const [name] = /^[^,;]*?(?=,| and |$)/.exec(source)!;
  const words = name!.toLowerCase().split(/[ /]+/);
  expect(words.filter((word) => text.includes(word)).length / words.length, name).toBeGreaterThanOrEqual(0.5);
});
