import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';

/** Every module that a declaration file names by a relative path, as `from '…'` or `import('…')`. */
const NAMED = /((?:from |import\()['"])(\.[^'"]+)\.ts(['"])/g;

/** Writes the types of `src/index.ts`, and of the files that its types name, to `dist/types`. */
export function writeDeclarations(root: string, to: string): void {
  const all = join(root, 'node_modules/.cache/evenfield-types');
  rmSync(all, { recursive: true, force: true });
  const tsc = join(root, 'node_modules/typescript/bin/tsc');
  const words = [
    '-p',
    root,
    '--noEmit',
    'false',
    '--noCheck',
    '--declaration',
    '--emitDeclarationOnly',
    '--outDir',
    all,
  ];
  const ran = spawnSync(process.execPath, [tsc, ...words], { encoding: 'utf8' });
  if (ran.status !== 0) throw new Error(`the types cannot be written:\n${ran.stdout}${ran.stderr}`);
  const from = join(all, 'src');
  rmSync(to, { recursive: true, force: true });
  const left = [join(from, 'index.d.ts')];
  const taken = new Set(left);
  for (let file = left.pop(); file !== undefined; file = left.pop()) {
    const text = readFileSync(file, 'utf8');
    for (const [, , path] of text.matchAll(NAMED)) {
      const named = resolve(dirname(file), `${path}.d.ts`);
      if (taken.has(named)) continue;
      taken.add(named);
      left.push(named);
    }
    const copy = join(to, relative(from, file));
    mkdirSync(dirname(copy), { recursive: true });
    writeFileSync(copy, text.replace(NAMED, '$1$2.js$3'));
  }
  rmSync(all, { recursive: true, force: true });
}
