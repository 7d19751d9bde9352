import { type SpawnSyncReturns, spawnSync } from 'node:child_process';
import { copyFileSync, cpSync, existsSync, mkdirSync, mkdtempSync, renameSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { build } from 'vite';
import { builtPage } from '../page/support.ts';
import { writeDeclarations } from './declarations.ts';

export const ROOT = resolve(import.meta.dirname, '../..');

/** What `npm pack --json` says of the package. Bytes. */
export interface Packed {
  file: string;
  size: number;
  unpackedSize: number;
  files: { path: string; size: number }[];
}

export const npm = (cwd: string, words: string[]): SpawnSyncReturns<string> =>
  spawnSync('npm', words, { cwd, encoding: 'utf8', shell: process.platform === 'win32', timeout: 150_000 });

/** Does in a folder of its own what `npm pack` does in this one, which other tests work in. */
export async function pack(): Promise<Packed> {
  const folder = mkdtempSync(join(tmpdir(), 'evenfield-pack-'));
  for (const name of ['package.json', 'README.md', 'LICENSE']) copyFileSync(join(ROOT, name), join(folder, name));
  const outDir = join(folder, 'dist');
  await build({ root: ROOT, configFile: join(ROOT, 'vite.config.ts'), logLevel: 'error', build: { outDir } });
  cpSync(await builtPage(), join(outDir, 'page'), { recursive: true });
  writeDeclarations(ROOT, join(outDir, 'types'));
  const ran = npm(folder, ['pack', '--json', '--ignore-scripts']);
  if (ran.status !== 0) throw new Error(ran.stderr);
  const [{ filename, size, unpackedSize, files }] = JSON.parse(ran.stdout);
  return { file: join(folder, filename), size, unpackedSize, files };
}

/**
 * Installs the package in an empty folder, from nothing but what npm has kept on this machine. Where it has not kept enough,
 * the package is unpacked, and the libraries it depends on are those that are installed here.
 */
export function install({ file }: Packed): { folder: string; by: 'npm' | 'hand' } {
  const folder = mkdtempSync(join(tmpdir(), 'evenfield-user-'));
  const words = ['install', '--prefix', folder, '--offline', '--no-audit', '--no-fund', '--ignore-scripts', file];
  if (npm(folder, words).status === 0) return { folder, by: 'npm' };
  for (const left of ['node_modules', 'package.json', 'package-lock.json'])
    rmSync(join(folder, left), { recursive: true, force: true });
  const into = join(folder, 'node_modules');
  mkdirSync(into);
  const ran = spawnSync('tar', ['-xzf', file, '-C', into]);
  if (ran.status !== 0 || !existsSync(join(into, 'package'))) throw new Error(`${file} cannot be unpacked`);
  renameSync(join(into, 'package'), join(into, 'evenfield'));
  symlinkSync(join(ROOT, 'node_modules'), join(into, 'evenfield/node_modules'));
  return { folder, by: 'hand' };
}
