import fc from 'fast-check';
import * as opentype from 'opentype.js/dist/opentype.mjs';
import { describe, expect, test } from 'vitest';
import { pieceArea, piecesBox } from '../../src/geometry/measure.ts';
import { openFace } from '../../src/lettering/face.ts';
import { setLetters } from '../../src/lettering/set.ts';
import { FONTS, faceOf, PACKED, PRINTABLE, peerOf, tablesOf, trueType } from './fonts.ts';

describe('what a face says of itself', () => {
  // OS/2 sCapHeight (OpenType 1.9) is the maker's own figure; fontkit reads it and the box of the H.
  test.each(Object.entries(FONTS))('%s: cap height and advances as fontkit reads them', async (_, bytes) => {
    const [face, peer] = [await faceOf(bytes), peerOf(bytes)];
    expect(face.unitsPerEm).toBe(peer.unitsPerEm);
    expect(face.name).toBe(peer.fullName);
    expect(face.capHeight).toBe(peer.glyphForCodePoint(72).bbox.maxY);
    expect(Math.abs(face.capHeight - peer.capHeight)).toBeLessThanOrEqual(1);
    for (const character of PRINTABLE) {
      const glyph = peer.glyphForCodePoint(character.codePointAt(0)!);
      expect(face.letter(character), character).toMatchObject({ index: glyph.id, advance: glyph.advanceWidth });
    }
  });

  test.each(Object.entries(FONTS))('%s: every letter reaches as far as fontkit says', async (_, bytes) => {
    const [face, peer] = [await faceOf(bytes), peerOf(bytes)];
    for (const character of PRINTABLE) {
      const { minX, minY, maxX, maxY } = peer.glyphForCodePoint(character.codePointAt(0)!).path.bbox;
      const box = piecesBox(face.letter(character)!.pieces);
      for (const [ours, theirs] of [
        [box.left, minX],
        [box.right, maxX],
        [-box.top, maxY],
        [-box.bottom, minY],
      ])
        expect(ours, character).toBeCloseTo(theirs!, 2);
    }
  });

  test('the face that comes with the tool is Libre Baskerville', async () => {
    expect((await faceOf()).name).toBe('Libre Baskerville Regular');
    expect((await faceOf()).letter('ß')).toBeDefined();
    expect((await faceOf()).letter('Ж')).toBeUndefined();
  });

  test('a .woff and the .ttf inside it are the same face', async () => {
    const [packed, plain] = [await faceOf(FONTS.baskerville), await faceOf(trueType(tablesOf(FONTS.baskerville)))];
    for (const character of 'Ag8&') expect(plain.letter(character)).toEqual(packed.letter(character));
  });
});

/** A font of one capital, the H, made of two strokes that cross, written as .otf (cubic outlines) by opentype.js. */
function crossedFont(): Uint8Array {
  const bar = (path: opentype.Path, left: number, bottom: number, right: number, top: number) => {
    path.moveTo(left, bottom);
    path.lineTo(right, bottom);
    path.lineTo(right, top);
    path.lineTo(left, top);
    path.close();
  };
  const path = new opentype.Path();
  bar(path, 100, 300, 700, 400);
  bar(path, 350, 0, 450, 700);
  const round = new opentype.Path();
  round.moveTo(0, 0);
  round.curveTo(0, 400, 300, 700, 700, 700);
  round.lineTo(700, 0);
  round.close();
  const glyphs = [
    new opentype.Glyph({ name: '.notdef', advanceWidth: 800, path: new opentype.Path() }),
    new opentype.Glyph({ name: 'H', unicode: 72, advanceWidth: 800, path }),
    new opentype.Glyph({ name: 'I', unicode: 73, advanceWidth: 800, path: round }),
    new opentype.Glyph({ name: 'x', unicode: 120, advanceWidth: 800, path: new opentype.Path() }),
  ];
  const font = new opentype.Font({
    familyName: 'Crossed',
    styleName: 'Regular',
    unitsPerEm: 1000,
    ascender: 800,
    descender: -200,
    glyphs,
  });
  return new Uint8Array(font.toArrayBuffer());
}

