import { engine } from '../engine/client.ts';
import { kindOf } from './given-read.ts';
import { begin } from './job.ts';
import { refuse, tell } from './notice.ts';

/**
 * Opens the text of a job file. What was here before can be gone back to; a file that cannot be read changes nothing.
 * @param text the job file, from wherever it came
 * @param name what it is called, where it is a file
 * @param from where it came from, in words that begin a sentence
 */
export async function openText(text: string, name: string, from: string, did: string): Promise<boolean> {
  const read = await engine.open(text);
  if (!read.ok) {
    refuse(`${from} cannot be read as a job, so nothing was changed.`, read.issues);
    return false;
  }
  if (kindOf(read.value) !== 'job') {
    refuse(`${from} is not a job: it says neither what is painted (surface) nor where (site). Nothing was changed.`);
    return false;
  }
  begin(text, read.value, name, did);
  tell(`${from} is open. Undo goes back to what was here before.`);
  return true;
}
