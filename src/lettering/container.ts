import { BadFont, damaged } from './bad-font.ts';
import { MOST_BYTES, MOST_TABLES, MOST_UNPACKED } from './limits.ts';
import { unpack } from './unpack.ts';

/** A font file taken apart: what its outlines are, and its tables by their tags. */
export interface Container {
  flavour: string;
  tables: Map<string, Uint8Array>;
}

const TRUE_TYPE = '\0\x01\0\0';
const COMPACT = 'OTTO';

const tagAt = (bytes: Uint8Array, at: number): string => String.fromCharCode(...bytes.subarray(at, at + 4));

/** What other files there are that people take for a font, each with what to give instead. */
function refuseKind(signature: string): never {
  const files = 'a .ttf, .otf or .woff file of the same face';
  if (signature === 'wOF2')
    throw new BadFont('woff2', 'this font is packed as .woff2, which cannot be read here', files);
  if (signature === 'ttcf')
    throw new BadFont('collection', 'this file holds several faces (a .ttc collection), and one is needed', files);
  throw new BadFont('kind', 'this is no font file: it begins like none of .ttf, .otf or .woff', files);
}

function stretch(bytes: Uint8Array, from: number, length: number): Uint8Array {
  if (from + length > bytes.length) throw damaged();
  return bytes.subarray(from, from + length);
}

/**
 * Takes a .ttf, .otf or .woff file apart (OpenType 1.9, "Table Directory"; W3C WOFF 1.0, sec. 3 and 4). Table contents are not looked at.
 * @throws BadFont
 */
export async function openContainer(bytes: Uint8Array): Promise<Container> {
  if (bytes.length > MOST_BYTES)
    throw new BadFont(
      'large',
      'this font is larger than 20 MB, which no face for letters needs',
      'a smaller font file',
    );
  if (bytes.length < 12)
    throw new BadFont('kind', 'this is no font file: it is nearly empty', 'a .ttf, .otf or .woff file');
  const packed = tagAt(bytes, 0) === 'wOFF';
  const flavour = tagAt(bytes, packed ? 4 : 0);
  if (flavour !== TRUE_TYPE && flavour !== COMPACT && flavour !== 'true') refuseKind(flavour);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = view.getUint16(packed ? 12 : 4);
  const [start, step] = packed ? [44, 20] : [12, 16];
  if (count > MOST_TABLES || start + count * step > bytes.length) throw damaged();
  const tables = new Map<string, Uint8Array>();
  let room = MOST_UNPACKED;
  for (let n = 0; n < count; n++) {
    const at = start + n * step;
    const length = view.getUint32(at + 12);
    const stored = packed ? view.getUint32(at + 8) : length;
    const from = view.getUint32(at + (packed ? 4 : 8));
    room -= length;
    if (room < 0 || stored > length) throw damaged();
    const raw = stretch(bytes, from, stored);
    tables.set(tagAt(bytes, at), stored < length ? await unpack(raw, length) : raw);
  }
  return { flavour: flavour === 'true' ? TRUE_TYPE : flavour, tables };
}

const padded = (length: number): number => (length + 3) & ~3;

/** A plain font file of some of the tables, in their usual order. Check sums are left at nought; nobody reads them here. */
export function packContainer({ flavour, tables }: Container, wanted: readonly string[]): ArrayBuffer {
  const kept = [...tables].filter(([tag]) => wanted.includes(tag)).sort(([a], [b]) => (a < b ? -1 : 1));
  const head = 12 + 16 * kept.length;
  const bytes = new Uint8Array(kept.reduce((sum, [, table]) => sum + padded(table.length), head));
  const view = new DataView(bytes.buffer);
  const write = (tag: string, at: number) => {
    for (let n = 0; n < 4; n++) bytes[at + n] = tag.charCodeAt(n);
  };
  write(flavour, 0);
  view.setUint16(4, kept.length);
  let from = head;
  kept.forEach(([tag, table], n) => {
    const at = 12 + 16 * n;
    write(tag, at);
    view.setUint32(at + 8, from);
    view.setUint32(at + 12, table.length);
    bytes.set(table, from);
    from += padded(table.length);
  });
  return bytes.buffer;
}
