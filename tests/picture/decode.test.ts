import { crc32, deflateSync } from 'node:zlib';
import { Resvg } from '@resvg/resvg-js';
import jpeg from 'jpeg-js';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { decodePicture } from '../../src/picture/decode.ts';
import type { Raster } from '../../src/picture/raster.ts';

const decoded = async (bytes: Uint8Array): Promise<Raster> => {
  const found = await decodePicture(bytes, 'a picture');
  if (!found.ok) throw new Error(found.issues[0]!.says);
  return found.value;
};

const refusal = async (bytes: Uint8Array, name = 'floor.jpg') => {
  const found = await decodePicture(bytes, name);
  return found.ok ? undefined : { code: found.issues[0]!.code, says: found.issues[0]!.says };
};

const pixel = ({ width, data }: Raster, x: number, y: number): number[] => [
  ...data.slice(4 * (y * width + x), 4 * (y * width + x) + 4),
];

/** A picture with a colour of its own in every pixel. */
function speckled(width: number, height: number, opaque = true): PNG {
  const png = new PNG({ width, height });
  for (let i = 0; i < png.data.length; i++) png.data[i] = opaque && i % 4 === 3 ? 255 : (i * 7919 + (i >> 3)) % 256;
  return png;
}

/** Fields of 16 by 16 pixels, each of one colour. */
const FIELDS = [
  [200, 30, 40],
  [30, 60, 190],
  [240, 230, 200],
  [20, 90, 50],
  [128, 128, 128],
  [250, 190, 20],
];
const fields = (): { width: number; height: number; data: Uint8Array } => {
  const [width, height] = [48, 32];
  const data = new Uint8Array(4 * width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) data.set([...FIELDS[(x >> 4) + 3 * (y >> 4)]!, 255], 4 * (y * width + x));
  return { width, height, data };
};

/** A chunk of ISO/IEC 15948. */
function chunk(name: string, content: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), content]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(content.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}

