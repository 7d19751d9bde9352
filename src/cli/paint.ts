import type { Command } from 'commander';
import { wholeNumber } from './options.ts';
import { withProgress } from './progress.ts';
import { assetReader } from './read-asset.ts';
import { readJobFile } from './read-job-file.ts';
import { ending } from './run.ts';
import { DONE, type Ending, refuseAll, tell, tellJson, tidy } from './talk.ts';

async function paint(path: string, options: { json?: boolean; choose: number }): Promise<Ending> {
  const text = await readJobFile(path);
  if (!text.ok) return refuseAll(text.issues, path);
  const { planJob } = await import('../pipeline.ts');
  const planned = await withProgress('working out the paint', () =>
    planJob(text.value, path, options.choose, assetReader(path)),
  );
  if (!planned.ok) return refuseAll(planned.issues, path);
  const { job } = planned.value;
  const { paintAsStated } = await import('../write/paint.ts');
  const plan = paintAsStated(planned.value.plan, job);
  if (options.json === true) {
    tellJson(plan, tidy);
    return DONE;
  }
  const { writePaintPlan } = await import('./write-paint.ts');
  const { inksFor } = await import('./inks.ts');
  const { roomOf } = await import('./table.ts');
  tell(writePaintPlan(plan, job, inksFor(process.stdout, process.env), roomOf(process.stdout)));
  return DONE;
}

export function addPaint(program: Command): void {
  program
    .command('paint')
    .summary('work out how much paint a job takes, what to buy and how many days')
    .description(
      'Works out the paint of a job, what to buy over what is at hand, and the days it takes. Writes nothing.',
    )
    .argument('<job>', 'the job file, *.job.yaml')
    .option('--choose <rank>', 'which of the layouts that fit shows', wholeNumber(100), 1)
    .option('--json', 'print it as JSON, in mm², ml and counts')
    .addHelpText('after', '\nExample:\n  evenfield paint hall.job.yaml')
    .action(ending(paint));
}
