import { join } from 'node:path';
import type { Command } from 'commander';
import type { Colourway } from '../colour/ways.ts';
import { wholeNumber } from './options.ts';
import { withProgress } from './progress.ts';
import { addProposals, type ProposeOptions, proposeOptions, refuseProposals, sayProposals } from './propose.ts';
import { assetReader } from './read-asset.ts';
import { readJobFile } from './read-job-file.ts';
import { ending } from './run.ts';
import { DONE, type Ending, refuseAll, tell, tellJson, tidy } from './talk.ts';
import { writeOut } from './write-out.ts';

interface Options extends ProposeOptions {
  out: string;
  json?: boolean;
  choose: number;
  replace?: boolean;
}

async function tableOf(ways: readonly Colourway[]): Promise<string[]> {
  const { roomOf, wrap, writeTable } = await import('./table.ts');
  const { sayPairs } = await import('../colour/pairs.ts');
  const head = ['side by side', 'contrast', 'difference', 'in dim light', 'no red', 'no green', 'no blue', 'faded', ''];
  return ways.flatMap(({ name, pairs }) => [
    '',
    name,
    ...writeTable(
      [
        head,
        ...pairs.map(({ colours, contrast, difference, lightness, seen, faded, reads }) => [
          colours.join(' and '),
          contrast.toFixed(1),
          ...[difference, lightness, seen.protan, seen.deutan, seen.tritan, faded].map((value) => value.toFixed(0)),
          reads === 'well' ? 'reads well' : reads === 'weakly' ? 'weak' : 'hardly seen',
        ]),
      ],
      [1, 2, 3, 4, 5, 6, 7],
    ),
    ...sayPairs(pairs).flatMap((line) => wrap(line, roomOf(process.stdout), 0)),
  ]);
}

async function colourways(path: string, options: Options): Promise<Ending> {
  const text = await readJobFile(path);
  if (!text.ok) return refuseAll(text.issues, path);
  const { drawJob } = await import('../pipeline.ts');
  const drawn = await withProgress('drawing the colourways', () =>
    drawJob(text.value, path, options.choose, assetReader(path)),
  );
  if (!drawn.ok) return refuseAll(drawn.issues, path);
  const { drawing } = drawn.value;
  const more = await withProgress('looking for colours', () => addProposals(drawing, drawn.value.job, options));
  if (!more.ok) return refuseProposals(more.issues);
  const { job, proposed } = more.value;
  const { colourwaysOf } = await import('../colour/ways.ts');
  const { writeWaysFiles } = await import('../write/colourways/files.ts');
  const ways = colourwaysOf(drawing, job);
  const { files, says } = await withProgress('writing the sheets', () => writeWaysFiles(drawing, job, ways));
  const out = join(options.out, `${job.name}-colourways`);
  const written = await writeOut(out, files, options.replace);
  if (!written.ok) return refuseAll(written.issues, out);
  if (options.json === true) {
    tellJson({ out, files: written.value, colourways: ways, proposed, says }, tidy);
    return DONE;
  }
  tell(
    [
      job.title,
      ...(await tableOf(ways)),
      '',
      'Contrast is that of WCAG 2, differences are CIEDE2000, dim light is the difference in lightness. Floors are not text: limits are a rule of thumb.',
      ...(job.colourways ? [] : ['The job has no other colourways; the key `colourways` takes them.']),
      ...(await sayProposals(proposed, drawing, drawn.value.job)),
      ...says,
      `${files.size} files in ${out}: ${[...files.keys()].join(', ')}`,
    ].join('\n'),
  );
  return DONE;
}

export function addColourways(program: Command): void {
  const command = program
    .command('colourways')
    .summary('show the work in all its colourways, and how their colours read')
    .description(
      'Draws the work in every colourway of the job side by side, and tells how the colours that touch will be seen.',
    )
    .argument('<job>', 'the job file, *.job.yaml')
    .option('--out <folder>', 'where to put its folder', 'out')
    .option('--choose <rank>', 'which of the layouts that fit shows', wholeNumber(100), 1)
    .option('--replace', 'write over files that somebody edited')
    .option('--json', 'print what was found as JSON')
    .addHelpText(
      'after',
      '\nExamples:\n  evenfield colourways hall.job.yaml\n  evenfield colourways hall.job.yaml --propose 4 --shades-of navy --picture quilt.jpg',
    )
    .action(ending(colourways));
  proposeOptions(command);
}