describe('an .otf file', () => {
  test('is read, and strokes that cross are united', async () => {
    const face = await faceOf(crossedFont());
    const [piece, ...more] = face.letter('H')!.pieces;
    expect(more).toEqual([]);
    // Two bars of 600 × 100 and 100 × 700 less the 100 × 100 that they share.
    expect(pieceArea(piece!)).toBeCloseTo(600 * 100 + 100 * 700 - 100 * 100, 6);
    expect(piece![0]!.sides).toHaveLength(12);
  });

  test('keeps its cubic curves as they are', async () => {
    const sides = (await faceOf(crossedFont()))
      .letter('I')!
      .pieces.flat()
      .flatMap(({ start, sides }) => [start, ...sides]);
    expect(JSON.stringify(sides)).toMatch(/"curve"/);
    expect(pieceArea((await faceOf(crossedFont())).letter('I')!.pieces[0]!)).toBeCloseTo(areaUnder(), 6);
  });

  test('a letter without an outline is missing', async () => {
    const done = await setLetters('Hx', await faceOf(crossedFont()), { capHeight: 10, arc: 0 });
    expect(done).toMatchObject({
      ok: false,
      issues: [{ code: 'lettering/missing', says: expect.stringContaining('“x” (U+0078)') }],
    });
  });
});

/** Area under the curve of the made font, by Simpson's rule on y dx. */
function areaUnder(): number {
  const at = (p: number[], t: number) => {
    const u = 1 - t;
    return u ** 3 * p[0]! + 3 * u * u * t * p[1]! + 3 * u * t * t * p[2]! + t ** 3 * p[3]!;
  };
  const slope = (p: number[], t: number) => {
    const u = 1 - t;
    return 3 * (u * u * (p[1]! - p[0]!) + 2 * u * t * (p[2]! - p[1]!) + t * t * (p[3]! - p[2]!));
  };
  const [xs, ys] = [
    [0, 0, 300, 700],
    [0, 400, 700, 700],
  ];
  const steps = 1000;
  let sum = 0;
  for (let n = 0; n <= steps; n++) {
    const weight = n === 0 || n === steps ? 1 : n % 2 === 1 ? 4 : 2;
    sum += weight * at(ys, n / steps) * slope(xs, n / steps);
  }
  return sum / (3 * steps);
}

describe('files that cannot be used, one plain answer each', () => {
  const text = (words: string) => new TextEncoder().encode(words.padEnd(40));
  test.each<[string, Uint8Array, string, RegExp]>([
    ['a .woff2', PACKED, 'lettering/woff2', /packed as \.woff2/],
    ['a collection', text('ttcf'), 'lettering/collection', /several faces/],
    ['a picture', text('\x89PNG'), 'lettering/kind', /no font file/],
    ['a page of text', text('<html>'), 'lettering/kind', /no font file/],
    ['nothing', new Uint8Array(), 'lettering/kind', /nearly empty/],
    ['half a font', FONTS.baskerville.subarray(0, 12_000), 'lettering/font', /damaged/],
    [
      'a font without outlines',
      trueType(new Map([...tablesOf(FONTS.barlow)].filter(([tag]) => tag !== 'glyf'))),
      'lettering/font',
      /damaged/,
    ],
    ['30 MB', new Uint8Array(30_000_000), 'lettering/large', /larger than 20 MB/],
  ])('%s', async (_, bytes, code, says) => {
    const opened = await openFace(bytes);
    expect(opened).toMatchObject({
      ok: false,
      issues: [{ code, path: ['font'], says: expect.stringMatching(says), hint: expect.stringMatching(/\S/) }],
    });
  });

  test('a table that unpacks to more than it says is stopped', async () => {
    const bytes = FONTS.baskerville.slice();
    const view = new DataView(bytes.buffer);
    // The unpacked length of every table is understated by one.
    for (let n = 0; n < view.getUint16(12); n++) view.setUint32(44 + 20 * n + 12, view.getUint32(44 + 20 * n + 12) - 1);
    expect(await openFace(bytes)).toMatchObject({ ok: false, issues: [{ code: 'lettering/font' }] });
  });

  test('a file that says its tables unpack to gigabytes is refused before any is', async () => {
    const bytes = FONTS.baskerville.slice();
    new DataView(bytes.buffer).setUint32(44 + 12, 4_000_000_000);
    expect(await openFace(bytes)).toMatchObject({ ok: false, issues: [{ code: 'lettering/font' }] });
  });

  test('whatever the bytes, an answer comes back', async () => {
    const plain = trueType(tablesOf(FONTS.stencil));
    const change = fc.tuple(fc.nat({ max: plain.length - 1 }), fc.integer({ min: 0, max: 255 }));
    await fc.assert(
      fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 40 }), async (changes) => {
        const bytes = plain.slice();
        for (const [at, value] of changes) bytes[at] = value;
        const opened = await openFace(bytes);
        const done = opened.ok ? await setLetters('Ave 18', opened.value, { capHeight: 50, arc: 30 }) : opened;
        if (done.ok) expect(JSON.stringify(done.value)).not.toMatch(/null/);
        else
          expect(done.issues[0]).toMatchObject({
            code: expect.stringMatching(/^lettering\//),
            hint: expect.stringMatching(/\S/),
          });
      }),
      { numRuns: 60 },
    );
  });
});
