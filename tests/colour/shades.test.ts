import { converter, modeOklab, modeOklch, modeRgb, parse, useMode } from 'culori/fn';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fromPicture } from '../../src/colour/from-picture.ts';
import { colourPairs } from '../../src/colour/pairs.ts';
import { ladderOf, shadesOf } from '../../src/colour/shades.ts';
import { sharesOfParts } from '../../src/colour/shares.ts';
import { touchingParts } from '../../src/colour/touching.ts';
import { colourWord } from '../../src/colour/word.ts';
import { compose } from '../../src/compose/compose.ts';
import { fitJob } from '../../src/pipeline.ts';

for (const mode of [modeRgb, modeOklab, modeOklch]) useMode(mode);
// OKLCH by a general-purpose library.
const toOklch = converter('oklch');
const oklch = (hex: string) => toOklch(parse(hex)!);

const LINES = [
  'evenfield: 1',
  'units: mm',
  'surface: floor-cloth',
  'overall: { across: 600, along: 900 }',
  'field: { motif: octagon-and-dot, pitch: { across: 90 to 130 } }',
  'border: { motif: sawtooth, width: 60 }',
  "palette: { bone: '#efe8d6', ink: '#23303f', madder: '#a2492a' }",
  'colours: { ground: bone, field: ink, alternate: madder, border: ink, corner: madder }',
];

async function draw() {
  const fitted = await fitJob(LINES.join('\n'), 'a.job.yaml');
  if (!fitted.ok) throw new Error(JSON.stringify(fitted.issues));
  const { job, motifs, fit } = fitted.value;
  return { drawing: await compose(fit.layouts[0]!, job, motifs), job };
}

test('a ladder keeps the hue, falls in lightness in even steps, and has the colour itself in it', () => {
  const hexes = fc.integer({ min: 0, max: 0xffffff }).map((value) => `#${value.toString(16).padStart(6, '0')}`);
  fc.assert(
    fc.property(hexes, (hex) => {
      const ladder = ladderOf(hex);
      const own = oklch(hex);
      expect(ladder.filter(({ step }) => step === 0).map((step) => step.hex)).toEqual([hex]);
      const seen = ladder.map(({ hex: shade }) => oklch(shade));
      const { step: top } = ladder[0]!;
      for (const [at, { l, c, h }] of seen.entries()) {
        expect(ladder[at]!.step).toBe(top - at);
        if (at > 0) {
          const fall = seen[at - 1]!.l - l;
          expect(fall).toBeGreaterThan(0.04);
          expect(fall).toBeLessThan(0.19);
        }
        expect(c).toBeLessThan(own.c + 0.015);
        // Bytes round the hue of what is hardly coloured, or hardly light.
        const turn = ((((h ?? 0) - (own.h ?? 0) + 540) % 360) - 180) * (Math.PI / 180);
        if (c > 0.02 && own.c > 0.02) expect(Math.abs(turn) * c).toBeLessThan(0.02);
      }
    }),
    { numRuns: 300, seed: 4 },
  );
});

test('a work in shades of one colour reads well, has the colour in it, and its names can stand in a job', async () => {
  const { drawing, job } = await draw();
  const made = shadesOf(drawing, job, { name: 'madder', hex: job.palette.madder! });
  expect(made.says).toEqual([]);
  expect(made.ways.map(({ name }) => name)).toEqual(['Shades of madder 1', 'Shades of madder 2']);
  const palette = { ...job.palette, ...made.palette };
  const hue = oklch(job.palette.madder!).h!;
  const parts = [...sharesOfParts(drawing).keys()];
  for (const { colours } of made.ways) {
    expect(colourPairs(touchingParts(drawing), { palette }, colours).filter(({ reads }) => reads !== 'well')).toEqual(
      [],
    );
    const used = [...new Set(parts.map((part) => colours[part]))];
    expect(used).toContain('madder');
    expect(used.length).toBe(3);
    for (const name of used) {
      const { c, h } = oklch(palette[name]!);
      expect(c * Math.abs(Math.sin(((h! - hue) * Math.PI) / 180))).toBeLessThan(0.02);
    }
  }
  const kept = `${LINES.filter((line) => !line.startsWith('palette')).join('\n')}\npalette: ${JSON.stringify(palette)}\n`;
  const read = await fitJob(kept, 'a.job.yaml');
  expect(read.ok ? Object.keys(read.value.job.palette) : read.issues).toEqual(Object.keys(palette));
});

test('names that are taken are not taken again', async () => {
  const { drawing, job } = await draw();
  const taken = {
    ...job,
    palette: { ...job.palette, 'madder light': '#000000', 'Madder deep': '#ffffff' },
    colourways: [{ name: 'shades of madder 1', colours: job.colours }],
  };
  const made = shadesOf(drawing, taken, { name: 'madder', hex: job.palette.madder! });
  expect(Object.keys(made.palette).filter((name) => name.toLowerCase() in taken.palette)).toEqual([]);
  expect(made.palette['Madder deep']).toBeUndefined();
  expect(made.ways.map(({ name }) => name)).not.toContain('Shades of madder 1');
  expect(new Set(made.ways.map(({ name }) => name)).size).toBe(made.ways.length);
});

test('a work in the colours of a picture uses no others', async () => {
  const { drawing, job } = await draw();
  const flat = ['#e8dcc0', '#2a3d55', '#b5532f', '#7f8f5f'];
  const [width, height] = [40, 40];
  const data = new Uint8Array(4 * width * height);
  for (let i = 0; i < width * height; i++) {
    const value = Number.parseInt(flat[Math.floor((4 * i) / (width * height))]!.slice(1), 16);
    data.set([value >> 16, (value >> 8) & 255, value & 255, 255], 4 * i);
  }
  const made = fromPicture(drawing, job, { width, height, data }, 'a quilt');
  expect(made.ways[0]!.name).toBe('From a quilt 1');
  const parts = [...sharesOfParts(drawing).keys()];
  for (const { colours } of made.ways) for (const part of parts) expect(flat).toContain(made.palette[colours[part]]);
  expect(made.says[0]).toMatch(/#e8dcc0 25 %/);

  const blank = fromPicture(drawing, job, { width, height, data: new Uint8Array(data.length) }, 'nothing');
  expect(blank).toMatchObject({ ways: [], palette: {}, says: ['nothing has nothing in it that is not see-through.'] });
});

// Names of CSS Color 4, 6.1, that are plain words.
test.each([
  ['#ffffff', 'white'],
  ['#000000', 'black'],
  ['#808080', 'grey'],
  ['#ff0000', 'red'],
  ['#ffa500', 'orange'],
  ['#008000', 'green'],
  ['#008080', 'teal'],
  ['#0000ff', 'blue'],
  ['#800080', 'purple'],
  ['#a52a2a', 'red'],
  ['#8b4513', 'brown'],
])('%s is called %s', (hex, word) => expect(colourWord(hex)).toBe(word));
