import { readings } from '../check/support/recheck.ts';
import { refutedOf } from './refuted.ts';
import { KINDS, tampered } from './tamperings.ts';
import { filesOf, WORKS } from './works.ts';

export interface Tried {
  kind: string;
  work: string;
  file: string;
  /** The first claim that is refuted; nothing where `check` believes the files. */
  refuted?: { family: string; claim: string };
}

/** Every kind of change on every work that has such a file, `times` each. */
export async function tamperAll(seed: number, times: number, see: (tried: Tried) => void): Promise<void> {
  for (const work of WORKS) {
    const files = await filesOf(work);
    const known = await readings(files);
    const wrong = [...known.families.values()].flatMap(({ claims }) => claims).find(({ holds }) => !holds);
    if (wrong) throw new Error(`${work} is refuted as it is: ${wrong.file}: ${wrong.claim} (${wrong.measured})`);
    for (const kind of KINDS) {
      for (let time = 0; time < times; time++) {
        const changed = await tampered(files, kind, `${seed} ${work} ${kind.name} ${time}`);
        if (!changed) continue;
        const [refuted] = await refutedOf(files, changed.files, known, true);
        see({
          kind: kind.name,
          work,
          file: changed.file,
          ...(refuted ? { refuted: { family: refuted.family, claim: refuted.claim } } : {}),
        });
      }
    }
  }
}
