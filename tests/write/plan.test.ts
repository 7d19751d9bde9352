import { readFileSync } from 'node:fs';
import { Resvg } from '@resvg/resvg-js';
import { parse } from 'opentype.js';
import { beforeAll, describe, expect, test } from 'vitest';
import { pieceArea } from '../../src/geometry/measure.ts';
import { writePlan } from '../../src/write/plan.ts';
import { renderPng } from '../../src/write/png.ts';
import { boxOf, clashes, type Label, labelsOf, type Read, readElements } from './drawn.ts';
import { expectPicture } from './picture.ts';
import { SCENES, type Scene } from './scene.ts';

const bytes = readFileSync('node_modules/@fontsource/barlow/files/barlow-latin-500-normal.woff');
const face = parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length));

interface Drawn extends Scene {
  svg: string;
  elements: Read[];
  labels: Label[];
}
const drawn = {} as Record<keyof typeof SCENES, Drawn>;

beforeAll(async () => {
  for (const name of Object.keys(SCENES) as (keyof typeof SCENES)[]) {
    const scene = await SCENES[name]();
    const svg = await writePlan(scene.drawing, scene.layout, scene.job, scene.motifs);
    const elements = readElements(svg);
    drawn[name] = { ...scene, svg, elements, labels: labelsOf(elements) };
  }
});

const every = test.each(Object.keys(SCENES) as (keyof typeof SCENES)[]);
const texts = (name: keyof typeof SCENES) => drawn[name].labels.map(({ text }) => text);
const viewOf = ({ elements }: Drawn) => elements[0]!.attributes.viewBox!.split(' ').map(Number);

describe('the file', () => {
  every('%s: one user unit is one millimetre', (name) => {
    const { width, height } = drawn[name].elements[0]!.attributes;
    const [, , across, along] = viewOf(drawn[name]);
    expect([width, height]).toEqual([`${across}mm`, `${along}mm`]);
  });

  every('%s: the work lies about the origin, near end at the bottom, all of it on the paper', (name) => {
    const { layout, elements } = drawn[name];
    const ground = boxOf(elements.find(({ attributes }) => attributes.id === 'ground')!.attributes.d!);
    const { across, along } = layout.work;
    expect(ground.left).toBeCloseTo(-across / 2, 3);
    expect(ground.bottom).toBeCloseTo(along / 2, 3);
    const [x, y, wide, high] = viewOf(drawn[name]) as [number, number, number, number];
    for (const { attributes } of elements.filter((one) => one.name === 'path')) {
      const box = boxOf(attributes.d!);
      expect(box.left).toBeGreaterThanOrEqual(x - 0.01);
      expect(box.top).toBeGreaterThanOrEqual(y - 0.01);
      expect(box.right).toBeLessThanOrEqual(x + wide + 0.01);
      expect(box.bottom).toBeLessThanOrEqual(y + high + 0.01);
    }
  });

  every('%s: paths only, none of them open to a font or a number that is none', (name) => {
    const { elements, svg } = drawn[name];
    expect([...new Set(elements.map((one) => one.name))].sort()).toEqual(['desc', 'g', 'path', 'svg', 'title']);
    expect(svg).not.toMatch(/NaN|Infinity|undefined|font-family|href/);
  });

  test('title and description give the numbers', () => {
    const said = (name: string) => drawn.runner.elements.find((one) => one.name === name)!.text;
    expect(said('title')).toBe('Passage runner: plan');
    expect(said('desc')).toContain(`Overall 36" across and 20' along.`);
    expect(said('desc')).toContain(`Field 30" by 19' 5 1/4": 5 by 39 repeats of 6" by 6".`);
    expect(said('desc')).toContain('barn red (field)');
  });

  test('a title of any kind neither breaks the file nor stops it', async () => {
    const { drawing, layout, job, motifs } = drawn.tile;
    for (const title of ['Tom & Ada’s <hall> "A"', 'Коридор 走廊', '']) {
      const elements = readElements(await writePlan(drawing, layout, { ...job, title }, motifs));
      expect(elements.find((one) => one.name === 'title')!.text).toBe(`${title}: plan`);
    }
  });

  test('same in, same out', async () => {
    const { drawing, layout, job, motifs, svg } = drawn.cloth;
    expect(await writePlan(drawing, layout, job, motifs)).toBe(svg);
    expect(await renderPng(svg, 300)).toEqual(await renderPng(svg, 300));
  });
});

