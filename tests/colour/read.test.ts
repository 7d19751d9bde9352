import {
  converter,
  formatHex,
  inGamut,
  modeHsl,
  modeLab,
  modeOklab,
  modeOklch,
  modeRgb,
  modeXyz50,
  modeXyz65,
  parse,
  useMode,
} from 'culori/fn';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { linearOfOklab, oklabOfLinear, oklabOfXyz } from '../../src/colour/oklab.ts';
import { readColour } from '../../src/colour/read.ts';
import { linear, rgbOf } from '../../src/colour/rgb.ts';

for (const mode of [modeRgb, modeLab, modeOklab, modeOklch, modeHsl, modeXyz50, modeXyz65]) useMode(mode);

const hex = (text: string): string => {
  const read = readColour(text);
  return read.ok ? read.hex : `refused: ${read.says}`;
};
const rgbBy = converter('rgb');
const oklchBy = converter('oklch');
const percent = (r: number, g: number, b: number): string =>
  `#${[r, g, b]
    .map((share) =>
      Math.round(share * 2.55)
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;

describe('values that the W3C published', () => {
  // css/css-color/lab-001 and lab-003 to lab-007 of web-platform-tests, by the editors of CSS Color 4.
  test.each([
    ['lab(46.277 -47.562 48.583)', '#008000'],
    ['lab(100 0 0)', '#ffffff'],
    ['lab(0% 0 0)', '#000000'],
    ['lab(50% 50 0)', percent(75.6208, 30.4487, 47.5634)],
    ['lab(70% -45 0)', percent(10.751, 75.558, 66.398)],
    ['lab(70% 0 70)', percent(76.6254, 66.3607, 5.5775)],
    ['lab(55% 0 -60)', percent(12.8128, 53.105, 92.7645)],
  ])('%s is %s', (text, expected) => expect(hex(text)).toBe(expected));

  // CSS Color 4, 10.4 and css/css-color/oklch-001 to oklch-006 of web-platform-tests; from memory, and as culori has them below.
  test.each([
    ['oklch(51.975% 0.17686 142.495)', '#008000'],
    ['oklch(100% 0 0)', '#ffffff'],
    ['oklch(0% 0 0)', '#000000'],
    ['oklch(50% 0.2 0)', percent(70.492, 2.351, 37.073)],
    ['oklch(50% 0.2 270)', percent(23.056, 31.73, 82.628)],
    ['oklch(80% 0.15 160)', percent(32.022, 85.805, 61.147)],
    ['oklch(55% 0.15 345)', percent(67.293, 27.791, 52.28)],
  ])('%s is %s', (text, expected) => expect(hex(text)).toBe(expected));

  // B. Ottosson, "A perceptual color space for image processing", 2020: the table of pairs that an implementation should give, three decimals; from memory.
  test.each([
    [0.95, 1, 1.089, 1, 0, 0],
    [1, 0, 0, 0.45, 1.236, -0.019],
    [0, 1, 0, 0.922, -0.671, 0.263],
    [0, 0, 1, 0.153, -1.415, -0.449],
  ])('XYZ %d %d %d in OKLab', (x, y, z, l, a, b) => {
    for (const [at, value] of oklabOfXyz([x, y, z]).entries())
      expect(Math.abs(value - [l, a, b][at]!)).toBeLessThan(0.0011);
  });
});

describe('forms', () => {
  test.each([
    ['#3B4A57', '#3b4a57'],
    ['3b4a57', '#3b4a57'],
    ['#fc9', '#ffcc99'],
    ['rgb(59 74 87)', '#3b4a57'],
    ['rgb(59, 74, 87)', '#3b4a57'],
    ['RGB( 59 , 74 ,87 )', '#3b4a57'],
    ['rgba(59, 74, 87, 1)', '#3b4a57'],
    ['rgb(59 74 87 / 100%)', '#3b4a57'],
    ['rgb(100% 0% 20%)', '#ff0033'],
    ['rgb(100%, 0%, 20%)', '#ff0033'],
    ['rgb(none 128 1.28e2)', '#008080'],
    ['lab(50% 40% 0%)', hex('lab(50 50 0)')],
    ['oklch(0.5 50% 0.75turn)', hex('oklch(50% 0.2 270deg)')],
    ['oklch(50% 0.2 -90)', hex('oklch(50% 0.2 300grad)')],
  ])('%s', (text, expected) => expect(hex(text)).toBe(expected));

  test.each([
    ['rgb(59 74)', /takes red, green and blue/],
    ['rgb(59, 74, 87', /takes red, green and blue/],
    ['rgb(59 74 87 20 30)', /takes red/],
    ['rgb(256 0 0)', /its red is out of range, which is 0 to 255/],
    ['rgb(0 0 0 / 0.5)', /lets what is under it through/],
    ['rgba(0, 0, 0, 0)', /lets what is under it through/],
    ['lab(120% 0 0)', /its lightness is out of range/],
    ['lab(50% 20deg 0)', /takes the lightness/],
    ['oklch(62% -0.1 45)', /its chroma is out of range/],
    ['oklch(62% 0.1 45%)', /takes the lightness/],
    ['red', /is not a colour; a colour is #/],
    ['hsl(120 40% 30%)', /is not a colour; a colour is #/],
    ['', /is not a colour/],
    ['constructor(1 2 3)', /is not a colour; a colour is #/],
  ])('%j is refused', (text, says) => {
    const read = readColour(text);
    expect(read.ok ? read.hex : read.says).toMatch(says);
  });
});

describe('against culori', () => {
  const number = (min: number, max: number) =>
    fc.integer({ min: 1000 * min, max: 1000 * max }).map((value) => `${value / 1000}`);
  const texts = fc.oneof(
    fc.tuple(number(0, 100), number(-110, 110), number(-110, 110)).map(([l, a, b]) => `lab(${l}% ${a} ${b})`),
    fc.tuple(number(0, 100), number(0, 0.34), number(0, 360)).map(([l, c, h]) => `oklch(${l}% ${c} ${h})`),
    fc.tuple(number(0, 255), number(0, 255), number(0, 255)).map((rgb) => `rgb(${rgb.join(' ')})`),
  );
  const shownBy = inGamut('rgb');

  test('what a screen shows has the same digits, to one step of rounding', () => {
    let seen = 0;
    fc.assert(
      fc.property(texts, (text) => {
        const peer = parse(text);
        if (peer === undefined || !shownBy(peer)) return;
        seen += 1;
        const own = rgbOf(hex(text));
        for (const [at, share] of rgbOf(formatHex(peer)).entries())
          expect(Math.abs(share - own[at]!) * 255).toBeLessThan(1.01);
      }),
      { numRuns: 2000, seed: 5 },
    );
    expect(seen).toBeGreaterThan(500);
  });

  test('what lies clearly outside is refused, and the hint can be shown and keeps hue and lightness', () => {
    let seen = 0;
    fc.assert(
      fc.property(texts, (text) => {
        const peer = parse(text);
        if (peer === undefined) return;
        const { r, g, b } = rgbBy(peer);
        if ([r, g, b].every((share) => share > -0.01 && share < 1.01)) return;
        seen += 1;
        const read = readColour(text);
        if (read.ok) throw new Error(`${text} was taken`);
        const near = /^'(#[0-9a-f]{6})'$/.exec(read.hint)![1]!;
        expect(hex(near)).toBe(near);
        const [l, a, blue] = oklabOfLinear(linear(rgbOf(near)));
        const asked = oklchBy(peer);
        // Near black one step of 255 is a large step of lightness.
        if (asked.l < 0.3) return;
        expect(Math.abs(l - Math.min(1, asked.l))).toBeLessThan(0.006);
        const turn = Math.atan2(blue, a) - ((asked.h ?? 0) * Math.PI) / 180;
        // The hue of a hardly coloured thing says nothing.
        if (Math.hypot(a, blue) > 0.04) expect(Math.cos(turn)).toBeGreaterThan(Math.cos(0.12));
      }),
      { numRuns: 2000, seed: 6 },
    );
    expect(seen).toBeGreaterThan(200);
  });

  test('OKLab goes there and back', () => {
    fc.assert(
      fc.property(fc.tuple(...[0, 1, 2].map(() => fc.double({ min: 0, max: 1, noNaN: true }))), (rgb) => {
        const back = linearOfOklab(oklabOfLinear(rgb as unknown as [number, number, number]));
        for (const [at, share] of back.entries()) expect(Math.abs(share - (rgb[at] as number))).toBeLessThan(1e-6);
      }),
    );
  });
});
