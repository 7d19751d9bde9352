import { readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { checkFiles } from '../../src/check/index.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { recheck } from './support/recheck.ts';
import { change, type Files } from './support/tamper.ts';

const SHEET = 'job-sheet.html';
/** On stairs a border that goes up a riser is painted with the sheet turned, its middle below the edge of the panel. */
let files: Files;
beforeAll(async () => {
  const made = await makeFiles(readFileSync('samples/back-stairs.job.yaml', 'utf8'), 'back-stairs.job.yaml');
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  files = made.value.files;
}, 120_000);

const BEFORE = /(<span class="n">)([^<]*(?:<span class="f">[^<]*<\/span>)?[^<]*<\/span>) before it/;

const refuted = async (edit: (html: string) => string): Promise<string[]> =>
  (await recheck(files, change(files, SHEET, edit))).claims.filter(({ holds }) => !holds).map(({ claim }) => claim);

test('a sheet whose middle lies before the datum is told so, and no tape is read below nothing', async () => {
  const html = String(files.get(SHEET));
  expect(html).toMatch(BEFORE);
  expect(html).not.toMatch(/>[-−]\d/);
  const { claims } = await checkFiles(files);
  expect(claims.filter(({ holds }) => !holds)).toEqual([]);
});

test.each([
  ['the words left out', '$1$2'],
  ['a minus in place of the words', '$1-$2'],
])('%s: the check refutes it', async (_, instead) => {
  expect(await refuted((html) => html.replace(BEFORE, instead))).toEqual(
    expect.arrayContaining([expect.stringMatching(/laid/)]),
  );
});
