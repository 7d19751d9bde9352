import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Resvg } from '@resvg/resvg-js';
import { areaPathsD, differenceD, FillRule, type PathD } from 'clipper2-ts';
import fc from 'fast-check';
import { parse } from 'opentype.js/dist/opentype.mjs';
import { describe, expect, test } from 'vitest';
import { flatten } from '../../src/geometry/flatten.ts';
import { pieceArea, piecesBox, ringArea } from '../../src/geometry/measure.ts';
import type { Box, Piece, Ring } from '../../src/geometry/path.ts';
import { movePiece, reversedRing } from '../../src/geometry/transform.ts';
import { arc, circle, polygon, rectangle } from '../../src/motif/shapes.ts';
import { type Least, soundness } from '../../src/stencil/soundness.ts';
import { pathText } from '../../src/write/path.ts';
import { drawn } from './bridges/shapes.ts';

const sheetOf = (windows: Piece[], room = 20) => {
  const box = piecesBox(windows);
  const outline: Box = {
    left: box.left - room,
    top: box.top - room,
    right: box.right + room,
    bottom: box.bottom + room,
  };
  return { outline, windows, keys: [] };
};

const turnedBy = (pieces: Piece[], angle: number): Piece[] => {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return pieces.map((piece) => movePiece(piece, ([x, y]) => [x * cos - y * sin, x * sin + y * cos]));
};

const LEAST: Least = { bridge: 2, window: 1.5 };
const ANGLES = Array.from({ length: 12 }, (_, n) => (n * Math.PI) / 6 + 0.1);

/** An opening like a C: a ring 8 wide, held by one neck whose two sides are `neck` apart. */
const cShape = (neck: number): Piece[] =>
  drawn((pen) => {
    const [inner, outer] = [12, 20];
    const at = (radius: number) => Math.asin(neck / 2 / radius);
    pen.moveTo(outer * Math.cos(at(outer)), neck / 2);
    arc(pen, 0, 0, outer, outer, at(outer), 2 * Math.PI - at(outer));
    pen.lineTo(inner * Math.cos(at(inner)), -neck / 2);
    arc(pen, 0, 0, inner, inner, 2 * Math.PI - at(inner), at(inner));
    pen.close();
  });

describe('bridges to a hundredth of a millimetre (least bridge 2 mm)', () => {
  test.each([2, 1.99])('an island on one neck of %f mm holds, however it is turned', async (neck) => {
    for (const angle of ANGLES)
      expect((await soundness(sheetOf(turnedBy(cShape(neck), angle)), LEAST)).sound).toBe(true);
  });

  test('one of 1.97 mm does not; the place and the width are named', async () => {
    for (const angle of ANGLES) {
      const found = await soundness(sheetOf(turnedBy(cShape(1.97), angle)), LEAST);
      expect(found).toMatchObject({ sound: false, islands: 0, narrow: [], outside: 0 });
      expect(found.weak).toHaveLength(1);
      const [{ x, y, width }] = found.weak as [{ x: number; y: number; width: number }];
      expect(Math.abs(width - 1.97)).toBeLessThan(0.01);
      // Anywhere along the neck, which lies between the radii 12 and 20.
      const along = x * Math.cos(angle) + y * Math.sin(angle);
      expect(along).toBeGreaterThan(11.5);
      expect(along).toBeLessThan(20.5);
      expect(Math.abs(-x * Math.sin(angle) + y * Math.cos(angle))).toBeLessThan(1);
    }
  });

  test.each([
    [2, true],
    [1.99, true],
    [1.97, false],
  ])('two windows %f mm apart: %s', async (gap, sound) => {
    for (const angle of ANGLES) {
      const pair = drawn((pen) => {
        circle(pen, -15 - gap / 2, 0, 15);
        rectangle(pen, 10 + gap / 2, 0, 20, 20);
      });
      const found = await soundness(sheetOf(turnedBy(pair, angle)), LEAST);
      expect(found.sound).toBe(sound);
      if (!sound) expect(Math.abs(found.weak[0]!.width - gap)).toBeLessThan(0.005);
    }
  });

  test('three good bridges and a thin one: only the thin one is named', async () => {
    const ring = drawn((pen) => {
      const half = [2.5, 2.5, 2.5, 1.2].map((bridge) => bridge / 2);
      for (let n = 0; n < 4; n++) {
        const [from, to] = [(n * Math.PI) / 2, ((n + 1) * Math.PI) / 2];
        const [a, b] = [half[n]!, half[(n + 1) % 4]!];
        const at = (radius: number, by: number) => Math.asin(by / radius);
        pen.moveTo(20 * Math.cos(from + at(20, a)), 20 * Math.sin(from + at(20, a)));
        arc(pen, 0, 0, 20, 20, from + at(20, a), to - at(20, b));
        pen.lineTo(12 * Math.cos(to - at(12, b)), 12 * Math.sin(to - at(12, b)));
        arc(pen, 0, 0, 12, 12, to - at(12, b), from + at(12, a));
        pen.close();
      }
    });
    const found = await soundness(sheetOf(ring), LEAST);
    expect(found.weak).toHaveLength(1);
    expect(found.weak[0]!.width).toBeCloseTo(1.2, 2);
    // The bridge at 270°, which is far on the page.
    expect(found.weak[0]!.y).toBeLessThan(-11);
    expect(Math.abs(found.weak[0]!.x)).toBeLessThan(1);
    expect(found.islands).toBe(0);
  });

  test('a window too near the edge of the sheet', async () => {
    const found = await soundness(
      sheetOf(
        drawn((pen) => rectangle(pen, 0, 0, 30, 10)),
        1.9,
      ),
      LEAST,
    );
    expect(found.weak).toHaveLength(4);
    expect(found.weak[0]!.width).toBeCloseTo(1.9, 9);
    expect(
      (
        await soundness(
          sheetOf(
            drawn((pen) => rectangle(pen, 0, 0, 30, 10)),
            2,
          ),
          LEAST,
        )
      ).sound,
    ).toBe(true);
  });
});

