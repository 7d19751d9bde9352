import { readFileSync } from 'node:fs';
import { fail, good } from '../../src/issue.ts';
import type { Assets } from '../../src/pipeline.ts';
import { HOUSE } from './job-change.ts';
import { toBytes } from './kind.ts';

const FONT = 'node_modules/@fontsource/barlow/files/barlow-latin-500-normal.woff';
const file = (path: string): Uint8Array => new Uint8Array(readFileSync(path));

/** Files that a job names: a drawing, a font or a house stands under every name that could be one of theirs, and nothing under others. */
export const assets: Assets = async (path) => {
  if (/\.svg$/i.test(path)) return good(file('samples/three-leaves.svg'));
  if (/\.(?:ttf|otf|woff)$/i.test(path)) return good(file(FONT));
  if (/\.yaml$/.test(path)) return good(toBytes(HOUSE));
  return fail('asset/missing', [], 'there is no such file', 'another file');
};
