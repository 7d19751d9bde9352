import { Resvg } from '@resvg/resvg-js';
import { SaxesParser } from 'saxes';
import svgpath from 'svgpath';
import { beforeAll, describe, expect, test } from 'vitest';
import { pieceArea } from '../../src/geometry/measure.ts';
import type { Piece } from '../../src/geometry/path.ts';
import { CUTTING } from '../../src/job/defaults.ts';
import type { Sheet } from '../../src/stencil/sheet.ts';
import { sheetOrigin, writeStencil } from '../../src/write/stencil.ts';
import { tidySvg } from '../../src/write/tidy.ts';
import { cutOf, makeScene } from '../stencil/scene.ts';

interface Element {
  name: string;
  attributes: Record<string, string>;
  text: string;
}

/** Every element in order, by a strict XML parser. */
function elementsOf(text: string): Element[] {
  const found: Element[] = [];
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) =>
    found.push({ name, attributes: attributes as Record<string, string>, text: '' }),
  );
  parser.on('text', (text) => {
    if (found.length > 0) found.at(-1)!.text += text;
  });
  parser.write(text).close();
  return found;
}

/** All numbers of a path in absolute lines and cubics, as svgpath reads it; `Z` ends every ring. */
function numbersOf(d: string): { letters: string; numbers: number[] } {
  let letters = '';
  const numbers: number[] = [];
  let [x, y] = [0, 0];
  svgpath(d)
    .abs()
    .unshort()
    .iterate(([letter, ...rest]) => {
      const values = rest as number[];
      if (letter === 'H') [x] = values as [number];
      else if (letter === 'V') [y] = values as [number];
      else if (letter !== 'Z') [x, y] = values.slice(-2) as [number, number];
      letters += letter === 'H' || letter === 'V' ? 'L' : letter;
      if (letter === 'H' || letter === 'V') numbers.push(x, y);
      else numbers.push(...values);
    });
  return { letters, numbers };
}

/** The same numbers straight from a piece, a last line back to the start left to `Z`. */
function due(piece: Piece, [ox, oy]: [number, number]): number[] {
  return piece.flatMap((ring) => {
    const sides = ring.sides.flatMap((side, at) => {
      if (side.kind === 'curve') return [side.out, side.into, side.to];
      const [x, y] = side.to;
      const isBack = at === ring.sides.length - 1 && Math.hypot(x - ring.start[0], y - ring.start[1]) < 1e-9;
      return isBack ? [] : [side.to];
    });
    return [ring.start, ...sides].flatMap(([x, y]) => [x + ox, y + oy]);
  });
}

const farthest = (a: number[], b: number[]): number =>
  a.length === b.length ? Math.max(...a.map((value, at) => Math.abs(value - b[at]!))) : Infinity;

let sheets: Sheet[];
beforeAll(async () => {
  const border = { border: 75, side: 'sawtooth', corner: 'quarter-fan' };
  const pitch = { across: 160 / 3, along: 170 / 3 };
  const stars = await makeScene({
    field: 'eight-point-star',
    repeats: { across: 5, along: 7 },
    pitch,
    bridge: 2,
    window: 1,
    ...border,
  });
  const diamonds = await makeScene({
    field: 'diamond',
    repeats: { across: 5, along: 7 },
    pitch,
    phase: { across: 0.5, along: 0.5 },
    ...border,
  });
  sheets = [...(await cutOf(stars)), ...(await cutOf(diamonds))];
});

