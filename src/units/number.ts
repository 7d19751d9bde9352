import { plainText, shown } from './plain.ts';
import { plus, type Ratio, ratio, toNumber } from './ratio.ts';

/** Why a text could not be read, and what to write instead. */
export interface Refusal {
  ok: false;
  says: string;
  hint: string;
}

export const refuse = (says: string, hint: string): Refusal => ({ ok: false, says, hint });

/** More digits than any tape, scale or label shows; with hundreds, a number would be too large to reckon with. */
const MOST_DIGITS = 40;

const NUMBER = /^(?:(\d+) ?\/ ?(\d+)|(\d+)(?: |-)(\d+) ?\/ ?(\d+)|(\d*)\.(\d+)|(\d+))/;

/** The number at the start of a plain text: `12`, `0.5`, `3/8`, `6 3/8` or `6-3/8`. */
export interface Reading {
  ok: true;
  value: Ratio;
  /** How many characters it took. */
  length: number;
  kind: 'whole' | 'decimal' | 'fraction';
}

/** `none` when no number stands there. */
export function readNumber(plain: string): Reading | Refusal | 'none' {
  const match = NUMBER.exec(plain);
  if (!match) return 'none';
  const [all, top, below, whole, mixedTop, mixedBelow, before, after, only] = match;
  const length = all.length;
  if (length > MOST_DIGITS)
    return refuse(`${shown(all)} has more than ${MOST_DIGITS} digits`, 'a number such as 12, 6.5 or 6 1/2');
  const rest = plain.slice(length);
  if (/^\.\d|^ ?\/|^\.\d*$/.test(rest) || (after !== undefined && /^ \d+ ?\/|^-\d+ ?\//.test(rest)))
    return refuse(
      `${shown(plain)}: a number has a decimal point or a fraction, not both and not two of them`,
      'a number such as 6.5 or 6 1/2',
    );
  if (only !== undefined) return { ok: true, value: ratio(BigInt(only)), length, kind: 'whole' };
  if (after !== undefined)
    return {
      ok: true,
      value: ratio(BigInt(`${before}${after}`), 10n ** BigInt(after.length)),
      length,
      kind: 'decimal',
    };
  const [n, d] = [BigInt(mixedTop ?? top!), BigInt(mixedBelow ?? below!)];
  if (d === 0n) return refuse(`${shown(all)}: nothing can be divided by 0`, 'a fraction such as 1/2 or 3/8');
  if (n >= d) return topHeavy(all, whole, n, d);
  return { ok: true, value: plus(ratio(BigInt(whole ?? 0)), ratio(n, d)), length, kind: 'fraction' };
}

/** `63/8` is more often a lost space than 7 7/8, so a person is asked which. */
function topHeavy(given: string, whole: string | undefined, n: bigint, d: bigint): Refusal {
  const total = BigInt(whole ?? 0) + n / d;
  const sum = n % d === 0n ? `${total}` : `${total} ${n % d}/${d}`;
  const split = /^(\d+?)(\d{1,2})$/.exec(`${n}`);
  const apart = whole === undefined && split && BigInt(split[2]!) < d ? ` or ${split[1]} ${split[2]}/${d}` : '';
  return refuse(`${shown(given)}: the top of a fraction must be smaller than its bottom`, `${sum}${apart}`);
}

/** Reads a plain number such as a count or a share: `5`, `0.97`, `5 1/2`. */
export function parseNumber(text: string): { ok: true; value: number } | Refusal {
  const plain = plainText(text);
  if (plain === '') return refuse('nothing is written here; a number belongs here', 'a number such as 5');
  if (/^-\s?[\d.]/.test(plain)) return refuse(`${shown(text)} is below zero`, shown(plain.replace(/^-\s?/, '')));
  const read = readNumber(plain);
  if (read === 'none' || (read.ok && read.length < plain.length))
    return refuse(`${shown(text)} is not a number`, 'a number such as 5, 0.97 or 5 1/2');
  return read.ok ? { ok: true, value: toNumber(read.value) } : read;
}
