import { parseLength, UNITS, type Unit, writeLength } from '../../units/index.ts';

const METRIC: Unit = 'mm';

/** The unit that bare numbers of the job are in, if it says one. */
export const unitOf = (said: string): Unit | undefined => UNITS.find((unit) => unit === said);

/**
 * A length as it was understood, in inches and in millimetres, so that a slip is seen at once; or what cannot be read of it. Ranges, counts and
 * whatever else is no single length are not read back.
 */
export function readBack(text: string, bare: Unit | undefined): { says: string; wrong?: true } | undefined {
  if (text.trim() === '') return undefined;
  const read = parseLength(text, bare);
  if (!read.ok) return { says: `${read.says}. Write it like ${read.hint}`, wrong: true };
  return { says: `${writeLength(read.mm, 'in', 25.4 / 16)} · ${writeLength(read.mm, METRIC, 1)}` };
}
