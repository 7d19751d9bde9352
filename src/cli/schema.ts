import type { Command } from 'commander';
import { ending } from './run.ts';
import { DONE, type Ending, tellJson } from './talk.ts';

async function schema(): Promise<Ending> {
  const { jobSchema } = await import('../job/schema.ts');
  tellJson(jobSchema());
  return DONE;
}

export function addSchema(program: Command): void {
  program
    .command('schema')
    .summary('print the JSON Schema of the job file')
    .description('Prints the JSON Schema of the job file, so that an editor completes and checks it as you type.')
    .addHelpText('after', '\nExample:\n  evenfield schema > evenfield.schema.json')
    .action(ending(schema));
}
