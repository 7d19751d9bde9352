import { fail, good } from '../../issue.ts';
import type { Assets } from '../../pipeline.ts';
import type { Asset } from './ask.ts';

let kept = new Map<string, Uint8Array>();
let missing = new Set<string>();

const baseName = (path: string): string => path.split(/[\\/]/).at(-1)!;

/** Takes the files that jobs name, by their paths as the job has them, or by their names alone. */
export function keepAssets(files: readonly Asset[]): void {
  kept = new Map(files.map(({ path, bytes }) => [path, bytes]));
}

/** The files that were asked for since this was last asked and are not here, by their paths. */
export function missingAssets(): string[] {
  const found = [...missing];
  missing = new Set();
  return found;
}

/** Fonts, drawings and houses that a job names, from the files that the person gave: by the whole path, else by the name of the file. */
export const assets: Assets = async (path) => {
  const bytes = kept.get(path) ?? kept.get(baseName(path));
  if (bytes) return good(bytes);
  missing.add(path);
  return fail('asset/missing', [], `the job names the file ${path}, which is not here yet`, `drop ${path} on the page`);
};
