import { type Refusal, readNumber, refuse } from './number.ts';
import { plainText, shown } from './plain.ts';
import { plus, type Ratio, ratio, times, toNumber } from './ratio.ts';
import type { System } from './unit.ts';

/** Exact: the U.S. gallon is 231 cubic inches (16 CFR 500.19; NIST Handbook 44, Appendix C), so 3785.411784 ml. */
const GALLON: Ratio = ratio(3_785_411_784n, 1_000_000n);
const part = (of: bigint): Ratio => times(GALLON, ratio(1, of));

export const ML_PER_GALLON = 3785.411784;
export const ML_PER_QUART = ML_PER_GALLON / 4;
export const ML_PER_PINT = ML_PER_GALLON / 8;
const ML_PER_CUP = ML_PER_GALLON / 16;
export const ML_PER_FLUID_OUNCE = ML_PER_GALLON / 128;

const EXAMPLES = '1/2 pint, 1 quart, 8 fl oz, 250 ml or 2.5 l';
/** Largest volume read, ml: a thousand litres. */
const MOST = 1_000_000;

const WORDS: [RegExp, Ratio, System][] = [
  [/^(?:us )?(?:gallons?|gal)(?![a-z])\.?/, GALLON, 'inch'],
  [/^(?:us )?(?:quarts?|qts?)(?![a-z])\.?/, part(4n), 'inch'],
  [/^(?:us )?(?:pints?|pts?)(?![a-z])\.?/, part(8n), 'inch'],
  [/^(?:us )?cups?(?![a-z])/, part(16n), 'inch'],
  [/^(?:us )?(?:fluid ounces?|fl\.? ?oz|ounces?|oz)(?![a-z])\.?/, part(128n), 'inch'],
  [/^(?:millilitres?|milliliters?|ml)(?![a-z])\.?/, ratio(1), 'metric'],
  [/^(?:centilitres?|centiliters?|cl)(?![a-z])\.?/, ratio(10), 'metric'],
  [/^(?:litres?|liters?|l)(?![a-z])\.?/, ratio(1000), 'metric'],
];

/**
 * Reads a volume as it stands on a tin: `1/2 pint`, `1 qt`, `1 pint 4 fl oz`, `250 ml`, `2.5 l`. Pints, quarts and gallons are U.S.
 * @returns ml, computed exactly and rounded once to a double; above 0 and at most 1000 litres
 */
export function parseVolume(text: string): { ok: true; ml: number; system: System } | Refusal {
  const plain = plainText(text);
  if (plain === '') return refuse('nothing is written here; a volume belongs here', EXAMPLES);
  if (/^-/.test(plain)) return refuse(`${shown(text)} is below zero`, shown(plain.slice(1)));
  if (/\d,\d/.test(plain))
    return refuse(
      `${shown(text)}: a comma is not allowed in a number`,
      `a point for decimals: ${shown(plain.replace(/,/g, '.'))}`,
    );
  let rest = plain;
  let sum = ratio(0);
  let system: System | undefined;
  while (rest !== '') {
    const read = readNumber(rest);
    if (read === 'none') return refuse(`${shown(text)} is not a volume`, EXAMPLES);
    if (!read.ok) return read;
    rest = rest.slice(read.length).trimStart();
    const found = WORDS.find(([word]) => word.test(rest));
    if (!found)
      return rest === ''
        ? refuse(`${shown(text)} has no unit`, `${shown(text)} fl oz, ${shown(text)} pint or ${shown(text)} ml`)
        : refuse(
            `${shown(text)}: ${shown(rest)} is not a volume; allowed are fl oz, cup, pint, quart, gallon, ml and l`,
            EXAMPLES,
          );
    const [word, ml, its] = found;
    if (system !== undefined && system !== its)
      return refuse(`${shown(text)} mixes U.S. and metric in one volume`, EXAMPLES);
    system = its;
    sum = plus(sum, times(read.value, ml));
    rest = rest.replace(word, '').trimStart();
  }
  const ml = toNumber(sum);
  if (ml === 0) return refuse(`${shown(text)} is nothing; a volume is above zero`, EXAMPLES);
  if (ml > MOST) return refuse(`${shown(text)} is more than 1000 litres, the largest volume read`, EXAMPLES);
  return { ok: true, ml, system: system! };
}

const HAIR = 1e-9;
/** The least whole number of steps that is not less. */
const up = (value: number): number => Math.ceil(value - HAIR * Math.max(1, value));

/** `1 1/2` of parts. */
function mixed(count: number, parts: number): string {
  let [top, bottom] = [count % parts, parts];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  const whole = Math.floor(count / parts);
  if (top === 0) return `${whole}`;
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}

/** Up to how much each U.S. measure is used, in ml, and the parts it is poured in. */
const POURED: [most: number, ml: number, parts: number, word: string][] = [
  [ML_PER_CUP, ML_PER_FLUID_OUNCE, 1, 'fl oz'],
  [ML_PER_PINT, ML_PER_CUP, 4, 'cup'],
  [ML_PER_QUART, ML_PER_PINT, 4, 'pint'],
  [ML_PER_GALLON, ML_PER_QUART, 4, 'quart'],
  [Number.POSITIVE_INFINITY, ML_PER_GALLON, 4, 'gallon'],
];

/**
 * A volume as a person pours it, never less than it is: whole fluid ounces below a cup, then quarters of a cup, pint, quart or gallon;
 * or 10 ml below a litre and tenths of a litre from there. U.S. measures. Takes ml.
 */
export function writeVolume(ml: number, system: System): string {
  if (ml <= HAIR) return system === 'inch' ? '0 fl oz' : '0 ml';
  if (system === 'metric') {
    const tens = up(ml / 10) * 10;
    return tens < 1000 ? `${tens} ml` : `${(up(ml / 100) / 10).toFixed(1).replace(/\.0$/, '')} l`;
  }
  const [, unit, parts, word] = POURED.find(([most]) => ml < most * (1 - HAIR))!;
  const count = up((ml / unit) * parts);
  return `${mixed(count, parts)} ${word}${count > parts && word !== 'fl oz' ? 's' : ''}`;
}

/** What stands on tins: the parts in which each is sold. */
const SOLD: [ml: number, parts: number, word: string][] = [
  [ML_PER_GALLON, 2, 'gallon'],
  [ML_PER_QUART, 1, 'quart'],
  [ML_PER_PINT, 2, 'pint'],
  [ML_PER_FLUID_OUNCE, 1, 'fl oz'],
];

/** A volume under the name it is sold by: `1/2 pint`, `1 quart`, `750 ml`. Takes ml. */
export function nameVolume(ml: number): string {
  for (const [unit, parts, word] of SOLD) {
    const count = (ml / unit) * parts;
    const whole = Math.round(count);
    if (whole > 0 && Math.abs(count - whole) < 1e-6)
      return `${mixed(whole, parts)} ${word}${whole > parts && word !== 'fl oz' ? 's' : ''}`;
  }
  return ml < 1000 ? `${Number(ml.toFixed(1))} ml` : `${Number((ml / 1000).toFixed(3))} l`;
}
