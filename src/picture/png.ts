import { type Opened, refused } from './refused.ts';

const SIGNATURE = 8;
/** Length, name and check sum of a chunk, bytes. */
const FRAME = 12;
/** Samples of a pixel by colour type; ISO/IEC 15948, 11.2.2. */
const SAMPLES: Record<number, number> = { 0: 1, 2: 3, 3: 1, 4: 2, 6: 4 };
/** Start and step of the seven passes of an interlaced picture, across and down; ISO/IEC 15948, 8.2. */
const PASSES = [
  [0, 8, 0, 8],
  [4, 8, 0, 8],
  [0, 4, 4, 8],
  [2, 4, 0, 4],
  [0, 2, 2, 4],
  [1, 2, 0, 2],
  [0, 1, 1, 2],
] as const;

interface Head {
  width: number;
  height: number;
  /** Bits of a pixel. */
  bits: number;
  interlaced: boolean;
}

/** Bytes of the picture unpacked: every row with the byte that names its filter. */
function unpackedSize({ width, height, bits, interlaced }: Head): number {
  const passes = interlaced ? PASSES : ([[0, 1, 0, 1]] as const);
  let size = 0;
  for (const [left, across, top, down] of passes) {
    const wide = Math.ceil((width - left) / across);
    const high = Math.ceil((height - top) / down);
    if (wide > 0 && high > 0) size += high * (1 + Math.ceil((wide * bits) / 8));
  }
  return size;
}

/** What may be packed beyond the picture itself: some programs add a little, bytes. */
const BEYOND = 65_536;

/** Whether packed bytes hold a picture of this size and hardly more: looked at in pieces, so that a small file cannot unpack to a huge one. */
async function holds(packed: readonly Uint8Array[], size: number): Promise<boolean> {
  const { Unzlib } = await import('fflate');
  const most = size + BEYOND;
  let found = 0;
  const unpack = new Unzlib((piece) => {
    found += piece.length;
  });
  try {
    for (const whole of packed)
      for (let at = 0; at < whole.length && found <= most; at += 16_384) unpack.push(whole.subarray(at, at + 16_384));
  } catch {
    return false;
  }
  return found >= size && found <= most;
}

export function openPng(bytes: Uint8Array): Opened {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let head: Head | undefined;
  const packed: Uint8Array[] = [];
  let at = SIGNATURE;
  for (let name = ''; name !== 'IEND'; ) {
    if (at + FRAME > bytes.length) return refused('short');
    const length = view.getUint32(at);
    name = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    if (at + FRAME + length > bytes.length) return refused('short');
    if (name === 'IHDR' && length === 13) {
      const samples = SAMPLES[bytes[at + 17]!];
      if (samples === undefined) return refused('broken');
      head = {
        width: view.getUint32(at + 8),
        height: view.getUint32(at + 12),
        bits: bytes[at + 16]! * samples,
        interlaced: bytes[at + 20] === 1,
      };
    } else if (head === undefined) return refused('broken');
    if (name === 'IDAT') packed.push(bytes.subarray(at + 8, at + 8 + length));
    at += FRAME + length;
  }
  if (head === undefined || head.width === 0 || head.height === 0 || packed.length === 0) return refused('broken');
  const { width, height } = head;
  const known = head;
  return {
    ok: true,
    width,
    height,
    async decode() {
      if (!(await holds(packed, unpackedSize(known)))) return refused('broken');
      const { PNG } = await import('pngjs');
      try {
        const { data } = PNG.sync.read(Buffer.from(bytes.buffer, bytes.byteOffset, at));
        return { ok: true, raster: { width, height, data: new Uint8Array(data.buffer, data.byteOffset, data.length) } };
      } catch {
        return refused('broken');
      }
    },
  };
}
