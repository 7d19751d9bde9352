import { join } from 'node:path';
import type { Command } from 'commander';
import type { Making } from '../pipeline.ts';
import { STAGES } from '../stage.ts';
import { wholeNumber } from './options.ts';
import { withProgress } from './progress.ts';
import { readJobFile } from './read-job-file.ts';
import { ending } from './run.ts';
import { DONE, type Ending, refuse, refuseAll, shownPath, talk, tell, tellJson } from './talk.ts';
import { writeOut } from './write-out.ts';

interface Options {
  out: string;
  json?: boolean;
  choose: number;
  replace?: boolean;
}

/** Puts drawings of what is at fault beside the other folders, where they can be looked at. */
async function showProofs({ name, files }: NonNullable<Making['proofs']>, out: string): Promise<void> {
  const { writeFolder } = await import('../write/folder.ts');
  const folder = join(out, name);
  const report = await writeFolder(folder, files, { replace: true });
  if (report.ok) talk(`\nThe places are ringed in red on the drawings in ${shownPath(folder)}.`);
}

async function make(path: string, options: Options): Promise<Ending> {
  const text = await readJobFile(path);
  if (!text.ok) return refuseAll(text.issues, path);
  const { mayHold } = await import('../write/folder.ts');
  const place = await mayHold(options.out);
  if (!place.ok) return refuseAll(place.issues, options.out);
  const { makeApart } = await import('./make-apart.ts');
  const made = await withProgress(STAGES, (stage) =>
    makeApart({ text: text.value, path, choose: options.choose, stage }),
  );
  if (!made.ok) {
    const refused = refuseAll(made.issues, path);
    if (made.proofs) await showProofs(made.proofs, options.out);
    return refused;
  }
  const { name, title, files, says } = made.value;
  if (!/^[a-z0-9][a-z0-9-]*$/i.test(name)) return refuse(`${shownPath(name)} is no name for a folder`);

  const out = join(options.out, name);
  const wrote = await writeOut(out, files, options.replace);
  if (!wrote.ok) return refuseAll(wrote.issues, out);
  const written = wrote.value;
  if (options.json === true) {
    tellJson({ out, files: written });
    return DONE;
  }
  const { fileNotes } = await import('./file-notes.ts');
  const { roomOf, wrap } = await import('./table.ts');
  const room = roomOf(process.stdout);
  const found = says.flatMap((line) => wrap(line, room, 0));
  tell(
    [title, ...found, '', ...fileNotes(out, written), '', `To prove them: evenfield check ${shownPath(out)}`].join(
      '\n',
    ),
  );
  return DONE;
}

export function addMake(program: Command): void {
  program
    .command('make')
    .summary('write the stencils, marks and plan of a job')
    .description('Fits a job and writes everything to cut, mark and paint from: a folder named after the job.')
    .argument('<job>', 'the job file, *.job.yaml')
    .option('--out <folder>', 'where to put that folder', 'out')
    .option('--choose <rank>', 'which of the layouts that fit shows', wholeNumber(100), 1)
    .option('--replace', 'write over files that somebody edited')
    .option('--json', 'print the folder and its files as JSON')
    .addHelpText('after', '\nExample:\n  evenfield make hall.job.yaml --choose 2')
    .action(ending(make));
}
