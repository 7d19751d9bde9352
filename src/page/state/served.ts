import { bytesOf } from '../../units/data-address.ts';
import { give } from './given.ts';
import { openText } from './open-text.ts';

/** A job that came with the page, and the files that it names in base64 (see `src/cli/page.ts`). */
export interface Served {
  name: string;
  text: string;
  files: { path: string; base64: string }[];
}

/** Opens the job that the page was served with, if there is one and it was not opened before in this window. */
export async function takeServed(): Promise<void> {
  const block = document.getElementById('served-job');
  if (!block?.textContent) return;
  const { name, text, files } = JSON.parse(block.textContent) as Served;
  const mark = `served ${name} ${text.length}`;
  try {
    if (sessionStorage.getItem(mark) === text) return;
    sessionStorage.setItem(mark, text);
  } catch {
    // Opened anew with every reload then.
  }
  if (files.length > 0) await give(files.map(({ path, base64 }) => ({ path, bytes: bytesOf(base64) })));
  await openText(text, name, name, `opening ${name}`);
}
