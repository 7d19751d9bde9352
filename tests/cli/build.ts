import { existsSync, readdirSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { build } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Why the command line could not be built; empty when it was. */
    buildTrouble: string;
  }
}

const ROOT = resolve(import.meta.dirname, '../..');
const BUILT = join(ROOT, 'dist/evenfield.js');
const SOURCES = ['src', 'motifs', 'package.json', 'vite.config.ts'];

/** The latest change among the files under a path, ms. */
function latest(path: string): number {
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  return Math.max(stat.mtimeMs, ...readdirSync(path).map((name) => latest(join(path, name))));
}

/**
 * Before all tests: builds the command line once, if a source is newer than it. Where that fails, the tests of the
 * command line fail with the reason, and the others run.
 */
export default async function setup(project: TestProject): Promise<void> {
  project.provide('buildTrouble', '');
  const sources = Math.max(...SOURCES.map((path) => latest(join(ROOT, path))));
  if (existsSync(BUILT) && statSync(BUILT).mtimeMs > sources) return;
  try {
    // The page, in a folder of it, stays.
    await build({
      root: ROOT,
      configFile: join(ROOT, 'vite.config.ts'),
      logLevel: 'error',
      build: { emptyOutDir: false },
    });
  } catch (error) {
    project.provide('buildTrouble', error instanceof Error ? error.message : String(error));
  }
}
