import { encode as encodeJpeg } from 'jpeg-js';
import { PNG } from 'pngjs';
import { decodePicture } from '../../../src/picture/decode.ts';
import { dominantColours } from '../../../src/picture/dominant.ts';
import { changeBytes } from '../change.ts';
import { type Kind, saidOf } from '../kind.ts';

const WIDE = 48;
const HIGH = 32;
const data = Buffer.from(
  Array.from({ length: WIDE * HIGH }, (_, at) => [(at * 5) % 256, (at * 3) % 200, at % 90, 255]).flat(),
);
const png = (colorType: 0 | 2 | 4 | 6): Uint8Array => {
  const picture = new PNG({ width: WIDE, height: HIGH });
  picture.data = data;
  return new Uint8Array(PNG.sync.write(picture, { colorType }));
};
const PNGS = ([0, 2, 4, 6] as const).map(png);
const JPEGS = [20, 90].map((quality) => new Uint8Array(encodeJpeg({ width: WIDE, height: HIGH, data }, quality).data));

/** The check sum of a chunk (ISO/IEC 15948, 5.5 and annex D). */
function crc(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return ~sum >>> 0;
}

/** Damage within the chunks of a PNG that its check sums do not tell. */
function withSums(png: Uint8Array): Uint8Array {
  const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
  for (let at = 8; at + 12 <= png.length; ) {
    const end = at + 8 + view.getUint32(at);
    if (end + 4 > png.length) break;
    view.setUint32(end, crc(png.subarray(at + 4, end)));
    at = end + 4;
  }
  return png;
}

const kind: Kind = {
  says: 'pictures (PNG, JPEG) cut short and with bits turned',
  share: 60,
  limit: 2,
  ending: 'picture',
  make(random) {
    const head = random.chance(0.6);
    if (random.chance(0.5)) return changeBytes(random.pick(JPEGS), random, 0, head ? 0.5 : 1);
    const png = changeBytes(random.pick(PNGS), random, 0, head ? 0.1 : 1);
    return random.chance(0.7) ? withSums(png) : png;
  },
  async run(bytes) {
    const read = await decodePicture(bytes, 'floor.jpg');
    if (!read.ok) return saidOf(read);
    const { width, height, data: pixels } = read.value;
    if (pixels.length !== 4 * width * height)
      throw new Error(`${pixels.length} bytes for ${width} by ${height} pixels`);
    dominantColours(read.value, 4);
    return { ended: 'taken', lines: [] };
  },
};

export default kind;
