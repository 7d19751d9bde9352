import { Resvg } from '@resvg/resvg-js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pointOnCurve } from '../../src/geometry/flatten.ts';
import { pieceArea } from '../../src/geometry/measure.ts';
import { ringsOf } from '../../src/lettering/outline.ts';
import { FONTS, faceOf, peerOf } from './fonts.ts';

test('a quadratic curve and the cubic it becomes are the same at every point', () => {
  const number = fc.integer({ min: -2000, max: 2000 });
  fc.assert(
    fc.property(
      number,
      number,
      number,
      number,
      number,
      number,
      fc.double({ min: 0, max: 1, noNaN: true }),
      (ax, ay, x1, y1, x, y, t) => {
        const [ring] = ringsOf([
          { type: 'M', x: ax, y: ay },
          { type: 'Q', x1, y1, x, y },
          { type: 'L', x: x + 1, y: y + 1 },
          { type: 'Z' },
        ]);
        const side = ring!.sides[0]!;
        if (side.kind !== 'curve') throw new Error('no curve');
        const [px, py] = pointOnCurve(ring!.start, side, t);
        const u = 1 - t;
        expect(px).toBeCloseTo(u * u * ax + 2 * u * t * x1 + t * t * x, 9);
        expect(-py).toBeCloseTo(u * u * ay + 2 * u * t * y1 + t * t * y, 9);
      },
    ),
  );
});

test('outlines close themselves, and lines of no length are left out', () => {
  const rings = ringsOf([
    { type: 'M', x: 0, y: 0 },
    { type: 'L', x: 0, y: 0 },
    { type: 'L', x: 10, y: 0 },
    { type: 'L', x: 10, y: 10 },
    { type: 'M', x: 50, y: 50 },
    { type: 'L', x: 50, y: 50 },
    { type: 'Z' },
  ]);
  expect(rings).toEqual([
    {
      start: [0, -0],
      sides: [
        { kind: 'line', to: [10, -0] },
        { kind: 'line', to: [10, -10] },
        { kind: 'line', to: [0, -0] },
      ],
    },
  ]);
});

/** Area that resvg fills of an outline as fontkit writes it, counted in pixels; font units. */
function filled(outline: string, width: number, height: number): number {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="1000" height="1000" viewBox="${-width} ${-height} ${3 * width} ${3 * height}" preserveAspectRatio="none"><path d="${outline}"/></svg>`;
  const { pixels } = new Resvg(svg).render();
  const bytes = pixels;
  let covered = 0;
  for (let at = 3; at < bytes.length; at += 4) covered += bytes[at]! / 255;
  return (covered * 9 * width * height) / 1_000_000;
}

describe('areas of letters against pixels that resvg fills of the outlines that fontkit reads', () => {
  test.each(Object.entries(FONTS))('%s', async (_, bytes) => {
    const [face, peer] = [await faceOf(bytes), peerOf(bytes)];
    for (const character of 'AHOQRagß&8409') {
      const letter = face.letter(character);
      if (!letter) continue;
      const outline = peer.glyphForCodePoint(character.codePointAt(0)!).path.toSVG();
      const area = letter.pieces.reduce((sum, piece) => sum + pieceArea(piece), 0);
      expect(filled(outline, face.unitsPerEm, face.unitsPerEm) / area, character).toBeCloseTo(1, 2);
    }
  });
});
