import type { Result } from '../issue.ts';
import { good } from '../issue.ts';
import { fillSettings } from '../motif/settings.ts';
import { defined } from './defined.ts';
import type { MotifChoice } from './job.ts';
import type { MotifList, NamedMotif } from './motif-choice.ts';
import type { Path } from './tree.ts';

/** A named motif with all its settings; `none` has none. Issues carry the path of the setting in the job. */
export function settleMotif(named: NamedMotif, known: MotifList, path: Path): Result<MotifChoice> {
  const motif = known.find((one) => one.name === named.name);
  if (!motif) return good({ motif: named.name, settings: {} });
  const filled = fillSettings(motif, defined(named.settings));
  if (filled.ok) return good({ motif: named.name, settings: filled.value });
  return { ok: false, issues: filled.issues.map((issue) => ({ ...issue, path: [...path, ...issue.path] })) };
}

export const USUAL_BORDER: NamedMotif = { name: 'plain-band', settings: {} };
export const USUAL_CORNER: NamedMotif = { name: 'plain', settings: {} };
