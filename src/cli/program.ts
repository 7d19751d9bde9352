import { Command } from 'commander';
import { version } from '../../package.json';
import { addCheck } from './check.ts';
import { addColourways } from './colourways.ts';
import { addFit } from './fit.ts';
import { addHouse } from './house.ts';
import { addMake } from './make.ts';
import { addMotifs } from './motifs.ts';
import { addNew } from './new.ts';
import { addPage } from './page.ts';
import { addPaint } from './paint.ts';
import { addPreview } from './preview.ts';
import { addRefit } from './refit.ts';
import { addSchema } from './schema.ts';

/** The command line as a whole. Each command loads what it needs when it is run, not before. */
export function buildProgram(): Command {
  const program = new Command('evenfield')
    .description(
      'Fits a painted floor pattern to a measured room so that every repeat lands whole, and writes the stencils, marks and checks for the job.',
    )
    .version(version, '--version', 'print the version')
    .helpOption('--help', 'show this help')
    .helpCommand(false)
    .exitOverride()
    .showHelpAfterError('evenfield --help, or --help after a command, shows what it takes.')
    .addHelpText(
      'after',
      `
To start:
  evenfield new hall.job.yaml      asks for your measurements
  evenfield make hall.job.yaml     writes the stencils, marks and plan under out/
  evenfield check out/hall         proves what was written`,
    );
  for (const add of [
    addNew,
    addFit,
    addMake,
    addCheck,
    addRefit,
    addPaint,
    addColourways,
    addPreview,
    addHouse,
    addPage,
    addMotifs,
    addSchema,
  ])
    add(program);
  return program;
}
