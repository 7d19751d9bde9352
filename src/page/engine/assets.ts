import { fail, good } from '../../issue.ts';
import type { Assets } from '../../pipeline.ts';
import type { Asset } from './protocol.ts';

let kept = new Map<string, Uint8Array>();

export function keepAssets(files: readonly Asset[]): void {
  kept = new Map(files.map(({ path, bytes }) => [path, bytes]));
}

/** Fonts, drawings and houses that a job names, from the files that the person gave. */
export const assets: Assets = async (path) => {
  const bytes = kept.get(path);
  if (bytes) return good(bytes);
  return fail('asset/missing', [], `the job names the file ${path}, which is not here yet`, `drop ${path} on the page`);
};