describe('islands', () => {
  /** A letter as windows, from the font's own outlines. */
  const require = createRequire(import.meta.url);
  const bytes = readFileSync(require.resolve('@fontsource/barlow/files/barlow-latin-500-normal.woff'));
  const face = parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));
  const letter = (character: string): Piece[] =>
    drawn((pen) => {
      let [x, y] = [0, 0];
      for (const step of face.charToGlyph(character).getPath(0, 0, 100).commands) {
        if (step.type === 'M') pen.moveTo(step.x, step.y);
        else if (step.type === 'L') pen.lineTo(step.x, step.y);
        else if (step.type === 'C') pen.curveTo(step.x1, step.y1, step.x2, step.y2, step.x, step.y);
        else if (step.type === 'Q') {
          const third = (a: number, b: number) => a + (2 / 3) * (b - a);
          pen.curveTo(
            third(x, step.x1),
            third(y, step.y1),
            third(step.x, step.x1),
            third(step.y, step.y1),
            step.x,
            step.y,
          );
        }
        if (step.type !== 'Z') [x, y] = [step.x, step.y];
      }
    });

  /** Pieces the sheet falls into, counted on pixels that resvg paints: windows black, what is kept white. */
  function piecesByPixels(windows: Piece[], outline: Box): number {
    const [w, h] = [outline.right - outline.left, outline.bottom - outline.top];
    const d = windows.map((piece) => pathText(piece, [-outline.left, -outline.top])).join('');
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${w} ${h}" width="${w * 4}" height="${h * 4}"><path d="${d}"/></svg>`;
    const image = new Resvg(svg, { background: 'white' }).render();
    const { width, height, pixels } = image;
    const kept = Uint8Array.from({ length: width * height }, (_, n) => (pixels[4 * n]! > 127 ? 1 : 0));
    let pieces = 0;
    for (let from = 0; from < kept.length; from++) {
      if (kept[from] === 0) continue;
      pieces++;
      const open = [from];
      kept[from] = 0;
      while (open.length > 0) {
        const at = open.pop()!;
        const x = at % width;
        for (const next of [x > 0 ? at - 1 : -1, x < width - 1 ? at + 1 : -1, at - width, at + width]) {
          if (next < 0 || next >= kept.length || kept[next] === 0) continue;
          kept[next] = 0;
          open.push(next);
        }
      }
    }
    return pieces;
  }

  const HOLES = ['CEGHIJKLMNSTUVWXYZ12357', 'ADOPQR069', 'B8'];

  // Holes of letters and digits in any plain face: none, one or two; counted again on pixels.
  test.each(HOLES.flatMap((letters, holes) => [...letters].map((one) => [one, holes] as const)))(
    'the letter %s as a window loses %i pieces',
    async (character, islands) => {
      const sheet = sheetOf(letter(character));
      expect((await soundness(sheet, { bridge: 1, window: 1 })).islands).toBe(islands);
      expect(piecesByPixels(sheet.windows, sheet.outline) - 1).toBe(islands);
    },
  );

  test('a ring in a ring loses two pieces, one inside the other', async () => {
    const rings = drawn((pen) => {
      for (const radius of [40, 32, 20, 12]) circle(pen, 0, 0, radius);
    });
    const found = await soundness(sheetOf(rings), LEAST);
    expect(found).toMatchObject({ sound: false, islands: 2 });
  });

  test('random rings and discs: as many islands as Euler’s count says', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.boolean(), fc.double({ min: 8, max: 20, noNaN: true })), { minLength: 1, maxLength: 9 }),
        async (all) => {
          const windows = drawn((pen) =>
            all.forEach(([ring, radius], n) => {
              const [x, y] = [(n % 3) * 50, Math.floor(n / 3) * 50];
              circle(pen, x, y, radius);
              if (ring) circle(pen, x, y, radius / 2);
            }),
          );
          // Kept has one component more than the openings have holes; every ring has one.
          const holes = all.filter(([ring]) => ring).length;
          expect(await soundness(sheetOf(windows), LEAST)).toMatchObject({
            islands: holes,
            weak: [],
            narrow: [],
            sound: holes === 0,
          });
        },
      ),
      { numRuns: 25, seed: 7 },
    );
  });
});

