import { join } from 'node:path';
import type { Command } from 'commander';
import { fail, good, type Result } from '../issue.ts';
import type { Job } from '../job/job.ts';
import type { Raster } from '../picture/raster.ts';
import { wholeNumber } from './options.ts';
import { withProgress } from './progress.ts';
import { assetReader } from './read-asset.ts';
import { readJobFile } from './read-job-file.ts';
import { ending } from './run.ts';
import { DONE, type Ending, refuseAll, tell, tellJson } from './talk.ts';
import { writeOut } from './write-out.ts';

interface Options {
  out: string;
  json?: boolean;
  choose: number;
  replace?: boolean;
  colourway?: string;
}

const key = (name: string): string => name.trim().toLowerCase();

/** The colours to show, and what they are called. */
async function coloursFor(
  job: Job,
  asked: string | undefined,
): Promise<Result<{ name?: string; colours: Job['colours'] }>> {
  const wished = asked ?? job.preview?.colourway;
  if (wished === undefined) return good({ colours: job.colours });
  const ways = job.colourways ?? [];
  const found = ways.find(({ name }) => key(name) === key(wished));
  if (found) return good(found);
  const { nearestName } = await import('../motif/nearest.ts');
  const { shown } = await import('../units/index.ts');
  const names = ways.map(({ name }) => name);
  const says =
    names.length > 0
      ? `there is no colourway ${shown(wished)}; the job has ${names.join(', ')}`
      : `there is no colourway ${shown(wished)}; the job has none`;
  return fail('preview/colourway', [], says, nearestName(wished, names) ?? names[0] ?? 'leave --colourway out');
}

/** The photo that the job names; what is wrong with it is told at its place in the job. */
async function photoOf(job: Job, path: string): Promise<Result<Raster | undefined>> {
  const photo = job.preview?.photo;
  if (!photo) return good(undefined);
  const bytes = await assetReader(path)(photo.file);
  const { decodePicture } = await import('../picture/decode.ts');
  const found = bytes.ok ? await decodePicture(bytes.value, photo.file) : bytes;
  if (found.ok) return found;
  return { ok: false, issues: found.issues.map((issue) => ({ ...issue, path: ['preview', 'photo', 'file'] })) };
}

async function preview(path: string, options: Options): Promise<Ending> {
  const text = await readJobFile(path);
  if (!text.ok) return refuseAll(text.issues, path);
  const { drawJob } = await import('../pipeline.ts');
  const drawn = await withProgress('drawing the work', () =>
    drawJob(text.value, path, options.choose, assetReader(path)),
  );
  if (!drawn.ok) return refuseAll(drawn.issues, path);
  const { job } = drawn.value;
  const way = await coloursFor(job, options.colourway);
  if (!way.ok) return refuseAll(way.issues, path);
  const picture = await photoOf(job, path);
  if (!picture.ok) return refuseAll(picture.issues, path);
  const { previewWork } = await import('../preview/preview.ts');
  const shown = await withProgress('painting the preview', () =>
    previewWork(drawn.value, way.value.colours, picture.value),
  );
  if (!shown.ok) return refuseAll(shown.issues, path);
  const { encodePng } = await import('../picture/encode.ts');
  const { flat, floor, says } = shown.value;
  const files = new Map([['preview.png', await encodePng(flat)]]);
  if (floor) files.set('preview-floor.png', await encodePng(floor));
  const out = join(options.out, `${job.name}-preview`);
  const written = await writeOut(out, files, options.replace);
  if (!written.ok) return refuseAll(written.issues, out);
  if (options.json === true) {
    tellJson({ out, files: written.value, colourway: way.value.name ?? null, says });
    return DONE;
  }
  tell(
    [
      way.value.name === undefined ? job.title : `${job.title}: ${way.value.name}`,
      ...says,
      ...(job.preview?.looks
        ? ['Thin, dry and worn looks are a guess, for previews only; no stencil changes by them.']
        : []),
      ...(floor ? [] : ['The key `preview` takes a photo of the floor, and the work is laid into it.']),
      `${files.size === 1 ? '1 file' : `${files.size} files`} in ${out}: ${[...files.keys()].join(', ')}`,
    ].join('\n'),
  );
  return DONE;
}

export function addPreview(program: Command): void {
  program
    .command('preview')
    .summary('show the work as it will look, flat and in a photo of your floor')
    .description(
      'Paints a picture of the work from above, new or worn, and lays it in true perspective into a photo of the floor that the job names.',
    )
    .argument('<job>', 'the job file, *.job.yaml')
    .option('--out <folder>', 'where to put its folder', 'out')
    .option('--choose <rank>', 'which of the layouts that fit shows', wholeNumber(100), 1)
    .option('--colourway <name>', 'show this colourway of the job')
    .option('--replace', 'write over files that somebody edited')
    .option('--json', 'print what was made as JSON')
    .addHelpText('after', '\nExample:\n  evenfield preview hall.job.yaml --colourway Dusk')
    .action(ending(preview));
}