describe('the dimensions', () => {
  test('of the runner, each once, as a person writes them', () => {
    const wanted = [
      '36"',
      'field 30"',
      `20'`,
      `work 19' 11 1/4"`,
      `field 19' 5 1/4", 39 repeats`,
      '3/8" end gap',
      '3" border',
    ];
    for (const text of wanted) expect(texts('runner').filter((one) => one === text)).toHaveLength(1);
    expect(texts('runner').filter((text) => text === '6" each repeat')).toHaveLength(2);
    expect(texts('runner')).toContain('near threshold, opening 34 3/8"');
    expect(texts('runner')).toContain('far threshold, opening 36"');
  });

  test('of the rug, in its own unit, with what parts it from the walls', () => {
    expect(texts('rug')).toEqual(
      expect.arrayContaining(['2388 mm', 'field 2160 mm, 9 repeats', '1700 mm', '90 mm border', '40 mm reserve']),
    );
    expect(texts('rug')).toEqual(
      expect.arrayContaining(['reserve 24 mm at the sides', 'near wall, 572 mm away', 'left wall, 612 mm away']),
    );
  });

  test('of a checkerboard, by squares', () => {
    expect(texts('hall')).toContain(`field 98' 9", 395 squares`);
  });

  test('lines are as long as they say: the ends of every pair of thin lines in the group', () => {
    // Extension lines are the only ones of opacity 0.55 with two points; those that stand come from the widths.
    const standing = drawn.rug.elements
      .filter(
        ({ attributes, groups }) => groups.includes('dimensions') && Number(attributes['stroke-opacity']) === 0.55,
      )
      .map(({ attributes }) => boxOf(attributes.d!))
      .filter((box) => box.left === box.right && box.bottom <= -850);
    const xs = standing.map((box) => box.left).sort((a, b) => a - b);
    expect(xs).toEqual([-1194, -1080, 1080, 1194]);
  });

  test('the axis is a chain line at x = 0', () => {
    const axis = drawn.runner.elements.filter(
      ({ groups, attributes }) => groups.includes('axis') && attributes['stroke-dasharray'],
    );
    expect(axis).toHaveLength(2);
    for (const { attributes } of axis) {
      const box = boxOf(attributes.d!);
      expect([box.left, box.right]).toEqual([0, 0]);
      expect(box.bottom).toBeGreaterThan(drawn.runner.layout.overall.along / 2);
    }
  });
});

