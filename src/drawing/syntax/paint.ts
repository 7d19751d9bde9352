import { type Colour, readColour } from './colour.ts';

/** What a shape is filled or drawn with. */
export type Paint =
  | { kind: 'none' }
  | { kind: 'current' }
  | { kind: 'colour'; colour: Colour }
  /** Something else in the file (a gradient, a pattern), or in another file when `address` is not `#id`. */
  | { kind: 'named'; address: string; otherwise?: Paint };

/** The address inside `url(…)`, and what follows it. */
export function readAddress(text: string): { address: string; rest: string } | undefined {
  const found = /^url\(([^)]*)\)/i.exec(text);
  if (found === null) return undefined;
  const address = found[1]!
    .trim()
    .replace(/^(['"])(.*)\1$/s, '$2')
    .trim();
  return { address, rest: text.slice(found[0].length).trim() };
}

/** `fill` or `stroke` as written, or nothing when it means nothing. */
export function readPaint(text: string): Paint | undefined {
  const word = text.trim();
  if (/^none$/i.test(word)) return { kind: 'none' };
  if (/^currentcolor$/i.test(word)) return { kind: 'current' };
  const named = readAddress(word);
  if (named) {
    const otherwise = named.rest === '' ? undefined : readPaint(named.rest.slice(0, 200));
    return { kind: 'named', address: named.address, ...(otherwise && { otherwise }) };
  }
  if (word.length > 200) return undefined;
  // A colour may be followed by the same in a profile, which SVG 1.1 allows and nothing uses.
  const colour = readColour(word.replace(/\s+icc-color\(.*$/i, ''));
  return colour && { kind: 'colour', colour };
}
