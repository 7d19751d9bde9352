import { lstat } from 'node:fs/promises';
import { basename, extname } from 'node:path';
import type { Command } from 'commander';
import type { Given } from './questions.ts';
import { ending } from './run.ts';
import { DONE, type Ending, MISUSED, REFUSED, refuse, refuseAll, shownPath, talk, tell } from './talk.ts';
import { exists, writeNewFile } from './write-new-file.ts';

interface Options extends Given {
  replace?: boolean;
}

/** What a shell says of a program that Ctrl-C ended: 128 and the number of the signal. */
const STOPPED = 130;

/** `hall` becomes `hall.job.yaml`; a name with an ending stays as it is. */
const jobPath = (file: string): string => (extname(basename(file)) === '' ? `${file}.job.yaml` : file);

async function ask(): Promise<Given | typeof STOPPED | typeof REFUSED> {
  const { openAsker } = await import('./ask.ts');
  const { interview } = await import('./interview.ts');
  talk(`Lengths may be written as 12' 6 3/8", 34 1/2 in, 150.4 cm or 3.25 m. Enter takes what stands in [ ].\n`);
  const asker = openAsker();
  try {
    const given = await interview(asker, {});
    if (given !== undefined) return given;
    talk('');
    refuse(asker.stopped ? 'stopped; nothing was written' : 'the answers ended too early; nothing was written');
    return asker.stopped ? STOPPED : REFUSED;
  } finally {
    asker.close();
  }
}

async function fromOptions(options: Given): Promise<Given | typeof MISUSED> {
  const { readOptions } = await import('./interview.ts');
  const { given, misuses } = readOptions(options);
  for (const { says, hint } of misuses) refuse(says, hint);
  return misuses.length > 0 ? MISUSED : given;
}

async function write(path: string, given: Given, replace: boolean): Promise<Ending> {
  const { writeJobFile } = await import('../job/template.ts');
  const { titleOf } = await import('../job/name.ts');
  const { readJob } = await import('../job/read.ts');
  const { allMotifs } = await import('../motif/library.ts');
  const { toAnswers } = await import('./questions.ts');
  const text = writeJobFile(toAnswers(given, titleOf(path)));
  const written = await writeNewFile(path, text, replace);
  if (!written.ok) return refuseAll(written.issues, path);
  tell(path);
  const read = readJob(text, path, allMotifs());
  if (!read.ok) {
    talk('It is written, but needs a change before it can be used:\n');
    return refuseAll(read.issues, path);
  }
  talk(`Written. What fits: evenfield fit ${shownPath(path)}`);
  return DONE;
}

async function create(file: string, options: Options): Promise<number> {
  const path = jobPath(file);
  const { replace = false, ...wishes } = options;
  if (!replace && (await lstat(path).catch(() => undefined)) !== undefined) return refuseAll(exists(path).issues, path);
  const given = Object.keys(wishes).length === 0 ? await ask() : await fromOptions(wishes);
  return typeof given === 'number' ? given : write(path, given, replace);
}

export function addNew(program: Command): void {
  program
    .command('new')
    .summary('write a job file from your measurements')
    .description(
      'Asks for your measurements one at a time and writes a job file. With any option given, it asks nothing.',
    )
    .argument('<file>', 'the job file to write, such as hall.job.yaml')
    .option('--surface <kind>', 'runner, rug, floor-cloth, floor, room-border or stairs')
    .option('--run <length>', 'runner: from threshold to threshold')
    .option('--near <length>', 'runner: the opening at the near end, over its casing')
    .option('--far <length>', 'runner: the opening at the far end')
    .option('--wide <length>', 'width over everything')
    .option('--long <length>', 'rug and floor-cloth: length over everything')
    .option('--room-across <length>', 'rug, floor and room-border: width of the room')
    .option('--room-along <length>', 'rug, floor and room-border: length of the room')
    .option(
      '--near-wall <length>',
      'rug and floor: length of the near wall, where all four walls and a diagonal tell the room',
    )
    .option('--right-wall <length>', 'length of the right wall')
    .option('--far-wall <length>', 'length of the far wall')
    .option('--left-wall <length>', 'length of the left wall')
    .option('--diagonal <length>', 'from the near left corner to the far right one')
    .option('--other-diagonal <length>', 'from the near right corner to the far left one, if it was measured')
    .option('--steps <count>', 'stairs: how many steps')
    .option('--riser-wide <length>', 'stairs: width of a riser')
    .option('--riser-high <length>', 'stairs: height of the lowest riser')
    .option('--motif <name>', 'motif of the field')
    .option('--across <count>', 'how many repeats across')
    .option('--border <name>', 'motif of the border, or none')
    .option('--units <unit>', 'what a number without a unit means: in, ft, mm, cm or m')
    .option('--title <words>', 'title of the job')
    .option('--replace', 'write over a file of that name')
    .addHelpText(
      'after',
      `\nExample:\n  evenfield new hall.job.yaml --surface runner --run "19' 7 3/8\\"" --near '32 1/2"' --far 30in --motif diamond`,
    )
    .action(ending(create));
}
