import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test } from 'vitest';
import { boxHeight, boxWidth, pieceArea, piecesBox } from '../../src/geometry/measure.ts';
import type { Point } from '../../src/geometry/path.ts';
import { setLetters } from '../../src/lettering/set.ts';
import { pathText } from '../../src/write/path.ts';
import { FONTS, faceOf, peerOf, set } from './fonts.ts';

const NAME = 'Dunmore 1908';

describe('size', () => {
  test('a capital set to a height of 3 in is 3 in high (1 in = 25.4 mm, 16 CFR 500.19)', async () => {
    const { box, capHeight, pieces } = await set('H', await faceOf(), { capHeight: 76.2 });
    expect(capHeight).toBe(76.2);
    expect(boxHeight(box)).toBeCloseTo(76.2, 9);
    expect(piecesBox(pieces)).toEqual(box);
  });

  test.each([0, 40, -40, 180])(
    'text set to a width is so wide from its leftmost to its rightmost point; arc %d',
    async (arc) => {
      const { pieces, box } = await set(NAME, await faceOf(), { width: 762, arc });
      expect(boxWidth(box)).toBeCloseTo(762, 5);
      // Measured on a picture drawn by resvg, 0.5 mm to the pixel.
      const { left, right } = inkOf(pieces.map((piece) => pathText(piece)).join(''), 1000);
      expect(right - left).toBeGreaterThan(760);
      expect(right - left).toBeLessThan(764);
    },
  );

  test.each([0, 75])('it is centred on the origin; arc %d', async (arc) => {
    const { box } = await set('Quay', await faceOf(), { capHeight: 50, arc });
    expect(box.left + box.right).toBeCloseTo(0, 6);
    expect(box.top + box.bottom).toBeCloseTo(0, 6);
  });

  test('twice the size is the same, twice as large', async () => {
    const face = await faceOf();
    const [small, large] = [await set(NAME, face, { capHeight: 20 }), await set(NAME, face, { capHeight: 40 })];
    const area = ({ pieces }: typeof small) => pieces.reduce((sum, piece) => sum + pieceArea(piece), 0);
    expect(area(large) / area(small)).toBeCloseTo(4, 9);
    expect(boxWidth(large.box) / boxWidth(small.box)).toBeCloseTo(2, 9);
  });
});

/** The leftmost and rightmost painted pixel of a picture of so many mm, two pixels to the millimetre. */
function inkOf(d: string, span: number): { left: number; right: number } {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${2 * span}" height="${2 * span}" viewBox="${-span / 2} ${-span / 2} ${span} ${span}"><path d="${d}"/></svg>`;
  const image = new Resvg(svg).render();
  const { pixels, width, height } = image;
  const bytes = pixels;
  let [left, right] = [Infinity, -Infinity];
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      if (bytes[4 * (y * width + x) + 3]! < 128) continue;
      left = Math.min(left, x);
      right = Math.max(right, x + 1);
    }
  }
  return { left: left / 2, right: right / 2 };
}

describe('a straight line', () => {
  test('advances and kerning add up as fontkit sets the same line', async () => {
    const text = 'AVATAR, To We LYTIC';
    const { stands, capHeight } = await set(text, await faceOf(), { capHeight: 100 });
    const peer = peerOf(FONTS.baskerville);
    const scale = capHeight / peer.glyphForCodePoint(72).bbox.maxY;
    const { glyphs, positions } = peer.layout(text, { liga: false, clig: false, calt: false });
    let pen = 0;
    const middles = positions.map(({ xAdvance }, n) => {
      const middle = pen + glyphs[n]!.advanceWidth / 2;
      pen += xAdvance;
      return middle * scale;
    });
    expect(stands).toHaveLength(text.length);
    stands.forEach(({ foot, turn }, n) => {
      expect(turn).toBe(0);
      expect(foot[0] - stands[0]!.foot[0]).toBeCloseTo(middles[n]! - middles[0]!, 6);
      expect(foot[1]).toBe(stands[0]!.foot[1]);
    });
  });

  test('“AV” is kerned closer together than “HV”', async () => {
    const face = await faceOf();
    const gap = async (text: string) => {
      const { stands } = await set(text, face, { capHeight: 100 });
      const widths = [...text].map((one) => face.letter(one)!.advance);
      return stands[1]!.foot[0] - stands[0]!.foot[0] - ((widths[0]! + widths[1]!) / 2) * (100 / face.capHeight);
    };
    expect(await gap('AV')).toBeLessThan(-5);
    expect(await gap('HH')).toBeCloseTo(0, 9);
  });
});

