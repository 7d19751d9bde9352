import type { Command } from 'commander';
import type { Layout } from '../fit/layout.ts';
import type { FittedRoom } from '../room-pipeline.ts';
import { inksFor } from './inks.ts';
import { wholeNumber } from './options.ts';
import { withProgress } from './progress.ts';
import { assetReader } from './read-asset.ts';
import { readJobFile } from './read-job-file.ts';
import { ending } from './run.ts';
import { DONE, type Ending, refuseAll, tell, tellJson, tidy } from './talk.ts';

/** The part of a layout that is promised to other programs. */
function stable(layout: Layout) {
  const { rank, overall, border, reserve, endGap, field, repeats, pitch, stretch, landing, borderRepeats, cost, says } =
    layout;
  return { rank, overall, border, reserve, endGap, field, repeats, pitch, stretch, landing, borderRepeats, cost, says };
}

async function tellRoom(
  { job, site, fit }: FittedRoom,
  { json, best }: { json?: boolean; best: number },
): Promise<Ending> {
  const layouts = fit.layouts.slice(0, best);
  if (json === true) {
    tellJson({ searched: fit.searched, proof: fit.proof, layouts }, tidy);
    return DONE;
  }
  const { roomOf } = await import('./table.ts');
  const { writeRoomFit } = await import('./write-room-fit.ts');
  tell(
    writeRoomFit({ job, site, fit: { ...fit, layouts } }, inksFor(process.stdout, process.env), roomOf(process.stdout)),
  );
  return DONE;
}

async function fit(path: string, options: { json?: boolean; best: number }): Promise<Ending> {
  const text = await readJobFile(path);
  if (!text.ok) return refuseAll(text.issues, path);
  const { fitAny } = await import('../pipeline.ts');
  const fitted = await withProgress('looking for layouts', () =>
    fitAny(text.value, path, options.best, assetReader(path)),
  );
  if (!fitted.ok) return refuseAll(fitted.issues, path);
  if (fitted.value.kind === 'room border') return tellRoom(fitted.value.value, options);
  const found = fitted.value.value;
  const { searched, proof, layouts } = found.fit;
  const best = layouts.slice(0, options.best);
  if (options.json === true) {
    tellJson({ searched, proof, layouts: best.map(stable) }, tidy);
    return DONE;
  }
  const { roomOf } = await import('./table.ts');
  const { writeFit } = await import('./write-fit.ts');
  const room = roomOf(process.stdout);
  tell(writeFit({ ...found, fit: { searched, proof, layouts: best } }, inksFor(process.stdout, process.env), room));
  return DONE;
}

export function addFit(program: Command): void {
  program
    .command('fit')
    .summary('show the best layouts for a job')
    .description('Shows the best layouts for a job, best first, and what the search covered. Writes nothing.')
    .argument('<job>', 'the job file, *.job.yaml')
    .option('--best <count>', 'how many layouts to show, 1 to 100', wholeNumber(100), 10)
    .option('--json', 'print them as JSON, lengths in mm')
    .addHelpText('after', '\nExample:\n  evenfield fit hall.job.yaml --best 3')
    .action(ending(fit));
}
