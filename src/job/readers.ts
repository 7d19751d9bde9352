import { MOST_ARC } from '../lettering/limits.ts';
import { inches, parseLength, parseNumber, type Refusal, shown, type Unit } from '../units/index.ts';

/** Reads one kind of value from its text. */
export interface Reader {
  code: string;
  example: string;
  read(text: string): { ok: true; value: number } | Refusal;
  /** A range such as `5 to 10 cm`: its first number takes the unit of its last. */
  lend?(first: string, last: string): string;
}

interface Limits {
  /** Zero is allowed. */
  zero?: boolean;
  least?: number;
  leastSays?: string;
  most?: number;
  mostSays?: string;
  example: string;
}

const refused = (says: string, hint: string): Refusal => ({ ok: false, says, hint });

/** Reads lengths in mm; `bare` is the unit of numbers that have none. */
export function lengthReader(
  bare: Unit | undefined,
  { zero = false, least, leastSays, most, mostSays, example }: Limits,
): Reader {
  return {
    code: 'job/length',
    example,
    read(text) {
      const read = parseLength(text, bare);
      if (!read.ok) {
        const unitless = bare === undefined && parseNumber(text).ok;
        return unitless
          ? refused(`${read.says}, and the job states none`, `${read.hint}, or one line for all: units: in`)
          : read;
      }
      if (read.mm === 0 && !zero) return refused(`${shown(text)} is nothing; this length is above zero`, example);
      if (least !== undefined && read.mm < least)
        return refused(`${shown(text)} is too little; at least ${leastSays} is needed`, example);
      if (most !== undefined && read.mm > most)
        return refused(`${shown(text)} is too much; at most ${mostSays} is allowed`, example);
      return { ok: true, value: read.mm };
    },
    lend(first, last) {
      const unit = /^[^a-z'"′″’”]*([a-z'"′″’”]+\.?)$/i.exec(last.trim())?.[1];
      return unit !== undefined && parseNumber(first).ok ? `${first}${/^[a-z]/i.test(unit) ? ' ' : ''}${unit}` : first;
    },
  };
}

/** A printer further off than this is set to fit pages to the paper, or was measured wrong. */
const [LEAST_MEASURED, MOST_MEASURED] = [inches(9.5), inches(10.5)];

/** What a length of 10 in came to in print. */
export function measuredReader(bare: Unit | undefined, example: string): Reader {
  const reader = lengthReader(bare, { example });
  return {
    ...reader,
    read(text) {
      const read = reader.read(text);
      if (!read.ok || (read.value >= LEAST_MEASURED && read.value <= MOST_MEASURED)) return read;
      return refused(
        `10 in that measured ${shown(text)} is off by too much; 9.5 in to 10.5 in (241.3 to 266.7 mm) is allowed. Is the printer set to actual size?`,
        example,
      );
    },
  };
}

const MOST_REPEATS = 10_000;

/** Counts of repeats, in whole and half ones. */
export const countReader: Reader = {
  code: 'job/count',
  example: '5',
  read(text) {
    const read = parseNumber(text);
    if (!read.ok) return read;
    const { value } = read;
    if (value === 0 || value > MOST_REPEATS)
      return refused(`${shown(text)} is not from 1/2 to ${MOST_REPEATS} repeats`, '5');
    if (!Number.isInteger(value * 2))
      return refused(
        `${shown(text)} repeats cannot be painted; a count is in whole or half repeats`,
        `${Math.round(value * 2) / 2}`,
      );
    return read;
  },
};

const [LEAST_STRETCH, MOST_STRETCH] = [0.5, 2];

/** Stretch: 1 is true to shape. */
export const stretchReader: Reader = {
  code: 'job/stretch',
  example: '0.95 to 1.05',
  read(text) {
    const read = parseNumber(text);
    if (!read.ok) return read;
    if (read.value < LEAST_STRETCH || read.value > MOST_STRETCH)
      return refused(
        `${shown(text)} is not from ${LEAST_STRETCH} to ${MOST_STRETCH}; 1 is true to shape`,
        '0.95 to 1.05',
      );
    return read;
  },
};

/** A share of something, above 0 and at most 1. */
export const shareReader: Reader = {
  code: 'job/share',
  example: '0.7',
  read(text) {
    const read = parseNumber(text);
    if (!read.ok) return read;
    if (read.value > 0 && read.value <= 1) return read;
    return refused(`${shown(text)} is not a share; it must be above 0 and at most 1`, '0.7');
  },
};

/** A whole number of repeats. */
export const roomReader: Reader = {
  code: 'job/room',
  example: '3',
  read(text) {
    const read = countReader.read(text);
    if (!read.ok || Number.isInteger(read.value)) return read;
    return refused(`${shown(text)} is not a whole number of repeats`, String(Math.ceil(read.value)));
  },
};

/** A number as typed, which may stand below zero. */
function readSigned(text: string): ReturnType<typeof parseNumber> {
  const below = /^\s*[-−–]\s*(?=[\d.½¼¾])/.exec(text);
  const read = parseNumber(below ? text.slice(below[0].length) : text);
  return read.ok && below ? { ...read, value: -read.value } : read;
}

/** The bend of a line of lettering, degrees. */
export const arcReader: Reader = {
  code: 'job/arc',
  example: '30',
  read(text) {
    const read = readSigned(text.replace(/\s*(?:°|deg(?:rees?)?)\s*$/i, ''));
    if (!read.ok) return refused(read.says, '30');
    if (Math.abs(read.value) <= MOST_ARC) return read;
    return refused(`${shown(text)} is not from -${MOST_ARC} to ${MOST_ARC} degrees`, read.value < 0 ? '-30' : '30');
  },
};

/** A setting of a motif, also below zero; its own limits are checked with the motif. */
export const settingReader = (usual: string): Reader => ({
  code: 'job/number',
  example: usual,
  read(text) {
    const read = readSigned(text);
    return read.ok ? read : refused(read.says, usual);
  },
});
