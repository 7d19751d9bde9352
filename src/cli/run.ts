import { type Command, CommanderError } from 'commander';
import { trouble } from '../write/folder-trouble.ts';
import { DONE, MISUSED, REFUSED, refuse, refuseUnexpected } from './talk.ts';

/** A reader that has seen enough, as in `evenfield fit hall.job.yaml | head -1`, is no trouble of ours. */
function allowClosedPipes(): void {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EPIPE') process.exit();
      if (stream === process.stdout) refuse(`cannot print the result: ${trouble(error)}`);
      process.exit(REFUSED);
    });
  }
}

/** Runs one command line. @returns what the process ends with: 0 done, 1 refused or refuted, 2 wrong usage */
export async function run(program: Command, words: string[]): Promise<number> {
  allowClosedPipes();
  process.on('uncaughtException', (error) => process.exit(refuseUnexpected(error)));
  try {
    await program.parseAsync(words);
    return Number(process.exitCode ?? DONE);
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? DONE : MISUSED;
    return refuseUnexpected(error);
  }
}

/** Makes a command's function into what the command line calls: its ending becomes that of the process. */
export function ending<A extends unknown[]>(command: (...given: A) => Promise<number>): (...given: A) => Promise<void> {
  return async (...given) => {
    process.exitCode = await command(...given);
  };
}
