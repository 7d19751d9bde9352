import { Resvg } from '@resvg/resvg-js';
import { expect, test } from 'vitest';
import { pieceArea } from '../../src/geometry/measure.ts';
import { FONTS, faceOf, peerOf } from './fonts.ts';

const CAPITALS = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789'];

/** Counted on the published outlines of plain serif faces (Libre Baskerville and others) by filling the background: A D O P Q R 0 4 6 9 one each, B and 8 two. */
const ISLANDS: Record<string, number> = Object.fromEntries([
  ...[...'ADOPQR0469'].map((one) => [one, 1]),
  ...[...'B8'].map((one) => [one, 2]),
]);

const holes = (pieces: { length: number }[]): number => pieces.reduce((sum, { length }) => sum + length - 1, 0);

test('islands of every capital and figure of Libre Baskerville', async () => {
  const face = await faceOf();
  for (const character of CAPITALS)
    expect(holes(face.letter(character)!.pieces), character).toBe(ISLANDS[character] ?? 0);
});

/** Islands of an outline by flood: parts of the ground, in a picture by resvg, that the ground round it does not reach. */
function flooded(outline: string, em: number): number {
  const size = 300;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${size}" height="${size}" viewBox="${-em / 2} ${-em / 2} ${2 * em} ${2 * em}"><path d="${outline}"/></svg>`;
  const bytes = new Resvg(svg).render().pixels;
  const free = Array.from({ length: size * size }, (_, at) => bytes[4 * at + 3]! < 128);
  let parts = 0;
  for (let start = 0; start < free.length; start++) {
    if (!free[start]) continue;
    parts++;
    const open = [start];
    free[start] = false;
    for (let at = open.pop(); at !== undefined; at = open.pop()) {
      const x = at % size;
      for (const next of [x > 0 ? at - 1 : -1, x < size - 1 ? at + 1 : -1, at - size, at + size]) {
        if (!free[next]) continue;
        free[next] = false;
        open.push(next);
      }
    }
  }
  return parts - 1;
}

test.each(Object.entries(FONTS))(
  '%s: as many islands as a flood finds in the outlines that fontkit reads',
  async (_, bytes) => {
    const [face, peer] = [await faceOf(bytes), peerOf(bytes)];
    for (const character of [...CAPITALS, ...'abdegopq&@'])
      expect(holes(face.letter(character)!.pieces), character).toBe(
        flooded(peer.glyphForCodePoint(character.codePointAt(0)!).path.toSVG(), face.unitsPerEm),
      );
  },
);

test('a stencil face has none, in capitals, figures and small letters', async () => {
  const face = await faceOf(FONTS.stencil);
  for (const character of [...CAPITALS, ...'abcdefghijklmnopqrstuvwxyz&@']) {
    const { pieces } = face.letter(character)!;
    expect(holes(pieces), character).toBe(0);
    for (const piece of pieces) expect(pieceArea(piece), character).toBeGreaterThan(100);
  }
});
