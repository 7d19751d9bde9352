import { describe, expect, test } from 'vitest';
import { FONTS, faceOf, PRINTABLE, peerOf, tablesOf, trueType } from './fonts.ts';

/** Kerning of every pair of printable ASCII characters that is not nought, by fontkit, with ligatures and the like left off. */
function peerKerning(bytes: Uint8Array): Record<string, number> {
  const peer = peerOf(bytes);
  const pairs: Record<string, number> = {};
  for (const left of PRINTABLE) {
    for (const right of PRINTABLE) {
      const { glyphs, positions } = peer.layout(left + right, { liga: false, clig: false, calt: false, kern: true });
      if (glyphs.length !== 2) throw new Error(`fontkit joins ${left}${right}`);
      const by = positions[0]!.xAdvance - glyphs[0]!.advanceWidth;
      if (by !== 0) pairs[left + right] = by;
    }
  }
  return pairs;
}

async function ourKerning(bytes: Uint8Array): Promise<Record<string, number>> {
  const face = await faceOf(bytes);
  const pairs: Record<string, number> = {};
  for (const left of PRINTABLE) {
    for (const right of PRINTABLE) {
      const by = face.kern(face.letter(left)!, face.letter(right)!, 'latn');
      if (by !== 0) pairs[left + right] = by;
    }
  }
  return pairs;
}

describe('kerning is what fontkit reads from the same font', () => {
  // The second lookup of the first two faces adds pairs that the first one covers with nought.
  test.each([
    ['Libre Baskerville', FONTS.baskerville, 1500],
    ['Barlow', FONTS.barlow, 700],
    ['Saira Stencil One', FONTS.stencil, 200],
  ])('%s, all 8836 pairs', async (_, bytes, least) => {
    const pairs = await ourKerning(bytes);
    expect(Object.keys(pairs).length).toBeGreaterThan(least);
    expect(pairs).toEqual(peerKerning(bytes));
  });

  test('lookups that lie far off (extension, type 9)', async () => {
    const tables = tablesOf(FONTS.stencil);
    const far = trueType(new Map([...tables, ['GPOS', extended(Buffer.from(tables.get('GPOS')!))]]));
    const pairs = await ourKerning(far);
    expect(pairs).toEqual(peerKerning(far));
    expect(pairs).toEqual(await ourKerning(FONTS.stencil));
  });

  test('a font with nothing but the older table', async () => {
    const tables = tablesOf(FONTS.baskerville);
    tables.delete('GPOS');
    const peer = peerOf(FONTS.baskerville);
    const index = (character: string) => peer.glyphForCodePoint(character.codePointAt(0)!).id;
    tables.set(
      'kern',
      olderTable(
        [
          ['A', 'V', -120],
          ['T', 'o', -90],
          ['V', 'A', -110],
        ].map(([l, r, by]) => [index(String(l)), index(String(r)), Number(by)]),
      ),
    );
    const old = trueType(tables);
    expect(await ourKerning(old)).toEqual({ AV: -120, To: -90, VA: -110 });
    expect(peerKerning(old)).toEqual({ AV: -120, To: -90, VA: -110 });
  });

  test('a font with neither is set without', async () => {
    const tables = tablesOf(FONTS.baskerville);
    tables.delete('GPOS');
    expect(await ourKerning(trueType(tables))).toEqual({});
  });
});

/** The same table with every lookup of pairs turned into pointers to its parts (OpenType 1.9, lookup type 9). */
function extended(gpos: Buffer): Buffer {
  const list = gpos.readUInt16BE(8);
  const parts: Buffer[] = [gpos];
  let end = gpos.length;
  for (let n = 0; n < gpos.readUInt16BE(list); n++) {
    const lookup = list + gpos.readUInt16BE(list + 2 + 2 * n);
    if (gpos.readUInt16BE(lookup) !== 2) continue;
    gpos.writeUInt16BE(9, lookup);
    for (let k = 0; k < gpos.readUInt16BE(lookup + 4); k++) {
      const at = lookup + 6 + 2 * k;
      const pointer = Buffer.alloc(8);
      pointer.writeUInt16BE(1, 0);
      pointer.writeUInt16BE(2, 2);
      // The part itself follows its pointer.
      const part = lookup + gpos.readUInt16BE(at);
      const copy = gpos.subarray(part);
      pointer.writeUInt32BE(8, 4);
      gpos.writeUInt16BE(end - lookup, at);
      parts.push(pointer, Buffer.from(copy));
      end += 8 + copy.length;
    }
  }
  return Buffer.concat(parts);
}

/** A `kern` table of version 0, format 0 (OpenType 1.9, "kern"). */
function olderTable(pairs: number[][]): Buffer {
  const sorted = [...pairs].sort((a, b) => a[0]! - b[0]! || a[1]! - b[1]!);
  const table = Buffer.alloc(4 + 14 + 6 * sorted.length);
  table.writeUInt16BE(1, 2);
  table.writeUInt16BE(14 + 6 * sorted.length, 6);
  table.writeUInt16BE(1, 8);
  table.writeUInt16BE(sorted.length, 10);
  const power = 2 ** Math.floor(Math.log2(sorted.length));
  table.writeUInt16BE(6 * power, 12);
  table.writeUInt16BE(Math.log2(power), 14);
  table.writeUInt16BE(6 * (sorted.length - power), 16);
  sorted.forEach(([left, right, by], n) => {
    table.writeUInt16BE(left!, 18 + 6 * n);
    table.writeUInt16BE(right!, 20 + 6 * n);
    table.writeInt16BE(by!, 22 + 6 * n);
  });
  return table;
}
