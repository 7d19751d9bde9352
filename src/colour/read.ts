import { type Refusal, shown } from '../units/index.ts';
import { type Call, readCall, type Value } from './call.ts';
import { broughtIn, isShown } from './gamut.ts';
import { linearOfLab } from './lab.ts';
import { linearOfOklab } from './oklab.ts';
import { coded, hexOf, linear, type Rgb } from './rgb.ts';

/** What one value of a function may be. */
interface Channel {
  called: string;
  /** What 100% stands for; a value in percent is refused where this is missing. */
  whole?: number;
  from: number;
  to: number;
  range: string;
  turns?: true;
}

interface Form {
  example: string;
  takes: string;
  channels: readonly [Channel, Channel, Channel];
  linear(one: number, two: number, three: number): Rgb;
}

const byte = (called: string): Channel => ({ called, whole: 255, from: 0, to: 255, range: '0 to 255, or 0% to 100%' });
const anyHue = (called: string): Channel => ({
  called,
  whole: 125,
  from: -200,
  to: 200,
  range: '-200 to 200; most lie within 100',
});

const RGB: Form = {
  example: 'rgb(59 74 87)',
  takes: 'red, green and blue, each 0 to 255 or 0% to 100%',
  channels: [byte('red'), byte('green'), byte('blue')],
  linear: (r, g, b) => linear([r / 255, g / 255, b / 255]),
};

const FORMS: Record<string, Form> = {
  rgb: RGB,
  rgba: RGB,
  lab: {
    example: 'lab(38% 10 -20)',
    takes: 'the lightness, 0% to 100%, and the two hues a and b',
    channels: [{ called: 'lightness', whole: 100, from: 0, to: 100, range: '0% to 100%' }, anyHue('a'), anyHue('b')],
    linear: linearOfLab,
  },
  oklch: {
    example: 'oklch(62% 0.12 45)',
    takes: 'the lightness, 0% to 100%, the chroma, 0 to about 0.37, and the hue in degrees',
    channels: [
      { called: 'lightness', whole: 1, from: 0, to: 1, range: '0% to 100%' },
      { called: 'chroma', whole: 0.4, from: 0, to: 1, range: '0 to about 0.37' },
      { called: 'hue', from: -36_000, to: 36_000, range: 'degrees, 0 to 360', turns: true },
    ],
    linear(l, c, h) {
      const angle = (h * Math.PI) / 180;
      return linearOfOklab([l, c * Math.cos(angle), c * Math.sin(angle)]);
    },
  },
};

const DEGREES: Record<string, number> = { '': 1, deg: 1, grad: 0.9, rad: 180 / Math.PI, turn: 360 };

/** The number that a value stands for; nothing where its unit does not belong there. */
function numberOf({ number, unit }: Value, { whole, turns }: Channel): number | undefined {
  if (turns) return DEGREES[unit] === undefined ? undefined : number * DEGREES[unit];
  if (unit === '%') return whole === undefined ? undefined : (number / 100) * whole;
  return unit === '' ? number : undefined;
}

const seeThrough = ({ opacity }: Call): boolean =>
  opacity !== undefined && opacity.number !== (opacity.unit === '%' ? 100 : 1);

const refuse = (says: string, hint: string): Refusal => ({ ok: false, says, hint });

function readForm(text: string, form: Form, call: Call | undefined): { ok: true; hex: string } | Refusal {
  const misread = () => refuse(`${shown(text)} is not a colour; it takes ${form.takes}`, form.example);
  if (call === undefined) return misread();
  if (seeThrough(call))
    return refuse(
      `${shown(text)} lets what is under it through; paint here covers, so a colour has three values`,
      form.example,
    );
  const numbers: number[] = [];
  for (const [at, channel] of form.channels.entries()) {
    const number = numberOf(call.values[at]!, channel);
    if (number === undefined) return misread();
    if (number < channel.from || number > channel.to)
      return refuse(`${shown(text)}: its ${channel.called} is out of range, which is ${channel.range}`, form.example);
    numbers.push(number);
  }
  const light = form.linear(numbers[0]!, numbers[1]!, numbers[2]!);
  if (isShown(light)) return { ok: true, hex: hexOf(coded(light)) };
  return refuse(
    `${shown(text)} is more vivid than a screen can show; the nearest of its hue and lightness is ${hexOf(coded(broughtIn(light)))}`,
    `'${hexOf(coded(broughtIn(light)))}'`,
  );
}

const HEX = /^#?([0-9a-f]{6}|[0-9a-f]{3})$/i;

/**
 * A colour as a person types it, as `#rrggbb`: `#rrggbb` and `#rgb`, with or without the `#`, and of CSS Color Module Level 4 (W3C) `rgb()`, with blanks or commas,
 * numbers or percentages, `lab()`, which is CIELAB of the white D50, and `oklch()`. What no screen can show is refused, with the nearest of the same hue
 * and lightness as a hint; values that lie outside by one step of rounding are taken.
 */
export function readColour(given: string): { ok: true; hex: string } | Refusal {
  const text = given.trim();
  const digits = HEX.exec(text)?.[1]?.toLowerCase();
  if (digits !== undefined)
    return { ok: true, hex: `#${digits.length === 3 ? [...digits].map((digit) => digit + digit).join('') : digits}` };
  const name = /^([a-z]+)\s*\(/i.exec(text)?.[1]?.toLowerCase();
  const form = name !== undefined && Object.hasOwn(FORMS, name) ? FORMS[name] : undefined;
  if (form !== undefined) return readForm(text, form, readCall(text));
  return refuse(
    `${shown(text)} is not a colour; a colour is # and six of 0 to 9 and a to f, in quotes, or rgb(59 74 87), lab(38% 10 -20) or oklch(62% 0.12 45)`,
    `'#22384f'`,
  );
}
