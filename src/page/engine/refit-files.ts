import { fail, good, type Result } from '../../issue.ts';
import type { Assets } from '../../pipeline.ts';
import { newLines } from '../../refit/lines.ts';
import { type Entry, emptyLog, writeLog } from '../../refit/log.ts';
import { type Refit, refit } from '../../refit/refit.ts';
import { sayRefit } from '../../refit/says.ts';
import { writeTape } from '../../units/index.ts';
import { writeRefit } from '../../write/refit.ts';
import { rowsFound } from './refit.ts';

/**
 * The files of re-fits that were taken, and their history, as the command line writes them beside the files of the job.
 * @param entries the oldest first
 * Issues: `refit/other-floor`, where a re-fit does not belong to this layout; those of the job where it has any.
 */
export async function refitFiles(
  text: string,
  chosen: number,
  entries: readonly Entry[],
  assets?: Assets,
): Promise<Result<Map<string, string>>> {
  const other = () => fail('refit/other-floor', [], 'these re-fits belong to another layout', 'ask for a re-fit anew');
  const found = await rowsFound(text, chosen, assets);
  if (!found.ok) return found.issues.some(({ code }) => code.startsWith('refit/')) ? other() : found;
  const { look, rows } = found.value;
  const { job, schedule } = look;
  const write = (mm: number): string => writeTape(mm, job.units, job.step);
  const files = new Map<string, string>();
  let before: { entry: Entry; refit: Refit } | undefined;
  for (const entry of entries) {
    const worked = refit(rows, entry, entry, write);
    if (!worked.ok) return other();
    const says = sayRefit(worked.value, rows, job.step, write, before);
    for (const [name, content] of writeRefit(entry.number, newLines(schedule, worked.value), says, job))
      files.set(name, content);
    before = { entry, refit: worked.value };
  }
  return good(files.set('refit.log.json', writeLog({ ...emptyLog(rows), refits: [...entries] })));
}