describe('the lettering', () => {
  every('%s: no label lies over another', (name) => expect(clashes(drawn[name].labels)).toEqual([]));

  every('%s: figures stay at least 9 pixels tall in a picture of 1600', (name) => {
    const [, , across, along] = viewOf(drawn[name]) as [number, number, number, number];
    const perPixel = Math.max(across, along) / 1600;
    const readings = labelsOf(drawn[name].elements.filter(({ groups }) => groups.includes('dimensions')));
    expect(readings.length).toBeGreaterThanOrEqual(4);
    for (const { box } of readings) {
      const tall = Math.min(box.right - box.left, box.bottom - box.top);
      expect(tall / perPixel).toBeGreaterThanOrEqual(9);
    }
  });

  test('outlines are those of their words: as wide as opentype.js sets them', () => {
    for (const name of ['cloth', 'rug'] as const) {
      for (const { text, box } of drawn[name].labels.filter((label) => !/["'/]/.test(label.text))) {
        const [wide, tall] = [box.right - box.left, box.bottom - box.top];
        const set = boxOf(face.getPath(text, 0, 0, 1000).toPathData(2));
        const ratio = (set.right - set.left) / (set.bottom - set.top);
        expect(Math.max(wide / tall, tall / wide)).toBeCloseTo(Math.max(ratio, 1 / ratio), 0);
      }
    }
  });
});

describe('the paint', () => {
  every('%s: as many pixels of each colour as the drawing has area', (name) => {
    const { drawing, job, svg, layout } = drawn[name];
    const { across, along } = layout.work;
    const scale = 1200 / Math.max(across, along);
    const [wide, high] = [Math.round(across * scale), Math.round(along * scale)];
    const group = /<g id="paint">.*?<\/g>/s.exec(svg)![0];
    const alone = `<svg xmlns="http://www.w3.org/2000/svg" width="${wide}" height="${high}" viewBox="${-across / 2} ${-along / 2} ${across} ${along}" preserveAspectRatio="none">${group}</svg>`;
    const { pixels } = new Resvg(alone).render();
    const due = new Map<string, number>([[job.palette[job.colours.ground]!, across * along]]);
    const add = (hex: string, area: number) => due.set(hex, (due.get(hex) ?? 0) + area);
    for (const { part, pieces, at } of drawing.regions) {
      const area = (pieces.reduce((sum, piece) => sum + pieceArea(piece), 0) * at.length) / 2;
      add(job.palette[job.colours[part]]!, area);
      add(job.palette[job.colours.ground]!, -area);
    }
    const colours = [...due.keys()];
    const shares = shareOut(pixels, colours);
    colours.forEach((hex, at) => {
      expect(shares[at]!, hex).toBeCloseTo(due.get(hex)! / (across * along), 2);
    });
  });
});

/** The share of each colour in a picture: whole pixels by count, blended ones by the two colours they lie between. */
function shareOut(pixels: Uint8Array, colours: string[]): number[] {
  const counts = new Map<number, number>();
  for (let i = 0; i < pixels.length; i += 4) {
    const colour = (pixels[i]! << 16) | (pixels[i + 1]! << 8) | pixels[i + 2]!;
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  const rgb = colours.map((hex) => channels(Number.parseInt(hex.slice(1), 16)));
  const sums = colours.map(() => 0);
  for (const [colour, count] of counts) {
    const { one, other, part } = between(channels(colour), rgb);
    sums[one]! += (1 - part) * count;
    sums[other]! += part * count;
  }
  return sums.map((sum) => sum / (pixels.length / 4));
}

const channels = (colour: number): number[] => [colour >> 16, (colour >> 8) & 255, colour & 255];

/** The two colours that a blend lies between most nearly, and how much of the second is in it. */
function between(pixel: number[], rgb: number[][]): { one: number; other: number; part: number } {
  let best = { off: Number.POSITIVE_INFINITY, one: 0, other: 0, part: 0 };
  for (const [one, a] of rgb.entries()) {
    for (const [other, b] of rgb.entries()) {
      const way = a.map((value, k) => b[k]! - value);
      const length = way.reduce((sum, value) => sum + value * value, 0);
      const along = length === 0 ? 0 : way.reduce((sum, value, k) => sum + value * (pixel[k]! - a[k]!), 0) / length;
      const part = Math.min(1, Math.max(0, along));
      const off = a.reduce((sum, value, k) => sum + (value + part * way[k]! - pixel[k]!) ** 2, 0);
      if (off < best.off) best = { off, one, other, part };
    }
  }
  return best;
}

describe('the picture', () => {
  test('has its longer side as asked for', async () => {
    const { svg } = drawn.runner;
    const png = await renderPng(svg, 240);
    const view = new DataView(png.buffer, png.byteOffset);
    expect([view.getUint32(20), view.getUint32(16) < 240]).toEqual([240, true]);
  });

  test('no colour of the work is taken for paper', () => {
    const fill = (name: keyof typeof SCENES) =>
      drawn[name].elements.find(({ groups }) => groups.includes('paper'))?.attributes.fill;
    expect(fill('runner')).toMatch(/^#[\da-f]{6}$/);
    expect(Object.values(drawn.runner.job.palette)).not.toContain(fill('runner'));
  });

  test.each([
    ['plan-runner', 'runner', 290],
    ['plan-rug', 'rug', 186],
    ['plan-cloth', 'cloth', 360],
  ] as const)('%s looks as it did when it was looked at', (file, name, side) =>
    expectPicture(drawn[name].svg, file, side),
  );
});
