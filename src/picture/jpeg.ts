import type { Raster } from './raster.ts';
import { type Opened, refused } from './refused.ts';
import { type Lie, upright } from './upright.ts';

/** What unpacking may take, MB: 40 million pixels of four colours, and what the decoder keeps of them on the way. */
const MEMORY = 1200;

const END_OF_PICTURE = 0xd9;
const START_OF_SCAN = 0xda;
const APP1 = 0xe1;
/** Baseline, extended, progressive; ITU-T T.81, table B.1. The other frames are lossless, in steps, or coded by arithmetic. */
const READ = [0xc0, 0xc1, 0xc2];
const isFrame = (marker: number): boolean => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
/** Markers that stand alone: TEM, and the restarts. */
const isAlone = (marker: number): boolean => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7);

/** How the picture lies, from the orientation tag (0x0112) of an EXIF segment; upright where it does not say. */
function lieOf(segment: Uint8Array): Lie {
  const upright: Lie = 1;
  if (String.fromCharCode(...segment.subarray(0, 6)) !== 'Exif\0\0') return upright;
  const tiff = new DataView(segment.buffer, segment.byteOffset + 6, segment.byteLength - 6);
  if (tiff.byteLength < 8) return upright;
  const little = tiff.getUint16(0) === 0x4949;
  const first = tiff.getUint32(4, little);
  if (first + 2 > tiff.byteLength) return upright;
  const entries = tiff.getUint16(first, little);
  for (let n = 0, at = first + 2; n < entries && at + 12 <= tiff.byteLength; n++, at += 12) {
    if (tiff.getUint16(at, little) !== 0x0112) continue;
    const value = tiff.getUint16(at + 8, little);
    return value >= 1 && value <= 8 ? (value as Lie) : upright;
  }
  return upright;
}

const hasEnd = (bytes: Uint8Array, from: number): boolean => {
  for (let at = bytes.length - 2; at >= from; at--)
    if (bytes[at] === 0xff && bytes[at + 1] === END_OF_PICTURE) return true;
  return false;
};

export function openJpeg(bytes: Uint8Array): Opened {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let lie: Lie = 1;
  let size: { width: number; height: number } | undefined;
  for (let at = 2; ; ) {
    if (at + 4 > bytes.length) return refused('short');
    if (bytes[at] !== 0xff) return refused('broken');
    const marker = bytes[at + 1]!;
    if (marker === 0xff || isAlone(marker)) {
      at += marker === 0xff ? 1 : 2;
      continue;
    }
    if (marker === START_OF_SCAN) {
      if (!hasEnd(bytes, at)) return refused('short');
      break;
    }
    const length = view.getUint16(at + 2);
    if (length < 2) return refused('broken');
    if (at + 2 + length > bytes.length) return refused('short');
    if (marker === APP1) lie = lieOf(bytes.subarray(at + 4, at + 2 + length));
    if (isFrame(marker)) {
      if (!READ.includes(marker) || (length > 2 && bytes[at + 4] !== 8)) return refused('other');
      if (length < 8) return refused('broken');
      size = { width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
    }
    at += 2 + length;
  }
  if (size === undefined) return refused('broken');
  const { width, height } = size;
  if (width === 0) return refused('broken');
  // The height may be told after the first scan; nothing that makes pictures today does so.
  if (height === 0) return refused('other');
  return {
    ok: true,
    ...(lie >= 5 ? { width: height, height: width } : size),
    async decode() {
      const { default: jpeg } = await import('jpeg-js');
      try {
        const { data } = jpeg.decode(bytes, {
          useTArray: true,
          formatAsRGBA: true,
          tolerantDecoding: false,
          maxMemoryUsageInMB: MEMORY,
        });
        const raster: Raster = { width, height, data };
        return { ok: true, raster: upright(raster, lie) };
      } catch {
        return refused('broken');
      }
    },
  };
}
