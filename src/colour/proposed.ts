import type { Job } from '../job/job.ts';
import type { Part } from '../motif/motif.ts';

/** Ways to colour a work that are not in its job, and the colours that its palette does not have. */
export interface Proposed {
  /** Names to `#rrggbb`, those only that a way uses. */
  palette: Job['palette'];
  ways: { name: string; colours: Job['colours'] }[];
  /** What the person should know of them, in sentences. */
  says: string[];
}

/**
 * The ways under names for the colours that they use, chosen when it is known which these are.
 * @param call names for the colours of a palette that are used, in its order; those that the job has under the same name keep it
 */
export function named(
  palette: Job['palette'],
  ways: Proposed['ways'],
  parts: readonly Part[],
  job: Pick<Job, 'palette'>,
  call: (used: readonly string[]) => Map<string, string>,
): Pick<Proposed, 'palette' | 'ways'> {
  const given = new Set(parts.flatMap((part) => ways.map(({ colours }) => colours[part])));
  const used = Object.keys(palette).filter((name) => given.has(name));
  const names = call(used);
  const fresh = used.filter((name) => job.palette[names.get(name)!] === undefined);
  return {
    palette: Object.fromEntries(fresh.map((name) => [names.get(name)!, palette[name]!])),
    ways: ways.map(({ name, colours }) => ({
      name,
      colours: { ...colours, ...Object.fromEntries(parts.map((part) => [part, names.get(colours[part])!])) },
    })),
  };
}

const LONGEST_NAME = 40;

/** A name for a colourway that is not taken, at most 40 letters. */
export function wayName(wished: string, number: number | undefined, taken: readonly string[]): string {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  for (let next = number; ; next = (next ?? 1) + 1) {
    const tail = next === undefined ? '' : ` ${next}`;
    const name = `${wished.slice(0, LONGEST_NAME - tail.length).trim()}${tail}`;
    if (!used.has(name.toLowerCase())) return name;
  }
}
