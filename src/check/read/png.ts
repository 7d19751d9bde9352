import { type Read, read, refuse } from './read.ts';

/** A picture, 8 bits a channel. */
export interface Picture {
  width: number;
  height: number;
  /** Red, green, blue, opacity of each pixel, row by row. */
  pixels: Uint8Array;
}

/** More pixels than this are not opened. */
const MOST_PIXELS = 64_000_000;
const SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
/** Channels by the colour type of the header: grey, red-green-blue, grey with opacity, red-green-blue with opacity. */
const CHANNELS: Record<number, number> = { 0: 1, 2: 3, 4: 2, 6: 4 };

/**
 * Reads a PNG (W3C Portable Network Graphics, third edition) of 8 bits a channel, not interlaced, without a palette.
 * The browser's and Node's own inflater unpacks it, and no more of it than the header announces.
 */
export async function readPng(bytes: Uint8Array): Promise<Read<Picture>> {
  if (SIGNATURE.some((byte, at) => bytes[at] !== byte)) return refuse('the file is not a PNG');
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const packed: Uint8Array[] = [];
  let header: DataView | undefined;
  let ended = false;
  for (let at = 8; at + 12 <= bytes.length && !ended; ) {
    const length = view.getUint32(at);
    const kind = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    if (at + 12 + length > bytes.length) return refuse('the picture is cut short');
    const chunk = bytes.subarray(at + 8, at + 8 + length);
    if (kind === 'IHDR' && length === 13) header = new DataView(chunk.buffer, chunk.byteOffset, length);
    else if (kind === 'IDAT') packed.push(chunk);
    ended = kind === 'IEND';
    at += 12 + length;
  }
  if (!header || !ended) return refuse('the picture is cut short');
  const [width, height] = [header.getUint32(0), header.getUint32(4)];
  const channels = CHANNELS[header.getUint8(9)];
  if (header.getUint8(8) !== 8 || channels === undefined || header.getUint8(12) !== 0) {
    return refuse('the picture is a PNG of a kind that this tool does not write');
  }
  if (width === 0 || height === 0 || width * height > MOST_PIXELS)
    return refuse(`the picture is ${width} × ${height} pixels`);
  const rows = await inflate(packed, height * (1 + width * channels));
  if (rows === undefined) return refuse('the picture is damaged');
  return read({ width, height, pixels: unfilter(rows, width, height, channels) });
}

/** Unpacks just `size` bytes; undefined where there are fewer or they are damaged. */
async function inflate(packed: Uint8Array[], size: number): Promise<Uint8Array | undefined> {
  const out = new Uint8Array(size);
  let filled = 0;
  try {
    const stream = new Blob(packed as BlobPart[]).stream().pipeThrough(new DecompressionStream('deflate'));
    const reader = stream.getReader();
    while (filled < size) {
      const { done, value } = await reader.read();
      if (done) return undefined;
      const part = (value as Uint8Array).subarray(0, size - filled);
      out.set(part, filled);
      filled += part.length;
    }
    await reader.cancel();
    return out;
  } catch {
    return undefined;
  }
}

/** Undoes the five row filters of the standard (clause 9) and spreads the channels to four. */
function unfilter(rows: Uint8Array, width: number, height: number, channels: number): Uint8Array {
  const line = width * channels;
  let above: Uint8Array = new Uint8Array(line);
  const pixels = new Uint8Array(width * height * 4);
  for (let y = 0; y < height; y++) {
    const row = rows.subarray(y * (line + 1) + 1, (y + 1) * (line + 1));
    unfilterRow(rows[y * (line + 1)]!, row, above, channels);
    if (channels === 4) pixels.set(row, y * line);
    else spreadRow(row, pixels.subarray(4 * y * width, 4 * (y + 1) * width), channels);
    above = row;
  }
  return pixels;
}

function unfilterRow(filter: number, row: Uint8Array, above: Uint8Array, channels: number): void {
  const n = row.length;
  if (filter === 2) for (let i = 0; i < n; i++) row[i] = row[i]! + above[i]!;
  else if (filter === 1) for (let i = channels; i < n; i++) row[i] = row[i]! + row[i - channels]!;
  else if (filter === 3 || filter === 4) {
    for (let i = 0; i < n; i++) {
      const left = i >= channels ? row[i - channels]! : 0;
      const corner = i >= channels ? above[i - channels]! : 0;
      row[i] = row[i]! + (filter === 3 ? (left + above[i]!) >> 1 : paeth(left, above[i]!, corner));
    }
  }
}

/** Grey or red-green-blue, with or without opacity, as four channels. */
function spreadRow(row: Uint8Array, out: Uint8Array, channels: number): void {
  const isGrey = channels < 3;
  for (let x = 0; 4 * x < out.length; x++) {
    const at = x * channels;
    for (let c = 0; c < 3; c++) out[4 * x + c] = row[at + (isGrey ? 0 : c)]!;
    out[4 * x + 3] = channels === 2 ? row[at + 1]! : 255;
  }
}

function paeth(left: number, up: number, corner: number): number {
  const guess = left + up - corner;
  const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - corner)];
  return a <= b && a <= c ? left : b <= c ? up : corner;
}