describe('a written sheet', () => {
  test('is true to size: width and height in millimetres are those of the viewBox, which begins at 0, 0', () => {
    for (const sheet of sheets) {
      const [svg] = elementsOf(writeStencil(sheet));
      const [width, height] = [sheet.outline.right - sheet.outline.left, sheet.outline.bottom - sheet.outline.top];
      expect(svg!.attributes).toMatchObject({ version: '1.1', xmlns: 'http://www.w3.org/2000/svg' });
      const [x, y, w, h] = svg!.attributes.viewBox!.split(' ').map(Number);
      expect([x, y]).toEqual([0, 0]);
      expect(svg!.attributes.width).toBe(`${w}mm`);
      expect(svg!.attributes.height).toBe(`${h}mm`);
      expect(Math.abs(w! - width) + Math.abs(h! - height)).toBeLessThan(0.0011);
    }
  });

  test('holds one closed path a window and a key, in order, nothing else that draws, nothing moved', () => {
    for (const sheet of sheets) {
      const elements = elementsOf(writeStencil(sheet));
      expect(new Set(elements.map(({ name }) => name))).toEqual(new Set(['svg', 'title', 'desc', 'path']));
      const ids = elements.filter(({ name }) => name === 'path').map(({ attributes }) => attributes.id);
      expect(ids).toEqual([
        ...sheet.windows.map((_, n) => `window-${n + 1}`),
        ...sheet.keys.map((_, n) => `key-${n + 1}`),
        'outline',
      ]);
      for (const { name, attributes } of elements) {
        expect(attributes.transform).toBeUndefined();
        if (name !== 'path') continue;
        expect(attributes).toMatchObject({ 'data-line': 'cut', fill: 'none' });
        expect(numbersOf(attributes.d!).letters).toMatch(/^M[LC]+Z$/);
      }
      const kinds = elements
        .filter(({ attributes }) => attributes.id?.startsWith('key'))
        .map(({ attributes }) => attributes['data-key']);
      expect(kinds).toEqual(sheet.keys.map(({ kind }) => kind));
    }
  });

  test('draws every window and key where the sheet has it, to half a micrometre, curves as cubics (read by svgpath)', () => {
    let curves = 0;
    for (const sheet of sheets) {
      const paths = elementsOf(writeStencil(sheet)).filter(({ name }) => name === 'path');
      const pieces = [...sheet.windows, ...sheet.keys.map(({ piece }) => piece)];
      pieces.forEach((piece, n) => {
        const { letters, numbers } = numbersOf(paths[n]!.attributes.d!);
        curves += letters.split('C').length - 1;
        expect(farthest(numbers, due(piece, sheetOrigin(sheet)))).toBeLessThan(0.00051);
      });
    }
    expect(curves).toBeGreaterThan(100);
  });

  test('says in plain words what it is, and what its lines mean', () => {
    const text = writeStencil({ ...sheets[0]!, colour: 'black & "white" <x>' });
    expect(text).toMatch(/<!-- Every path says in data-line what is done with it/);
    const [, title, desc] = elementsOf(text);
    expect(title!.text.trim()).toBe(`Stencil for black & "white" <x>: ${sheets[0]!.says}`);
    expect(desc!.text).toContain(`${sheets[0]!.windows.length} windows and ${sheets[0]!.keys.length} keys`);
    expect(desc!.text).toContain('away from the body');
  });

  test('renders at its stated size: 96 pixels an inch (CSS Values), and as many dark pixels as its windows have area', () => {
    for (const sheet of sheets.slice(0, 3)) {
      const text = writeStencil({ ...sheet, keys: [] }, { ...CUTTING, outline: 'none' });
      const [width, height] = [sheet.outline.right - sheet.outline.left, sheet.outline.bottom - sheet.outline.top];
      const filled = text.replaceAll('fill="none"', 'fill="#000"').replaceAll('stroke="#000000"', 'stroke="none"');
      const { width: w, height: h, pixels } = new Resvg(filled, { background: 'white' }).render();
      expect(Math.abs(w - (width * 96) / 25.4)).toBeLessThanOrEqual(1);
      expect(Math.abs(h - (height * 96) / 25.4)).toBeLessThanOrEqual(1);
      let dark = 0;
      for (let at = 0; at < pixels.length; at += 4) dark += (255 - pixels[at]!) / 255;
      const area = sheet.windows.reduce((sum, piece) => sum + pieceArea(piece), 0);
      expect((dark * (25.4 / 96) ** 2) / area).toBeCloseTo(1, 2);
    }
  });
});

describe('tidied', () => {
  test('geometry stays within 0.002 mm, corner by corner and handle by handle (read by svgpath)', async () => {
    for (const sheet of sheets) {
      const text = writeStencil(sheet);
      const tidy = await tidySvg(text);
      const [before, after] = [elementsOf(text), elementsOf(tidy)];
      expect(after.map(({ name }) => name)).toEqual(before.map(({ name }) => name));
      before.forEach(({ attributes, text: words }, n) => {
        const { d: was, ...kept } = attributes;
        const { d: is, ...now } = after[n]!.attributes;
        expect(now).toEqual(kept);
        expect(after[n]!.text.trim()).toBe(words.trim());
        if (was === undefined) return;
        const [one, other] = [numbersOf(was), numbersOf(is!)];
        expect(other.letters).toBe(one.letters);
        expect(farthest(one.numbers, other.numbers)).toBeLessThan(0.002);
      });
    }
  });

  test('is shorter, keeps its comment, and a second time changes nothing', async () => {
    for (const sheet of sheets) {
      const text = writeStencil(sheet);
      const tidy = await tidySvg(text);
      expect(tidy.length).toBeLessThan(text.length);
      expect(tidy).toContain('Every path says in data-line');
      expect(tidy.endsWith('</svg>\n')).toBe(true);
      expect(await tidySvg(tidy)).toBe(tidy);
    }
  });
});
