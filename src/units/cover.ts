import { type Refusal, readNumber, refuse } from './number.ts';
import { plainText, shown } from './plain.ts';
import { toNumber } from './ratio.ts';
import { MM_PER_FOOT, type System } from './unit.ts';
import { ML_PER_GALLON, ML_PER_QUART, parseVolume } from './volume.ts';

const EXAMPLES = '400 sq ft per gallon or 10 m2 per l';
const AREA = /^(sq\.? ?ft\.?|square feet|ft2|ft²|sq\.? ?m|square met(?:re|er)s?|m2|m²) ?(?:per|\/|a) ?/;

/** mm² from one ml: 1 to 50 m² from a litre are believed. */
const [LEAST, MOST] = [1000, 50_000];

/**
 * Reads what paint covers as a label has it: `400 sq ft per gallon`, `100 sq ft per quart`, `10 m2 per l`, `10 m²/l`.
 * @returns mm² from one ml
 */
export function parseCover(text: string): { ok: true; cover: number } | Refusal {
  const plain = plainText(text);
  const read = readNumber(plain);
  if (read === 'none') return refuse(`${shown(text)} does not say what the paint covers`, EXAMPLES);
  if (!read.ok) return read;
  const rest = plain.slice(read.length).trim();
  const area = AREA.exec(rest);
  if (!area) return refuse(`${shown(text)} is not an area per volume`, EXAMPLES);
  const word = rest.slice(area[0].length);
  const volume = parseVolume(/^[\d.]/.test(word) ? word : `1 ${word}`);
  if (!volume.ok) return refuse(`${shown(text)} is not an area per volume`, EXAMPLES);
  const cover = (toNumber(read.value) * (/f/.test(area[1]!) ? MM_PER_FOOT ** 2 : 1e6)) / volume.ml;
  if (!(cover >= LEAST && cover <= MOST))
    return refuse(
      `${shown(text)} is ${writeCover(cover, 'inch')} (${writeCover(cover, 'metric')}); 1 to 50 m2 per l are believed`,
      EXAMPLES,
    );
  return { ok: true, cover };
}

/** `400 sq ft per gallon` (below 100 of them per quart), or `9.8 m² per l`, rounded to the nearest. Takes mm² from one ml. */
export function writeCover(cover: number, system: System): string {
  if (system === 'metric') return `${Number((cover / 1000).toFixed(1))} m² per l`;
  const perGallon = (cover * ML_PER_GALLON) / MM_PER_FOOT ** 2;
  if (perGallon >= 100) return `${Math.round(perGallon)} sq ft per gallon`;
  return `${Math.round((cover * ML_PER_QUART) / MM_PER_FOOT ** 2)} sq ft per quart`;
}
