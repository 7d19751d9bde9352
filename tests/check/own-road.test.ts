import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, normalize, resolve } from 'node:path';
import { expect, test } from 'vitest';

/** Every module that the check imports, from its own folder on. */
function reached(from: string, seen = new Set<string>()): Set<string> {
  if (seen.has(from)) return seen;
  seen.add(from);
  const text = readFileSync(from, 'utf8');
  for (const [, path] of text.matchAll(/(?:from|import\()\s*'(\.[^']+)'/g))
    reached(normalize(join(dirname(from), path!)), seen);
  return seen;
}

test('what the check imports, and what that imports, is its own or units', () => {
  const files = readdirSync('src/check', { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'));
  expect(files.length).toBeGreaterThan(100);
  const all = files.flatMap((name) => [...reached(join('src/check', name))]);
  expect([...new Set(all)].filter((path) => !/^src\/(?:check|units)\//.test(path))).toEqual([]);
});

const STAGES = ['compose', 'fit', 'marks', 'stencil', 'site', 'write', 'paint', 'geometry'];

test('the layers refuse a check that imports a stage', () => {
  const dir = mkdtempSync(join(tmpdir(), 'evenfield-layers-'));
  try {
    for (const stage of [...STAGES, 'units']) {
      mkdirSync(join(dir, 'src', stage), { recursive: true });
      writeFileSync(join(dir, 'src', stage, 'one.ts'), 'export const one = 1;\n');
    }
    mkdirSync(join(dir, 'src/check'));
    const imports = [...STAGES, 'units'].map((stage, at) => `import { one as n${at} } from '../${stage}/one.ts';`);
    const used = imports.map((_, at) => `n${at}`).join(' + ');
    writeFileSync(join(dir, 'src/check/claim.ts'), `${imports.join('\n')}\nexport const all = ${used};\n`);
    const { stdout, status } = spawnSync(
      process.execPath,
      [
        resolve('node_modules/dependency-cruiser/bin/dependency-cruise.mjs'),
        '--config',
        resolve('.dependency-cruiser.json'),
        'src',
      ],
      { cwd: dir, encoding: 'utf8' },
    );
    expect(status).toBe(STAGES.length);
    for (const stage of STAGES)
      expect(stdout).toMatch(new RegExp(`check-reads-for-itself.*src/check/claim.ts → .*src/${stage}/one.ts`));
    expect(stdout).not.toContain('src/units/one.ts');
  } finally {
    rmSync(dir, { recursive: true, force: true });
  }
});
