import type { Command } from 'commander';
import { inksFor } from './inks.ts';
import { withProgress } from './progress.ts';
import { readFolder } from './read-folder.ts';
import { ending } from './run.ts';
import { DONE, type Ending, REFUSED, refuseAll, tell, tellJson, tidy } from './talk.ts';

async function check(dir: string, options: { json?: boolean }): Promise<Ending> {
  const files = await readFolder(dir);
  if (!files.ok) return refuseAll(files.issues, dir);
  const { checkFiles } = await import('../check/index.ts');
  const { holds, claims } = await withProgress('checking the files', () => checkFiles(files.value));
  process.exitCode = holds ? DONE : REFUSED;
  if (options.json === true) {
    const stable = claims.map(({ claim, holds, measured, allowed, file }) => ({
      claim,
      holds,
      measured,
      allowed,
      file,
    }));
    tellJson({ holds, claims: stable }, tidy);
  } else {
    const { writeClaims } = await import('./write-claims.ts');
    tell(writeClaims(claims, inksFor(process.stdout, process.env)));
  }
  return holds ? DONE : REFUSED;
}

export function addCheck(program: Command): void {
  program
    .command('check')
    .summary('prove or refute the written files')
    .description(
      'Reads the files of a folder back and measures each claim on them: 0 when all hold, 1 when one is refuted.',
    )
    .argument('<folder>', 'a folder that evenfield make wrote')
    .option('--json', 'print the claims as JSON')
    .addHelpText('after', '\nExample:\n  evenfield check out/hall')
    .action(ending(check));
}
