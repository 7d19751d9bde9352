import { COLOUR_NAMES } from './colour-names.ts';
import { readShare } from './number.ts';

export interface Colour {
  /** `#rrggbb`: two colours are one when these are equal. */
  key: string;
  /** 0 to 1; 0 paints nothing. */
  opacity: number;
}

const two = (value: number): string =>
  Math.round(Math.min(255, Math.max(0, value)))
    .toString(16)
    .padStart(2, '0');

const fromBytes = (r: number, g: number, b: number, opacity: number): Colour => ({
  key: `#${two(r)}${two(g)}${two(b)}`,
  opacity,
});

function readHex(digits: string): Colour | undefined {
  const long = digits.length <= 4 ? [...digits].map((one) => one + one).join('') : digits;
  if (long.length !== 6 && long.length !== 8) return undefined;
  const opacity = long.length === 8 ? Number.parseInt(long.slice(6), 16) / 255 : 1;
  return { key: `#${long.slice(0, 6)}`, opacity };
}

/** Hue in degrees, saturation and lightness from 0 to 1 (CSS Color 4, section 7.1). */
function fromHue(hue: number, saturation: number, lightness: number, opacity: number): Colour {
  const part = (n: number): number => {
    const k = (n + (((hue % 360) + 360) % 360) / 30) % 12;
    const a = saturation * Math.min(lightness, 1 - lightness);
    return 255 * (lightness - a * Math.max(-1, Math.min(k - 3, 9 - k, 1)));
  };
  return fromBytes(part(0), part(8), part(4), opacity);
}

/** The bytes, shares or degrees inside `rgb(…)` and `hsl(…)`, with commas or without. */
function readCall(name: string, inside: string): Colour | undefined {
  const words = inside.trim().split(/[\s,/]+/);
  if (words.length !== 3 && words.length !== 4) return undefined;
  const opacity = words[3] === undefined ? 1 : readShare(words[3]);
  if (opacity === undefined) return undefined;
  if (name.startsWith('rgb')) {
    const bytes = words.slice(0, 3).map((word) => {
      const value = /^[-+]?(?:\d+\.?\d*|\.\d+)%?$/.test(word) ? Number.parseFloat(word) : Number.NaN;
      return word.endsWith('%') ? (value / 100) * 255 : value;
    });
    return bytes.every(Number.isFinite) ? fromBytes(bytes[0]!, bytes[1]!, bytes[2]!, opacity) : undefined;
  }
  const hue = Number(words[0]!.replace(/deg$/, ''));
  const [saturation, lightness] = [readShare(words[1]!), readShare(words[2]!)];
  if (!Number.isFinite(hue) || saturation === undefined || lightness === undefined) return undefined;
  return fromHue(hue, saturation, lightness, opacity);
}

/** A colour as CSS writes it: name, `#rgb`, `#rrggbb`, `rgb()`, `hsl()`, with or without opacity. Nothing when it is none. */
export function readColour(text: string): Colour | undefined {
  const word = text.trim().toLowerCase();
  if (word.length > 100) return undefined;
  if (word === 'transparent') return { key: '#000000', opacity: 0 };
  const named = COLOUR_NAMES.get(word);
  if (named !== undefined) return { key: `#${named}`, opacity: 1 };
  const hex = /^#([0-9a-f]+)$/.exec(word);
  if (hex) return readHex(hex[1]!);
  const call = /^(rgba?|hsla?)\(([^()]*)\)$/.exec(word);
  return call ? readCall(call[1]!, call[2]!) : undefined;
}

const byKey = new Map([...COLOUR_NAMES].reverse().map(([name, digits]) => [`#${digits}`, name]));

/** The colour for a sentence: its name where it has one, else its digits. */
export const colourName = (key: string): string => byKey.get(key) ?? key;
