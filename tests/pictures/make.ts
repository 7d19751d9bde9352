import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { good } from '../../src/issue.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { renderPng } from '../../src/write/png.ts';

/** Makes the README's pictures from the samples with the real program: `npm run pictures`. */
const OUT = 'samples/pictures';
const LONG_SIDE = 1000;
/** What is drawn of a job, and how its picture's name ends. */
const DRAWINGS = [
  ['plan.svg', ''],
  ['room.svg', '-room'],
  ['flight.svg', '-flight'],
  ['cloth.svg', '-cloth'],
] as const;

mkdirSync(OUT, { recursive: true });
for (const file of readdirSync('samples').filter((name) => name.endsWith('.job.yaml'))) {
  const made = await makeFiles(readFileSync(`samples/${file}`, 'utf8'), file, 1, async (path) =>
    good(new Uint8Array(readFileSync(`samples/${path}`))),
  );
  if (!made.ok) throw new Error(`${file}: ${made.issues.map((issue) => issue.says).join('; ')}`);
  for (const [drawing, ending] of DRAWINGS) {
    const svg = made.value.files.get(drawing);
    if (typeof svg !== 'string') continue;
    const name = `${OUT}/${basename(file, '.job.yaml')}${ending}.png`;
    writeFileSync(name, await renderPng(svg, LONG_SIDE));
    console.log(name);
  }
}
