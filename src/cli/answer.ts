import { SURFACES } from '../job/job.ts';
import { MOST_STEPS } from '../job/shape/stairs.ts';
import { allMotifs } from '../motif/library.ts';
import type { Kind } from '../motif/motif.ts';
import { nearestName } from '../motif/nearest.ts';
import {
  parseLength,
  parseNumber,
  type System,
  shown,
  systemOf,
  UNITS,
  type Unit,
  writeLength,
} from '../units/index.ts';

/** One answer as it goes into the job file, with what to say back; or why it cannot be read. */
export type Answer = { ok: true; text: string; says: string } | { ok: false; says: string; hint: string };

const SIXTEENTH = 25.4 / 16;
const MOST_REPEATS = 1000;

/** A length in the other system than it was given in, to the nearest tape mark. */
const inOther = (mm: number, given: System): string =>
  given === 'inch' ? writeLength(mm, mm < 10_000 ? 'mm' : 'm', 1) : writeLength(mm, 'ft', SIXTEENTH);

const inOwn = (mm: number, unit: Unit): string =>
  systemOf(unit) === 'inch' ? writeLength(mm, unit, SIXTEENTH) : writeLength(mm, unit, 1);

/** A length above zero, said back in both systems. `bare` is what a number without a unit means. */
export function readLengthAnswer(text: string, bare: Unit | undefined): Answer & { unit?: Unit } {
  const read = parseLength(text, bare);
  if (!read.ok) return read;
  if (read.mm === 0)
    return { ok: false, says: `${shown(text)} is nothing; a length above zero belongs here`, hint: '34"' };
  const { mm } = read;
  const unit = read.unit ?? bare ?? 'in';
  return { ok: true, text: text.trim(), says: `${inOwn(mm, unit)}, which is ${inOther(mm, systemOf(unit))}`, unit };
}

/** One of a list of words: its number, its beginning, or the whole of it. */
function choose(text: string, words: readonly string[], what: string): Answer {
  const given = text.trim().toLowerCase().replace(/\s+/g, '-');
  const numbered = /^\d+$/.test(given) ? words[Number(given) - 1] : undefined;
  const begun = words.filter((word) => word.startsWith(given));
  const found = numbered ?? words.find((word) => word === given) ?? (begun.length === 1 ? begun[0] : undefined);
  if (given !== '' && found !== undefined) return { ok: true, text: found, says: found };
  const near = nearestName(given, words);
  return {
    ok: false,
    says: `${shown(text)} is no ${what}; there are ${words.join(', ')}`,
    hint: near ?? words[0]!,
  };
}

export const readSurfaceAnswer = (text: string): Answer => choose(text, SURFACES, 'surface');

const UNIT_WORDS: Record<string, Unit> = {
  '"': 'in',
  inch: 'in',
  inches: 'in',
  "'": 'ft',
  foot: 'ft',
  feet: 'ft',
  millimetres: 'mm',
  millimeters: 'mm',
  centimetres: 'cm',
  centimeters: 'cm',
  metres: 'm',
  meters: 'm',
};

export function readUnitAnswer(text: string): Answer & { unit?: Unit } {
  const word = text.trim().toLowerCase();
  const unit = UNITS.find((one) => one === word) ?? UNIT_WORDS[word];
  if (unit !== undefined) return { ok: true, text: unit, says: unit, unit };
  return choose(word, UNITS, 'unit');
}

/** A motif of one kind, or `none` where there need not be one. */
export function readMotifAnswer(text: string, kind: Kind, none: boolean): Answer {
  const names = allMotifs()
    .filter((motif) => motif.kind === kind)
    .map((motif) => motif.name);
  const read = choose(text, none ? [...names, 'none'] : names, 'motif');
  if (!read.ok || read.text === 'none') return read;
  const motif = allMotifs().find((one) => one.name === read.text)!;
  return { ...read, says: `${motif.name}: ${motif.summary}` };
}

/** How many steps a flight has. */
export function readStepsAnswer(text: string): Answer {
  const read = parseNumber(text);
  if (!read.ok) return read;
  const { value } = read;
  if (Number.isInteger(value) && value >= 1 && value <= MOST_STEPS)
    return { ok: true, text: `${value}`, says: `${value}` };
  return { ok: false, says: `${shown(text)} is no number of steps; a flight has 1 to ${MOST_STEPS}`, hint: '8' };
}

/** A count of whole or half repeats. */
export function readCountAnswer(text: string): Answer {
  const read = parseNumber(text);
  if (!read.ok) return read;
  const { value } = read;
  if (value < 0.5 || value > MOST_REPEATS || !Number.isInteger(value * 2))
    return {
      ok: false,
      says: `${shown(text)} is not a count; whole and half ones up to ${MOST_REPEATS} are`,
      hint: `${Math.min(MOST_REPEATS, Math.max(1, Math.round(value)))}`,
    };
  return { ok: true, text: `${value}`, says: `${value}` };
}