describe('windows', () => {
  test.each([
    [1.5, 0],
    [1.49, 0],
    [1.47, 1],
    [0.4, 1],
  ])('a slit of %f mm, least window 1.5: %i too narrow', async (wide, count) => {
    for (const angle of ANGLES) {
      const found = await soundness(
        sheetOf(
          turnedBy(
            drawn((pen) => rectangle(pen, 0, 0, 30, wide)),
            angle,
          ),
        ),
        LEAST,
      );
      expect(found.narrow).toHaveLength(count);
      expect(found.sound).toBe(count === 0);
      if (count > 0) expect(Math.abs(found.narrow[0]!.width - wide)).toBeLessThan(0.01);
    }
  });

  test('a neck in a window is named where it is; a sharp tip is no neck', async () => {
    const waist = drawn((pen) =>
      polygon(pen, [
        [-20, -10],
        [0, -0.5],
        [20, -10],
        [20, 10],
        [0, 0.5],
        [-20, 10],
      ]),
    );
    const found = await soundness(sheetOf(waist), LEAST);
    expect(found.narrow).toHaveLength(1);
    expect(found.narrow[0]!.width).toBeCloseTo(1, 1);
    expect(Math.hypot(found.narrow[0]!.x, found.narrow[0]!.y)).toBeLessThan(0.1);
    const needle = drawn((pen) =>
      polygon(pen, [
        [0, -40],
        [6, 0],
        [-6, 0],
      ]),
    );
    expect((await soundness(sheetOf(needle), LEAST)).sound).toBe(true);
  });

  test('a window beyond the rim, and one beyond the sheet', async () => {
    const windows = drawn((pen) => rectangle(pen, 0, 0, 30, 10));
    expect(await soundness(sheetOf(windows, 20), { ...LEAST, rim: 20 })).toMatchObject({ sound: true, outside: 0 });
    expect(await soundness(sheetOf(windows, 20), { ...LEAST, rim: 20.1 })).toMatchObject({ sound: false, outside: 1 });
    const out = { ...sheetOf(windows), outline: { left: 0, top: -30, right: 40, bottom: 30 } };
    expect(await soundness(out, LEAST)).toMatchObject({ sound: false, outside: 1 });
  });

  test('areas kept and cut agree with clipper2 and with the exact integrals', () => {
    const { outline, windows } = sheetOf([...cShape(3), ...drawn((pen) => circle(pen, 60, 0, 18))]);
    const paths = (piece: Piece): PathD[] =>
      piece.map((ring: Ring) => flatten(ring, 0.0005).map(([x, y]) => ({ x, y })));
    const frame: PathD = [
      { x: outline.left, y: outline.top },
      { x: outline.right, y: outline.top },
      { x: outline.right, y: outline.bottom },
      { x: outline.left, y: outline.bottom },
    ];
    const kept = areaPathsD(differenceD([frame], windows.flatMap(paths), FillRule.NonZero, 4));
    const exact = areaPathsD([frame]) - windows.reduce((sum, piece) => sum + pieceArea(piece), 0);
    expect(Math.abs(kept - exact)).toBeLessThan(0.1);
    // A circle of four cubics is larger than π r² by under 0.06 % (largest radial error 0.0272530 %).
    expect(ringArea(drawn((pen) => circle(pen, 0, 0, 18))[0]![0]!) / (Math.PI * 18 ** 2)).toBeCloseTo(1, 3);
    expect(ringArea(reversedRing(windows[0]![0]!))).toBeLessThan(0);
  });
});

test('an opening inside another is found, and one in the hole of another is not one', async () => {
  const disc = drawn((pen) => circle(pen, 0, 0, 40));
  const dot = drawn((pen) => circle(pen, 5, 3, 3));
  const found = await soundness(sheetOf([...disc, ...dot]), LEAST);
  expect(found.sound).toBe(false);
  expect(found.weak).toMatchObject([{ width: 0 }]);
  const ring = drawn((pen) => {
    circle(pen, 0, 0, 40);
    circle(pen, 0, 0, 30);
  });
  expect((await soundness(sheetOf([...ring, ...dot]), LEAST)).weak).toEqual([]);
});
