import { readFileSync } from 'node:fs';
import { inflateSync } from 'node:zlib';
import * as fontkit from 'fontkit';
import { type Face, openFace } from '../../src/lettering/face.ts';
import { type LetterSize, type SetText, setLetters } from '../../src/lettering/set.ts';

const file = (path: string): Uint8Array =>
  new Uint8Array(readFileSync(new URL(`../../node_modules/@fontsource/${path}`, import.meta.url)));

/** Published faces (SIL Open Font License) as npm packages carry them. */
export const FONTS = {
  baskerville: file('libre-baskerville/files/libre-baskerville-latin-400-normal.woff'),
  barlow: file('barlow/files/barlow-latin-500-normal.woff'),
  stencil: file('saira-stencil-one/files/saira-stencil-one-latin-400-normal.woff'),
};

export const PACKED = file('libre-baskerville/files/libre-baskerville-latin-400-normal.woff2');

export const PRINTABLE = Array.from({ length: 94 }, (_, n) => String.fromCharCode(33 + n));

/** The same font as another library reads it. */
export const peerOf = (bytes: Uint8Array): fontkit.Font => fontkit.create(Buffer.from(bytes)) as fontkit.Font;

export async function faceOf(bytes?: Uint8Array): Promise<Face> {
  const opened = await openFace(bytes);
  if (!opened.ok) throw new Error(opened.issues.map(({ says }) => says).join('; '));
  return opened.value;
}

export async function set(text: string, face: Face, size: Partial<LetterSize>): Promise<SetText> {
  const done = await setLetters(text, face, { arc: 0, ...size });
  if (!done.ok) throw new Error(done.issues.map(({ says }) => says).join('; '));
  return done.value;
}

export type Tables = Map<string, Uint8Array>;

/** The tables of a .woff file, by Node's zlib (W3C WOFF 1.0, sec. 4 and 5). */
export function tablesOf(woff: Uint8Array): Tables {
  const bytes = Buffer.from(woff);
  const tables: Tables = new Map();
  for (let n = 0; n < bytes.readUInt16BE(12); n++) {
    const at = 44 + 20 * n;
    const [from, packed, length] = [
      bytes.readUInt32BE(at + 4),
      bytes.readUInt32BE(at + 8),
      bytes.readUInt32BE(at + 12),
    ];
    const raw = bytes.subarray(from, from + packed);
    tables.set(bytes.toString('latin1', at, at + 4), packed < length ? inflateSync(raw) : raw);
  }
  return tables;
}

/** The sum of a table's long words (OpenType 1.9, "Calculating Checksums"). */
function checkSum(table: Buffer): number {
  const padded = Buffer.concat([table, Buffer.alloc((4 - (table.length % 4)) % 4)]);
  let sum = 0;
  for (let at = 0; at < padded.length; at += 4) sum = (sum + padded.readUInt32BE(at)) >>> 0;
  return sum;
}

/** A .ttf file of these tables (OpenType 1.9, "Table Directory"). */
export function trueType(tables: Tables): Uint8Array {
  const sorted = [...tables].sort(([a], [b]) => (a < b ? -1 : 1));
  const head = Buffer.alloc(12 + 16 * sorted.length);
  head.writeUInt32BE(0x00010000, 0);
  head.writeUInt16BE(sorted.length, 4);
  const parts: Buffer[] = [head];
  let from = head.length;
  sorted.forEach(([tag, bytes], n) => {
    const table = Buffer.from(bytes);
    const at = 12 + 16 * n;
    head.write(tag, at, 'latin1');
    head.writeUInt32BE(checkSum(table), at + 4);
    head.writeUInt32BE(from, at + 8);
    head.writeUInt32BE(table.length, at + 12);
    const padding = Buffer.alloc((4 - (table.length % 4)) % 4);
    parts.push(table, padding);
    from += table.length + padding.length;
  });
  return new Uint8Array(Buffer.concat(parts));
}
