import { type Refusal, readNumber, refuse } from './number.ts';
import { plainText, shown } from './plain.ts';
import { toNumber } from './ratio.ts';

const EXAMPLES = '30 min, 4 hours or 3 days';
const WORDS: [RegExp, number][] = [
  [/^(?:minutes?|mins?)$/, 1 / 60],
  [/^(?:hours?|hrs?|h)$/, 1],
  [/^days?$/, 24],
];

/** Reads a time such as a label gives it: `30 min`, `4 hours`, `3 days`. @returns hours, above 0 and at most 365 days */
export function parseDuration(text: string): { ok: true; hours: number } | Refusal {
  const plain = plainText(text);
  const read = readNumber(plain);
  if (read === 'none') return refuse(`${shown(text)} is not a time`, EXAMPLES);
  if (!read.ok) return read;
  const word = plain.slice(read.length).trim();
  const found = WORDS.find(([name]) => name.test(word));
  if (!found) return refuse(`${shown(text)} has no unit of time that is read here`, EXAMPLES);
  const hours = toNumber(read.value) * found[1];
  if (!(hours > 0 && hours <= 8760)) return refuse(`${shown(text)} is not above nothing and within a year`, EXAMPLES);
  return { ok: true, hours };
}

/** A time as one says it, to the minute below a quarter of an hour, to 5 minutes below 3 hours, to the half hour below 3 days: `25 min`, `4 hours`, `7 days`. Takes hours. */
export function writeDuration(hours: number): string {
  if (hours >= 72) return `${Number((hours / 24).toFixed(1))} days`;
  if (hours < 1 / 4) return `${Math.max(1, Math.round(hours * 60))} min`;
  const minutes = Math.round(hours * 12) * 5;
  if (minutes < 60) return `${minutes} min`;
  if (hours < 3 && minutes % 60 !== 0) return `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
  const halves = Math.round(hours * 2) / 2;
  return `${halves} hour${halves === 1 ? '' : 's'}`;
}
