import { useState } from 'preact/hooks';
import { upper } from '../../words.ts';
import { engine } from '../engine/client.ts';
import { save } from '../parts/files/save.ts';
import { look } from '../state/answer.ts';
import { base, chosen, tree } from '../state/job.ts';
import { progress, said } from './state.ts';

const LOG = 'refit.log.json';

/** Saves files of the re-fits as the command line would write them. */
export function RefitFiles({ number }: { number: number }) {
  const [wrong, setWrong] = useState('');
  const give = async (name: string): Promise<void> => {
    const ask = { base: base.value, tree: tree.value, chosen: look.value?.chosen ?? chosen.value };
    const entries = (progress.value?.refits ?? []).map(({ entry }) => entry);
    const found = await engine.refitFiles(ask, entries);
    const file = found.ok ? found.value.get(name) : undefined;
    if (file !== undefined) save(name, file);
    const why = found.ok ? '' : found.issues.map(({ says }) => `${upper(says)}.`).join(' ');
    setWrong(why);
    said.value = why || `${name} is saved.`;
  };
  return (
    <>
      <button type="button" class="tall" onClick={() => void give(`refit-${number}.html`)}>
        Save its new marks as a page to print, refit-{number}.html
      </button>
      <button type="button" class="tall" onClick={() => void give(`refit-${number}.csv`)}>
        Save them as a list, refit-{number}.csv
      </button>
      {number === progress.value?.refits.at(-1)?.entry.number && (
        <button type="button" class="tall" onClick={() => void give(LOG)}>
          Save the history of re-fits, {LOG}, to keep beside the other files
        </button>
      )}
      {wrong && <p class="wrong">{wrong}</p>}
    </>
  );
}
