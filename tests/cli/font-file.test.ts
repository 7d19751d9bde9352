import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, readdirSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { assetReader } from '../../src/cli/read-asset.ts';
import { evenfield, folder } from './support.ts';

const job = (font: string): string => `evenfield: 1
units: in
surface: floor-cloth
overall: { across: 24, along: 36 }
field: { motif: diamond, pitch: { across: 3 to 4 } }
border: { motif: sawtooth, width: 3 }
lettering: { text: 1908, place: near, font: ${font} }
`;

const PACKED = new URL(
  '../../node_modules/@fontsource/libre-baskerville/files/libre-baskerville-latin-400-normal.woff2',
  import.meta.url,
);

test('a file is found by its path as seen from the job, or by its full path', async () => {
  const dir = folder();
  mkdirSync(join(dir, 'fonts'));
  writeFileSync(join(dir, 'fonts/a.ttf'), 'abc');
  for (const path of ['fonts/a.ttf', './fonts/a.ttf', '../fonts/a.ttf', join(dir, 'fonts/a.ttf')]) {
    const from = path.startsWith('..') ? join(dir, 'fonts/hall.job.yaml') : join(dir, 'hall.job.yaml');
    expect(await assetReader(from)(path), path).toEqual({ ok: true, value: new TextEncoder().encode('abc') });
  }
});

test.each<[string, (dir: string) => void, string, RegExp]>([
  ['that is not there', () => {}, 'asset/missing', /there is no file face\.ttf/],
  ['that is a folder', (dir) => mkdirSync(join(dir, 'face.ttf')), 'asset/kind', /is a folder/],
  [
    'that would never end',
    (dir) => execFileSync('mkfifo', [join(dir, 'face.ttf')]),
    'asset/kind',
    /not an ordinary file/,
  ],
  [
    'of 30 MB',
    (dir) => {
      writeFileSync(join(dir, 'face.ttf'), '');
      truncateSync(join(dir, 'face.ttf'), 30_000_000);
    },
    'asset/large',
    /holds 30 MB; at most 20 MB/,
  ],
])('a file %s is refused in plain words', async (_, prepare, code, says) => {
  const dir = folder();
  prepare(dir);
  expect(await assetReader(join(dir, 'hall.job.yaml'))('face.ttf')).toMatchObject({
    ok: false,
    issues: [{ code, says: expect.stringMatching(says), hint: expect.stringMatching(/\S/) }],
  });
});

test.each<[string, (dir: string) => void, RegExp]>([
  [
    'a font that is mistyped',
    (dir) => writeFileSync(join(dir, 'my-face.ttf'), ''),
    /no file my-fcae\.ttf.*\n\s+try: my-face\.ttf/,
  ],
  ['a .woff2 under another name', (dir) => copyFileSync(PACKED, join(dir, 'my-fcae.ttf')), /packed as \.woff2/],
  ['a page of text', (dir) => writeFileSync(join(dir, 'my-fcae.ttf'), '<!doctype html>'), /this is no font file/],
])('making with %s says so at its place and writes nothing; fitting needs no font', (_, prepare, says) => {
  const dir = folder();
  prepare(dir);
  writeFileSync(join(dir, 'hall.job.yaml'), job('my-fcae.ttf'));
  const before = readdirSync(dir).sort();
  expect(evenfield(dir, ['fit', 'hall.job.yaml', '--best', '1']).status).toBe(0);
  const { status, out, err } = evenfield(dir, ['make', 'hall.job.yaml']);
  expect([status, out]).toEqual([1, '']);
  expect(err).toMatch(/^hall\.job\.yaml: lettering\.font \((?:asset|lettering)\//);
  expect(err).toMatch(says);
  expect(err).not.toMatch(/^\s+at /m);
  expect(readdirSync(dir).sort()).toEqual(before);
});