function png(
  width: number,
  height: number,
  depth: number,
  kind: number,
  interlaced: boolean,
  rows: Uint8Array,
): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([depth, kind, 0, 0, interlaced ? 1 : 0], 8);
  return Buffer.concat([
    Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

test.each([2, 6] as const)('a PNG of colour type %d, written by pngjs', async (colorType) => {
  const made = speckled(23, 17, colorType === 2);
  const bytes = PNG.sync.write(made, { colorType });
  expect(await decoded(bytes)).toEqual({ width: 23, height: 17, data: new Uint8Array(made.data) });
  // Some programs leave something behind the end of a file.
  expect((await decoded(Buffer.concat([bytes, Buffer.from('more')]))).width).toBe(23);
});

test('an interlaced PNG: the first pixels of an 8 by 8 tile go to the passes that ISO/IEC 15948, 8.2 draws', async () => {
  // The tile as the standard prints it: which pass each pixel is sent in.
  const tile = ['16462646', '77777777', '56565656', '77777777', '36463646', '77777777', '56565656', '77777777'];
  const value = (x: number, y: number) => 31 * y + x;
  const rows: number[] = [];
  for (const pass of '1234567')
    for (let y = 0; y < 8; y++) {
      const sent = [...tile[y]!].flatMap((name, x) => (name === pass ? [value(x, y)] : []));
      if (sent.length > 0) rows.push(0, ...sent);
    }
  const found = await decoded(png(8, 8, 8, 0, true, Uint8Array.from(rows)));
  for (let y = 0; y < 8; y++)
    for (let x = 0; x < 8; x++) expect(pixel(found, x, y)).toEqual([...Array(3).fill(value(x, y)), 255]);
});

test('one bit grey, and sixteen bits colour', async () => {
  const bits = await decoded(png(8, 1, 1, 0, false, Uint8Array.of(0, 0b10110001)));
  expect([...bits.data].filter((_, i) => i % 4 === 0)).toEqual([255, 0, 255, 255, 0, 0, 0, 255]);
  const deep = await decoded(png(1, 1, 16, 2, false, Uint8Array.of(0, 0xff, 0xff, 0x80, 0x80, 0, 0)));
  expect(pixel(deep, 0, 0)).toEqual([255, 128, 0, 255]);
});

test('a JPEG: flat fields keep their colours, and another decoder sees the same', async () => {
  const made = fields();
  const bytes = jpeg.encode(made, 95).data;
  const found = await decoded(bytes);
  expect([found.width, found.height]).toEqual([48, 32]);
  for (const [at, colour] of FIELDS.entries()) {
    const seen = pixel(found, 16 * (at % 3) + 8, 16 * Math.floor(at / 3) + 8);
    for (const [i, value] of [...colour, 255].entries()) expect(Math.abs(seen[i]! - value)).toBeLessThanOrEqual(2);
  }
  // resvg draws pictures with a decoder of its own.
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="48" height="32"><image image-rendering="optimizeSpeed" width="48" height="32" href="data:image/jpeg;base64,${bytes.toString('base64')}"/></svg>`;
  const other = new Resvg(svg, { font: { loadSystemFonts: false } }).render().pixels;
  expect(other.every((value, i) => Math.abs(value - found.data[i]!) <= 3)).toBe(true);
});

/** An EXIF segment with nothing in it but the orientation; CIPA DC-008: TIFF header, one directory, tag 0x0112 of type SHORT. */
function exif(lie: number, little: boolean): Buffer {
  const tiff = Buffer.alloc(26);
  const short = (value: number, at: number) => (little ? tiff.writeUInt16LE(value, at) : tiff.writeUInt16BE(value, at));
  const long = (value: number, at: number) => (little ? tiff.writeUInt32LE(value, at) : tiff.writeUInt32BE(value, at));
  tiff.write(little ? 'II' : 'MM', 'latin1');
  short(42, 2);
  long(8, 4);
  short(1, 8);
  short(0x0112, 10);
  short(3, 12);
  long(1, 14);
  short(lie, 18);
  const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff]);
  return Buffer.concat([Buffer.from([0xff, 0xe1, 0, body.length + 2]), body]);
}

/**
 * Where the first row and the first column of the stored picture are seen; CIPA DC-008, tag Orientation: "the 0th row represents the visual top of the image,
 * and the 0th column represents the visual left-hand side", and so on.
 */
const SEEN: [lie: number, row: string, column: string][] = [
  [1, 'top', 'left'],
  [2, 'top', 'right'],
  [3, 'bottom', 'right'],
  [4, 'bottom', 'left'],
  [5, 'left', 'top'],
  [6, 'right', 'top'],
  [7, 'right', 'bottom'],
  [8, 'left', 'bottom'],
];

test.each(SEEN)(
  'a JPEG of orientation %d has its first row at the %s and its first column at the %s',
  async (lie, row, column) => {
    // Red along the first row, blue in the rest of the first column, grey elsewhere; 16 pixels a field.
    const [width, height] = [64, 48];
    const data = new Uint8Array(4 * width * height);
    for (let y = 0; y < height; y++)
      for (let x = 0; x < width; x++)
        data.set(y < 16 ? [220, 20, 20, 255] : x < 16 ? [20, 20, 220, 255] : [128, 128, 128, 255], 4 * (y * width + x));
    const plain = jpeg.encode({ width, height, data }, 95).data;
    for (const little of [true, false]) {
      const found = await decoded(Buffer.concat([plain.subarray(0, 2), exif(lie, little), plain.subarray(2)]));
      const [wide, high] = lie >= 5 ? [height, width] : [width, height];
      expect([found.width, found.height]).toEqual([wide, high]);
      const colourAt = (x: number, y: number): string => {
        const [r, g, b] = pixel(found, x, y) as [number, number, number];
        return r > g + 90 ? 'red' : b > g + 90 ? 'blue' : 'grey';
      };
      const side: Record<string, [number, number]> = {
        top: [wide / 2, 4],
        bottom: [wide / 2, high - 4],
        left: [4, high / 2],
        right: [wide - 4, high / 2],
      };
      const seen = Object.fromEntries(Object.entries(side).map(([name, [x, y]]) => [name, colourAt(x, y)]));
      expect(seen).toEqual({
        top: 'grey',
        bottom: 'grey',
        left: 'grey',
        right: 'grey',
        [row]: 'red',
        [column]: 'blue',
      });
    }
  },
);

test('what is cut short anywhere is refused, and never thrown on', async () => {
  const whole = { png: PNG.sync.write(speckled(40, 30)), jpeg: jpeg.encode(fields(), 90).data };
  for (const bytes of Object.values(whole))
    for (let length = 10; length < bytes.length; length += Math.ceil(bytes.length / 60))
      expect((await refusal(bytes.subarray(0, length)))?.code).toBe('picture/broken');
  expect((await refusal(whole.jpeg.subarray(0, 400)))?.says).toBe(
    'floor.jpg is a JPEG that was cut short: its end is missing',
  );
});

test('damage is refused or decoded, never thrown', async () => {
  for (const bytes of [PNG.sync.write(speckled(40, 30)), jpeg.encode(fields(), 90).data])
    for (let at = 2; at < bytes.length; at += 7) {
      const damaged = Buffer.from(bytes);
      damaged[at] = damaged[at]! ^ 0xff;
      const found = await decodePicture(damaged, 'x');
      if (!found.ok) expect(found.issues[0]!.code).toMatch(/^picture\/(broken|kind|large)$/);
    }
  const damaged = Buffer.from(PNG.sync.write(speckled(40, 30)));
  damaged[60] = damaged[60]! ^ 0xff;
  expect((await refusal(damaged))?.says).toBe('floor.jpg is a PNG that is damaged inside');
});

test('too large is told from the first bytes', async () => {
  const wide = png(20_000, 3000, 8, 2, false, Uint8Array.of(0));
  expect(await refusal(wide, 'hall.png')).toEqual({
    code: 'picture/large',
    says: 'hall.png has 20000 by 3000 pixels, 60 million; at most 40 million are read',
  });
  expect((await refusal(new Uint8Array(30_000_001)))?.says).toMatch(/holds 30 MB; at most 30 MB/);
});

test('a small PNG that unpacks to more than it shows is refused', async () => {
  for (const interlaced of [true, false])
    expect((await refusal(png(4, 4, 8, 0, interlaced, new Uint8Array(5_000_000))))?.code).toBe('picture/broken');
});

test.each([
  ['GIF89a', 'a GIF'],
  ['RIFF\x10\0\0\0WEBPVP8 ', 'a WebP picture'],
  ['\0\0\0\x18ftypheic', 'a HEIC or AVIF picture, or a film'],
  ['%PDF-1.7', 'a PDF'],
  ['hello', 'no picture that is known here'],
])('%j is %s', async (text, what) => {
  expect(await refusal(Buffer.from(text, 'latin1'))).toEqual({
    code: 'picture/kind',
    says: `floor.jpg is ${what}; pictures are read as PNG or JPEG`,
  });
});

test('an empty file, and a JPEG of a kind that is not read', async () => {
  expect((await refusal(new Uint8Array()))?.code).toBe('picture/empty');
  const lossless = Buffer.from(jpeg.encode(fields(), 90).data);
  const frame = lossless.indexOf(Buffer.from([0xff, 0xc0]));
  lossless[frame + 1] = 0xc3;
  expect(await refusal(lossless)).toEqual({
    code: 'picture/kind',
    says: 'floor.jpg is a JPEG of a rare kind that is not read here',
  });
});
