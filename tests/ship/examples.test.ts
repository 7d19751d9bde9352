import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';

// The examples for those who import the engine, as they stand in DEVELOPERS.md, run by plain Node against the built engine.

const ROOT = resolve(import.meta.dirname, '../..');
const text = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8');
const examples = [...text.matchAll(/```js\n([\s\S]*?)```(?:\n+It prints:\n+```text\n([\s\S]*?)```)?/g)].map(
  ([, code, prints]) => ({ code: code!, prints }),
);

let folder: string;
beforeAll(() => {
  expect(inject('buildTrouble')).toBe('');
  folder = mkdtempSync(join(tmpdir(), 'evenfield-examples-'));
  mkdirSync(join(folder, 'node_modules'));
  symlinkSync(ROOT, join(folder, 'node_modules/evenfield'), 'junction');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const node = (words: string[]) =>
  spawnSync(process.execPath, words, { cwd: folder, encoding: 'utf8', timeout: 150_000 });

test('everything that the engine gives is shown in an example', () => {
  const shown = examples.flatMap(({ code }) =>
    [...code.matchAll(/import \{([^}]*)\} from 'evenfield'/g)].flatMap(([, names]) => names!.trim().split(/\s*,\s*/)),
  );
  writeFileSync(join(folder, 'names.mjs'), "console.log(Object.keys(await import('evenfield')).join(' '));");
  const ran = node(['names.mjs']);
  expect(ran.stderr).toBe('');
  expect([...new Set(shown)].sort()).toEqual(ran.stdout.trim().split(' ').sort());
});

test.each(examples.map(({ code, prints }, at) => ({ at: at + 1, code, prints })))(
  'example $at prints what is written under it',
  ({ at, code, prints }) => {
    writeFileSync(join(folder, `example-${at}.mjs`), code);
    const ran = node([`example-${at}.mjs`]);
    expect(ran.stderr).toBe('');
    expect(ran.stdout).toBe(prints);
  },
);
