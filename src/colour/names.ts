import { plainName } from '../job/name.ts';

/** The longest name of a colour that a job takes. */
const LONGEST = 30;

/** A name that a palette does not have yet, nor one that would be written to a file of the same name: with a number where need be. */
export function freeName(wished: string, taken: Iterable<string>): string {
  const used = new Set([...taken].map((name) => plainName(name)));
  for (let number = 1; ; number++) {
    const tail = number === 1 ? '' : ` ${number}`;
    const name = `${wished.slice(0, LONGEST - tail.length).trim()}${tail}`;
    if (!used.has(plainName(name))) return name;
  }
}
