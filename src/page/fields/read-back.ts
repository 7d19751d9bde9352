import { parseLength, UNITS, type Unit, writeLength } from '../../units/index.ts';

const METRIC: Unit = 'mm';

/** The unit that bare numbers of the job are in, if it says one. */
export const unitOf = (said: string): Unit | undefined => UNITS.find((unit) => unit === said);

const inch = (mm: number): string => writeLength(mm, 'in', 25.4 / 16);
const metric = (mm: number): string => writeLength(mm, METRIC, 1);

/**
 * A length as it was understood, in inches and in millimetres, so that a slip is seen at once; or what cannot be read of it. Ranges, counts and
 * whatever else is no single length are not read back.
 */
export function readBack(text: string, bare: Unit | undefined): { says: string; wrong?: true } | undefined {
  if (text.trim() === '') return undefined;
  const read = parseLength(text, bare);
  if (!read.ok) return { says: `${read.says}. Write it like ${read.hint}`, wrong: true };
  return { says: `${inch(read.mm)} · ${metric(read.mm)}` };
}

/** The unit at the end of a text, with what stands before it as it is typed: `5 to 10 cm` is 5 cm to 10 cm. */
const unitAtEnd = (text: string): string => /^[^a-z'"′″’”]*([a-z'"′″’”]+\.?)$/i.exec(text.trim())?.[1] ?? '';

/** The same of a single length or of a range, `34 to 38, wish 36`; nothing where an end of it cannot be read. */
export function readBackRange(text: string, bare: Unit | undefined): { says: string } | undefined {
  const [range, wish] = text.split(/\s*,\s*wish\s+/i) as [string, string?];
  const [first, last, ...more] = range.split(/\s+to\s+/i) as [string, string?, ...string[]];
  if (last === undefined) return first.trim() === '' ? undefined : said(readBack(first, bare));
  if (more.length > 0) return undefined;
  const length = (one: string) => {
    const read = parseLength(one, bare);
    if (read.ok && /[a-z'"′″’”]/i.test(one)) return read.mm;
    const lent = parseLength(`${one} ${unitAtEnd(last)}`, bare);
    return lent.ok ? lent.mm : read.ok ? read.mm : undefined;
  };
  const [from, to, wished] = [length(first), length(last), wish === undefined ? undefined : length(wish)];
  if (from === undefined || to === undefined || (wish !== undefined && wished === undefined)) return undefined;
  const between = (write: (mm: number) => string) =>
    `${write(from)} to ${write(to)}${wished === undefined ? '' : `, wish ${write(wished)}`}`;
  return { says: `${between(inch)} · ${between(metric)}` };
}

const said = (back: ReturnType<typeof readBack>): { says: string } | undefined =>
  back && !back.wrong ? { says: back.says } : undefined;
