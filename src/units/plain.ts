const VULGAR: Record<string, string> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅐': '1/7',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅑': '1/9',
  '⅒': '1/10',
};
const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉';

const digitsOf = (text: string, row: string): string => [...text].map((one) => row.indexOf(one)).join('');

/**
 * The same length in plain typing: `12′ 6⅜″` becomes `12' 6 3/8"`. Primes, curly quotes, dashes, fraction signs,
 * raised and lowered digits and every kind of space are brought to their keyboard form; letters to lower case.
 */
export function plainText(text: string): string {
  return text
    .replace(/[\u200B-\u200D\u2060]/g, '')
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒]/g, (sign) => ` ${VULGAR[sign]}`)
    .replace(
      /([⁰¹²³⁴-⁹]+)\s?[⁄/]\s?([₀-₉]+)/g,
      (_, top, below) => ` ${digitsOf(top, RAISED)}/${digitsOf(below, LOWERED)}`,
    )
    .replace(/[⁄∕]/g, '/')
    .replace(/[‐‑‒–—―−]/g, '-')
    .replace(/[′’‘‛´`ʹʼ]/g, "'")
    .replace(/[″”“„‟ʺ˝]|''/g, '"')
    .replace(/\s+/g, ' ')
    .replace(/(^|-) (?=\d)/g, '$1')
    .trim()
    .toLowerCase();
}

/** What was given, fit to stand in a sentence: one line, no control characters, at most 40 characters. */
export function shown(text: string): string {
  const line = text.replace(/\s+/g, ' ').replace(/\p{C}/gu, '?').trim();
  const letters = [...line];
  return letters.length > 40 ? `${letters.slice(0, 37).join('')}…` : line;
}
