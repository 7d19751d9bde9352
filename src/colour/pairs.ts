import type { Job } from '../job/job.ts';
import type { Part } from '../motif/motif.ts';
import { listed } from '../words.ts';
import type { Touching } from './touching.ts';
import { judgePair, type Verdict } from './verdict.ts';

/** Two colours of the palette that lie beside each other on the floor. */
export interface ColourPair extends Verdict {
  colours: readonly [string, string];
  /** The parts that they meet in, those that share most first. */
  parts: (readonly [Part, Part])[];
  /** They touch nowhere; a line of bare ground parts them. */
  parted?: true;
}

/** The pairs of colours that touch, each once, in the order of what they share. Parts of one colour are one. */
export function colourPairs(
  touching: readonly Touching[],
  { palette }: Pick<Job, 'palette'>,
  colours: Job['colours'],
): ColourPair[] {
  const pairs = new Map<string, ColourPair>();
  for (const { parts, parted } of [...touching].sort((a, b) => Number(a.parted ?? false) - Number(b.parted ?? false))) {
    const named = parts.map((part) => colours[part]) as [string, string];
    if (named[0] === named[1]) continue;
    const key = [...named].sort().join('\n');
    const known = pairs.get(key);
    if (known) known.parts.push(parts);
    else
      pairs.set(key, {
        ...judgePair(palette[named[0]]!, palette[named[1]]!),
        colours: named,
        parts: [parts],
        ...(parted ? { parted } : {}),
      });
  }
  return [...pairs.values()];
}

/** One line for each pair that will not be seen well. */
export const sayPairs = (pairs: readonly ColourPair[]): string[] =>
  pairs
    .filter(({ reads }) => reads !== 'well')
    .map(({ colours, reads, because, parted }) => {
      const both = `${colours[0]} ${parted ? 'close to' : 'beside'} ${colours[1]}`;
      return reads === 'hardly'
        ? `${both} will hardly be told apart ${listed(because)}.`
        : `${both} is weak ${listed(because)}.`;
    });
