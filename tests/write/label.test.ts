import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { type Font, parse } from 'opentype.js';
import svgpath from 'svgpath';
import { describe, expect, test } from 'vitest';
import { CAPITAL, LabelError, labelPath, labelWidth, loadLettering } from '../../src/write/label.ts';

// The face as its makers ship it, read straight by opentype.js.
const bytes = readFileSync('node_modules/@fontsource/barlow/files/barlow-latin-500-normal.woff');
const font: Font = parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length));

const at = (x: number, y: number, size: number, anchor: 'start' | 'middle' | 'end' = 'start', turn?: number) =>
  turn === undefined ? { x, y, size, anchor } : { x, y, size, anchor, turn };

/** Where each side of a path ends, by svgpath; a side that closing draws among them. */
function ends(d: string): [number, number][] {
  const found: [number, number][] = [];
  let start: [number, number] = [0, 0];
  svgpath(d)
    .abs()
    .iterate((segment, _index, x, y) => {
      const [command, ...numbers] = segment as [string, ...number[]];
      if (command === 'M') start = numbers as [number, number];
      if (/z/i.test(command) && Math.hypot(x - start[0], y - start[1]) > 1e-6) found.push(start);
      if (command === 'H') found.push([numbers[0]!, y]);
      else if (command === 'V') found.push([x, numbers[0]!]);
      else if (numbers.length > 0) found.push(numbers.slice(-2) as [number, number]);
    });
  return found;
}

const reach = (d: string, axis: 0 | 1) => {
  const values = ends(d).map((point) => point[axis]);
  return { from: Math.min(...values), to: Math.max(...values) };
};
/** How far two lists of points are apart at most. */
const farthest = (one: [number, number][], other: [number, number][]) =>
  Math.max(...one.flatMap(([x, y], i) => [Math.abs(x - other[i]![0]), Math.abs(y - other[i]![1])]));
const contours = (d: string) => d.match(/m/gi)?.length ?? 0;

describe('the outline of a label', () => {
  test('is as wide as the face says', async () => {
    expect(await labelWidth('Runner', 40)).toBeCloseTo(font.getAdvanceWidth('Runner', 40), 6);
  });

  test('stands on its baseline, figures 0.7 of the size (the height of capitals in the face)', async () => {
    expect(font.tables.os2!.sCapHeight / font.unitsPerEm).toBe(CAPITAL);
    const { from, to } = reach(await labelPath('141', at(0, 50, 20)), 1);
    expect(to).toBeCloseTo(50, 2);
    expect(from).toBeCloseTo(50 - 14, 2);
  });

  test('starts, centres or ends on x', async () => {
    const width = await labelWidth('1504 mm', 10);
    const start = reach(await labelPath('1504 mm', at(100, 0, 10)), 0).from;
    expect(reach(await labelPath('1504 mm', at(100, 0, 10, 'middle')), 0).from).toBeCloseTo(start - width / 2, 1);
    expect(reach(await labelPath('1504 mm', at(100, 0, 10, 'end')), 0).from).toBeCloseTo(start - width, 1);
  });

  test('turns clockwise on the page about its place: a quarter turn sends the text down', async () => {
    const level = await labelPath('24"', at(0, 0, 10));
    const turned = ends(await labelPath('24"', at(7, 9, 10, 'start', Math.PI / 2)));
    const wished = ends(svgpath(level).abs().unshort().rotate(90).translate(7, 9).toString());
    expect(turned).toHaveLength(wished.length);
    expect(farthest(turned, wished)).toBeLessThan(0.0101);
  });
});

describe('figures of a tape', () => {
  test('a fraction is set from the small figures of the face', async () => {
    const made = await labelPath('3/8', at(0, 0, 100));
    const [three, slash, eight] = ['three.numr', 'fraction', 'eight.dnom'].map((name) => font.nameToGlyph(name));
    const advance = (glyphs: (typeof three)[]) => glyphs.reduce((sum, glyph) => sum + glyph!.advanceWidth! / 10, 0);
    const outline = (glyph: typeof three, x: number) =>
      glyph!.getPath(x, 0, 100).commands.flatMap((step) => ('x' in step ? [[step.x, step.y] as [number, number]] : []));
    const wished = [outline(three, 0), outline(slash, advance([three])), outline(eight, advance([three, slash]))]
      .flat()
      // The face closes its curves with lines that lead nowhere.
      .filter(([x, y], i, all) => i === 0 || Math.hypot(x - all[i - 1]![0], y - all[i - 1]![1]) > 0.001);
    const got = ends(made);
    expect(got).toHaveLength(wished.length);
    expect(farthest(got, wished)).toBeLessThanOrEqual(0.0051);
  });

  test('whole number, fraction and prime part by part: 1, 2, 3, slash, 8 (with two holes), two strokes', async () => {
    expect(contours(await labelPath(`12 3/8"`, at(0, 0, 10)))).toBe(1 + 1 + 1 + 1 + 3 + 2);
    expect(contours(await labelPath(`12'`, at(0, 0, 10)))).toBe(3);
  });

  test('straight quotes and true primes, a fraction typed either way, come out the same', async () => {
    const written = await labelPath(`12' 6 3/8"`, at(3, 4, 10));
    expect(await labelPath('12′ 6 3⁄8″', at(3, 4, 10))).toBe(written);
    expect(await labelPath('12’ 6⅜”', at(3, 4, 10))).toBe(written);
  });

  test('the whole number stands clear of its fraction', async () => {
    expect(await labelWidth('6 3/8', 100)).toBeGreaterThan(
      (await labelWidth('6', 100)) + (await labelWidth('3/8', 100)) + 5,
    );
  });
});

describe('nothing is dropped', () => {
  test('a character the face lacks is refused, by name', async () => {
    await expect(labelPath('12 ㎜', at(0, 0, 10))).rejects.toThrow(LabelError);
    await expect(labelPath('12 ㎜', at(0, 0, 10))).rejects.toThrow('no “㎜”, so the label “12 ㎜”');
    const face = await loadLettering();
    expect([face.canSet('Café № 3'), face.canSet(`Café 3/8" × 12'`)]).toEqual([false, true]);
  });

  test('no place, size or turn prints anything but numbers', async () => {
    const face = await loadLettering();
    const real = fc.double({ min: -1e4, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(
        real,
        real,
        fc.double({ min: 0.1, max: 500, noNaN: true }),
        real,
        fc.nat(4000),
        (x, y, size, turn, n) => {
          const text = `${n % 13}' ${n % 12} ${(n % 8) * 2 + 1}/16" O&8 ${n} mm`;
          const d = face.path(text, at(x, y, size, 'middle', turn));
          expect(d).toMatch(/^M[^Mmz]+z(?:m[^Mmz]+z)*$/);
          expect(d).toMatch(/^(?:[Mmlhvqct](?:-?(?:\d+(?: |(?=[-a-zA-Z]))|\d*\.\d{1,2}(?: |(?=[-.a-zA-Z]))))+|z)+$/);
        },
      ),
    );
  });
});
