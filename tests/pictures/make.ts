import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { good } from '../../src/issue.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { renderPng } from '../../src/write/png.ts';
import { takePage } from './page.ts';

/** Makes the README's pictures from the samples with the real program: `npm run pictures`. */
const OUT = 'samples/pictures';
const LONG_SIDE = 1000;
/** The drawing that shows a job best, where that is not its plan, and how its picture's name ends. */
const CHIEF: Record<string, [file: string, ending: string]> = {
  'landing-runner': ['room.svg', '-room'],
  'sitting-room-rug': ['room.svg', '-room'],
  'scullery-floor': ['room.svg', '-room'],
  'back-stairs': ['flight.svg', '-flight'],
};

mkdirSync(OUT, { recursive: true });
for (const file of readdirSync('samples').filter((name) => name.endsWith('.job.yaml'))) {
  const made = await makeFiles(readFileSync(`samples/${file}`, 'utf8'), file, 1, async (path) =>
    good(new Uint8Array(readFileSync(`samples/${path}`))),
  );
  if (!made.ok) throw new Error(`${file}: ${made.issues.map((issue) => issue.says).join('; ')}`);
  const sample = basename(file, '.job.yaml');
  const [drawing, ending] = CHIEF[sample] ?? ['plan.svg', ''];
  const name = `${OUT}/${sample}${ending}.png`;
  writeFileSync(name, await renderPng(made.value.files.get(drawing) as string, LONG_SIDE));
  console.log(name);
}
for (const name of await takePage(OUT)) console.log(name);
