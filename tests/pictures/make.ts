import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { good } from '../../src/issue.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { renderPng } from '../../src/write/png.ts';

/** Makes the README's pictures from the samples with the real program: `npm run pictures`. */
const OUT = 'samples/pictures';
const LONG_SIDE = 1000;

mkdirSync(OUT, { recursive: true });
for (const file of readdirSync('samples').filter((name) => name.endsWith('.job.yaml'))) {
  const made = await makeFiles(readFileSync(`samples/${file}`, 'utf8'), file, 1, async (path) =>
    good(new Uint8Array(readFileSync(`samples/${path}`))),
  );
  if (!made.ok) throw new Error(`${file}: ${made.issues.map((issue) => issue.says).join('; ')}`);
  const plan = made.value.files.get('plan.svg') as string;
  const name = `${OUT}/${basename(file, '.job.yaml')}.png`;
  writeFileSync(name, await renderPng(plan, LONG_SIDE));
  console.log(name);
}