/** Centre of the circle through three points (perpendicular bisectors). */
function circleThrough([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): Point {
  const d = 2 * (ax * (by - cy) + bx * (cy - ay) + cx * (ay - by));
  const [a, b, c] = [ax * ax + ay * ay, bx * bx + by * by, cx * cx + cy * cy];
  return [(a * (by - cy) + b * (cy - ay) + c * (ay - by)) / d, (a * (cx - bx) + b * (ax - cx) + c * (bx - ax)) / d];
}

describe('an arc', () => {
  test.each([10, 60, 180, 300, -20, -60, -180])(
    '%d degrees: every letter stands on the circle, turned to it',
    async (arc) => {
      const text = 'THE ROSE AND CROWN';
      const face = await faceOf();
      const [bent, straight] = [
        await set(text, face, { capHeight: 50, arc }),
        await set(text, face, { capHeight: 50 }),
      ];
      const feet = bent.stands.map(({ foot }) => foot);
      const centre = circleThrough(feet[0]!, feet[8]!, feet.at(-1)!);
      const away = ([x, y]: Point) => Math.hypot(x - centre[0], y - centre[1]);
      const radius = away(feet[0]!);
      // The centre lies below text that rises in the middle (y runs down).
      expect(Math.sign(centre[1] - feet[8]![1])).toBe(Math.sign(arc));
      // Radius = length / angle, along the baseline, or where the text sags along the tops of the capitals, 50 mm nearer the centre.
      const inner = radius - (arc < 0 ? 50 : 0);
      expect(inner).toBeCloseTo(boxWidth(straight.box) / Math.abs((arc * Math.PI) / 180), 6);
      bent.stands.forEach(({ foot, turn }, n) => {
        expect(Math.abs(away(foot) - radius), text[n]).toBeLessThan(1e-6);
        // The baseline of the letter runs square to the line to the centre.
        const outward = [(foot[0] - centre[0]) / radius, (foot[1] - centre[1]) / radius] as const;
        expect(outward[0] * Math.cos(turn) + outward[1] * Math.sin(turn), text[n]).toBeCloseTo(0, 9);
        expect(turn - bent.stands[0]!.turn).toBeCloseTo(
          (straight.stands[n]!.foot[0] - straight.stands[0]!.foot[0]) / (Math.sign(arc) * inner),
          9,
        );
      });
      expect(bent.stands[0]!.turn * Math.sign(arc)).toBeLessThan(0);
    },
  );

  test('bending neither adds nor takes area', async () => {
    const face = await faceOf();
    const area = async (arc: number) =>
      (await set(NAME, face, { capHeight: 50, arc })).pieces.reduce((sum, piece) => sum + pieceArea(piece), 0);
    expect((await area(90)) / (await area(0))).toBeCloseTo(1, 9);
    expect((await area(-30)) / (await area(0))).toBeCloseTo(1, 9);
  });

  test('a very slight arc is as good as straight', async () => {
    const face = await faceOf();
    const [bent, straight] = [await set(NAME, face, { width: 500, arc: 1e-7 }), await set(NAME, face, { width: 500 })];
    bent.stands.forEach(({ foot }, n) => {
      expect(foot[0]).toBeCloseTo(straight.stands[n]!.foot[0], 5);
    });
  });
});

describe('text as it is set', () => {
  const same = async (a: string, b: string) => {
    const face = await faceOf();
    expect(await set(a, face, { capHeight: 30 })).toEqual(await set(b, face, { capHeight: 30 }));
  };
  test('an apostrophe is curved', () => same("O'Neill '08", 'O’Neill ’08'));
  test('spaces are single', () => same('  Ann   Lee ', 'Ann Lee'));
  test('loose accents are joined to their letters (Unicode, NFC)', () => same('Chloe\u0308', 'Chlo\u00eb'));
});

describe('what cannot be set', () => {
  test.each<[string, string, object, string, RegExp]>([
    [
      'a character that the face lacks',
      'Жанна',
      { capHeight: 9 },
      'lettering/missing',
      /Libre Baskerville Regular has no “Ж” \(U\+0416\)/,
    ],
    ['nothing', '  ', { capHeight: 9 }, 'lettering/empty', /no text/],
    ['61 characters', 'n'.repeat(61), { capHeight: 9 }, 'lettering/long', /has 61 characters; at most 60/],
    ['letters from right to left', 'שלום', { capHeight: 9 }, 'lettering/script', /“ש” \(U\+05E9\)/],
    ['letters that join', 'سلام', { capHeight: 9 }, 'lettering/script', /“س”/],
    ['control characters', 'a\u0007b', { capHeight: 9 }, 'lettering/script', /the character U\+0007/],
    ['a picture sign', 'Hi 🏠', { capHeight: 9 }, 'lettering/missing', /“🏠” \(U\+1F3E0\)/],
    ['no size', 'Ann', {}, 'lettering/size', /one size/],
    ['both sizes', 'Ann', { capHeight: 9, width: 9 }, 'lettering/size', /one size/],
    ['no height', 'Ann', { capHeight: 0 }, 'lettering/size', /above 0/],
    ['a height that is no number', 'Ann', { capHeight: Number.NaN }, 'lettering/size', /above 0/],
    ['an arc beyond 300 degrees', 'Ann', { capHeight: 9, arc: 301 }, 'lettering/arc', /301 degrees .* -300 to 300/],
    ['an arc that pushes letters together', 'pqpq', { capHeight: 9, arc: 300 }, 'lettering/arc', /run into each other/],
  ])('%s', async (_, text, size, code, says) => {
    const done = await setLetters(text, await faceOf(), { arc: 0, ...size });
    expect(done).toMatchObject({
      ok: false,
      issues: [{ code, says: expect.stringMatching(says), hint: expect.stringMatching(/\S/) }],
    });
  });
});

test('same text, same outlines, no letter that is not a number', async () => {
  const [a, b] = [
    await set(NAME, await faceOf(), { width: 280, arc: 60 }),
    await set(NAME, await faceOf(), { width: 280, arc: 60 }),
  ];
  expect(JSON.stringify(a)).toBe(JSON.stringify(b));
  expect(JSON.stringify(a)).not.toMatch(/null/);
});

test('a stencil face is set without islands, bent or not', async () => {
  for (const arc of [0, 90]) {
    const { pieces } = await set('ABD 0689', await faceOf(FONTS.stencil), { capHeight: 100, arc });
    expect(pieces.every(({ length }) => length === 1)).toBe(true);
  }
});
