import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { checkFiles } from '../../src/check/index.ts';
import { makeFiles } from '../../src/pipeline.ts';

/** Samples made by the changed engine and judged by the check, smallest first. Run by `npm run mutations` alone. */
const SAMPLES = [
  'porch-cloth',
  'reading-room-rug',
  'morning-room-border',
  'back-stairs',
  'scullery-floor',
  'sunroom-cloth',
];

test.each(SAMPLES)('%s holds', async (name) => {
  const text = `${readFileSync(`samples/${name}.job.yaml`, 'utf8')}\nprint: { tiles: none }\n`;
  const made = await makeFiles(text, `${name}.job.yaml`);
  expect(made.ok).toBe(true);
  if (!made.ok) return;
  const { claims } = await checkFiles(made.value.files);
  expect(claims.filter(({ holds }) => !holds)).toEqual([]);
});
