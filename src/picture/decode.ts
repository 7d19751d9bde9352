import { fail, good, type Result } from '../issue.ts';
import { shown } from '../units/index.ts';
import type { Raster } from './raster.ts';
import type { Undecoded } from './refused.ts';

/** What is read of a picture file, bytes, and of a picture, pixels. */
const LARGEST_FILE = 30_000_000;
const MOST_PIXELS = 40_000_000;

const begins = (bytes: Uint8Array, text: string, at = 0): boolean =>
  [...text].every((letter, i) => bytes[at + i] === letter.charCodeAt(0));

/** Files that people take for a PNG or a JPEG, by how they begin. */
const OTHERS: [is: (bytes: Uint8Array) => boolean, what: string][] = [
  [(bytes) => begins(bytes, 'GIF8'), 'a GIF'],
  [(bytes) => begins(bytes, 'RIFF') && begins(bytes, 'WEBP', 8), 'a WebP picture'],
  [(bytes) => begins(bytes, 'ftyp', 4), 'a HEIC or AVIF picture, or a film'],
  [(bytes) => begins(bytes, 'BM'), 'a bitmap (BMP)'],
  [(bytes) => begins(bytes, 'II*\0') || begins(bytes, 'MM\0*'), 'a TIFF or a raw picture of a camera'],
  [(bytes) => begins(bytes, '%PDF'), 'a PDF'],
  [(bytes) => begins(bytes, '<svg') || begins(bytes, '<?xml'), 'a drawing (SVG)'],
];

const AGAIN = 'open it in a picture viewer and save it again as a JPEG or a PNG';
const SMALLER = 'a smaller copy of it; 2000 pixels on the long side are plenty';

/**
 * The pixels of a PNG (any colour type and depth, interlaced or not) or of a JPEG (8 bits, baseline or progressive; grey, colour or CMYK), told apart by their first
 * bytes and not by their name. A JPEG that was photographed on its side is turned upright, as its EXIF note says. Colours are taken as sRGB, whatever
 * profile the file carries. Size is looked at before anything is unpacked: at most 30 MB and 40 megapixels.
 * @param name what the file is called, for what is said
 * Issues: `picture/empty`, `picture/kind`, `picture/large`, `picture/broken`.
 */
export async function decodePicture(bytes: Uint8Array, name: string): Promise<Result<Raster>> {
  const file = shown(name);
  if (bytes.length === 0) return fail('picture/empty', [], `${file} is empty`, 'a PNG or a JPEG');
  if (bytes.length > LARGEST_FILE)
    return fail(
      'picture/large',
      [],
      `${file} holds ${Math.round(bytes.length / 1e6)} MB; at most ${LARGEST_FILE / 1e6} MB are read`,
      SMALLER,
    );
  const kind = begins(bytes, '\x89PNG\r\n\x1a\n')
    ? { called: 'PNG', open: (await import('./png.ts')).openPng }
    : bytes[0] === 0xff && bytes[1] === 0xd8
      ? { called: 'JPEG', open: (await import('./jpeg.ts')).openJpeg }
      : undefined;
  if (kind === undefined) {
    const what = OTHERS.find(([is]) => is(bytes))?.[1] ?? 'no picture that is known here';
    return fail('picture/kind', [], `${file} is ${what}; pictures are read as PNG or JPEG`, AGAIN);
  }
  const says: Record<Undecoded, string> = {
    short: `${file} is a ${kind.called} that was cut short: its end is missing`,
    broken: `${file} is a ${kind.called} that is damaged inside`,
    other: `${file} is a ${kind.called} of a rare kind that is not read here`,
  };
  const refused = (why: Undecoded) => fail(why === 'other' ? 'picture/kind' : 'picture/broken', [], says[why], AGAIN);
  const opened = kind.open(bytes);
  if (!opened.ok) return refused(opened.why);
  const { width, height } = opened;
  if (width * height > MOST_PIXELS)
    return fail(
      'picture/large',
      [],
      `${file} has ${width} by ${height} pixels, ${Math.round((width * height) / 1e6)} million; at most ${MOST_PIXELS / 1e6} million are read`,
      SMALLER,
    );
  const pixels = await opened.decode();
  return pixels.ok ? good(pixels.raster) : refused(pixels.why);
}
