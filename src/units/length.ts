import { FOOT, INCH, METRE, type Measure, MILLIMETRE, OF_JOB, WORDS } from './measures.ts';
import { type Refusal, readNumber, refuse } from './number.ts';
import { plainText, shown } from './plain.ts';
import { less, plus, type Ratio, ratio, times, toNumber } from './ratio.ts';
import { MM_PER_INCH, type Unit } from './unit.ts';
import { writeLength } from './write.ts';

/** Longest length read, mm: 1 km. */
const LONGEST_MM = 1_000_000;
const LONGEST_TEXT = 60;

const EXAMPLES = `12' 6 3/8", 3.25 m or 150.4 cm`;

/** One number with its measure; `undefined` where none was written. */
interface Part {
  value: Ratio;
  whole: boolean;
  measure: Measure | undefined;
}

/** What two numbers are as feet and inches, where they can be such. */
function asFeet({ value, whole }: Part, rest: string): string {
  const [, inches] = /^-?((?:\d|1[01])(?: \d+\/\d+)?) ?"?$/.exec(rest) ?? [];
  return whole && inches !== undefined ? `${value.above}' ${inches}"` : EXAMPLES;
}

function readParts(text: string, plain: string): { ok: true; parts: Part[] } | Refusal {
  const parts: Part[] = [];
  let rest = plain;
  while (rest !== '') {
    const read = readNumber(rest);
    if (read === 'none') return refuse(`${shown(text)} is not a length`, EXAMPLES);
    if (!read.ok) return read;
    rest = rest.slice(read.length).trimStart();
    const found = WORDS.find(([word]) => word.test(rest));
    const part = { value: read.value, whole: read.kind === 'whole', measure: found?.[1] };
    parts.push(part);
    if (found)
      rest = rest
        .replace(found[0], '')
        .replace(/^ ?-? ?(?=[\d.])/, '')
        .trimStart();
    else if (/^[a-z]/.test(rest))
      return refuse(`${shown(text)}: ${shown(rest)} is not a unit; allowed are in, ft, yd, mm, cm and m`, EXAMPLES);
    else if (/^\d/.test(rest))
      return refuse(`${shown(text)}: two numbers stand side by side with no unit between`, asFeet(part, rest));
    else if (/^-\d/.test(rest))
      return refuse(`${shown(text)}: two numbers stand side by side with only a dash between`, asFeet(part, rest));
    else if (rest !== '') return refuse(`${shown(text)}: ${shown(rest)} cannot be read`, EXAMPLES);
  }
  return { ok: true, parts };
}

/** Gives every part its measure: a bare number after feet is inches, a bare number alone is in the job's unit. */
function settle(text: string, parts: Part[], bare: Unit | undefined): { ok: true; measures: Measure[] } | Refusal {
  const measures: Measure[] = [];
  for (const [at, part] of parts.entries()) {
    const before = measures[at - 1];
    if (part.measure) measures.push(part.measure);
    else if (before === FOOT) measures.push(INCH);
    else if (before)
      return refuse(`${shown(text)}: the last number has no unit`, before === METRE ? `${shown(text)} cm` : EXAMPLES);
    else if (bare) measures.push(OF_JOB[bare]);
    else if (part.value.above === 0n) measures.push(MILLIMETRE);
    else return refuse(`${shown(text)} has no unit`, `${shown(text)} in, ${shown(text)} cm or ${shown(text)} mm`);
  }
  return { ok: true, measures };
}

/** Where a length has several parts they belong to one system, grow smaller, and each fits into the one before. */
function misfit(text: string, parts: Part[], measures: Measure[], total: number): Refusal | undefined {
  for (let at = 1; at < parts.length; at++) {
    const [large, small] = [measures[at - 1]!, measures[at]!];
    if (large.system !== small.system) return refuse(`${shown(text)} mixes inches and metric in one length`, EXAMPLES);
    if (!less(small.mm, large.mm))
      return refuse(
        `${shown(text)}: ${small.name} cannot follow ${large.name}; the larger unit comes first, each once`,
        EXAMPLES,
      );
    if (!parts[at - 1]!.whole)
      return refuse(`${shown(text)}: only the last number may have a fraction or a decimal point`, EXAMPLES);
    if (!less(times(parts[at]!.value, small.mm), large.mm))
      return refuse(
        `${shown(text)}: the ${small.name} after ${large.name} come to a whole ${large.name} or more`,
        large.system === 'inch' ? writeLength(total, 'ft', MM_PER_INCH / 64) : writeLength(total, 'm', 1),
      );
  }
  return undefined;
}

/**
 * Reads a length as people write it: `12' 6 3/8"`, `12 ft 6 3/8 in`, `150.4 cm`, `3 m 25 cm`, `1-1/2 in`, `6⅜″`.
 * Zero is allowed, also without a unit; below zero and above 1 km are refused.
 * @param bare what a number without a unit means; with none, it is refused
 * @returns mm, computed exactly and rounded once to a double, and the largest unit written (`bare` for none)
 */
export function parseLength(text: string, bare?: Unit): { ok: true; mm: number; unit: Unit | undefined } | Refusal {
  const plain = plainText(text);
  if (plain.length > LONGEST_TEXT) return refuse(`${shown(text)} is too long to be one length`, EXAMPLES);
  if (plain === '') return refuse('nothing is written here; a length belongs here', EXAMPLES);
  if (/^-[\d.]/.test(plain))
    return refuse(`${shown(text)} is below zero; a length is zero or more`, shown(plain.slice(1)));
  if (/\d,\d/.test(plain))
    return refuse(
      `${shown(text)}: a comma is read differently in different countries, so it is not allowed in a number`,
      `a point for decimals, nothing between thousands: ${shown(plain.replace(/,/g, '.'))} or ${shown(plain.replace(/,/g, ''))}`,
    );
  const read = readParts(text, plain);
  if (!read.ok) return read;
  const settled = settle(text, read.parts, bare);
  if (!settled.ok) return settled;
  const { parts } = read;
  const { measures } = settled;
  const total = parts.map((part, at) => times(part.value, measures[at]!.mm)).reduce(plus);
  const wrong = misfit(text, parts, measures, toNumber(total));
  if (wrong) return wrong;
  if (less(ratio(LONGEST_MM), total))
    return refuse(`${shown(text)} is longer than 1 km, the longest length read`, EXAMPLES);
  return { ok: true, mm: toNumber(total), unit: parts[0]!.measure?.unit ?? bare };
}
