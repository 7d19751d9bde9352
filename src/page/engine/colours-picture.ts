import { fail, good, type Result } from '../../issue.ts';
import type { Raster } from '../../picture/raster.ts';
import { shown } from '../../units/index.ts';

/** Pixels of the long side that a picture is read at; no more is seen of it on a screen. */
const LONG_SIDE = 2400;
/** So many pixels are unpacked at most. */
const MOST_PIXELS = 60_000_000;
const AGAIN = 'open it in a picture viewer and save it again as a JPEG or a PNG';

const begins = (bytes: Uint8Array, ...first: number[]): boolean => first.every((byte, at) => bytes[at] === byte);

/** A picture as this browser unpacks it, upright, and how large it is itself. */
export interface Unpacked {
  raster: Raster;
  /** Pixels of the picture as it is in its file. */
  width: number;
  height: number;
}

/**
 * A PNG or a JPEG, told apart by its first bytes, at most so many pixels long.
 * Issues: `picture/kind`, `picture/large`, `picture/broken`.
 */
export async function unpack(bytes: Uint8Array, name: string, longSide = LONG_SIDE): Promise<Result<Unpacked>> {
  const file = shown(name);
  const type = begins(bytes, 0x89, 0x50, 0x4e, 0x47) ? 'image/png' : begins(bytes, 0xff, 0xd8) ? 'image/jpeg' : '';
  if (type === '')
    return fail('picture/kind', [], `${file} is no PNG or JPEG; pictures are read as one of these`, AGAIN);
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(new Blob([bytes as BlobPart], { type }), { imageOrientation: 'from-image' });
  } catch {
    return fail('picture/broken', [], `${file} is damaged inside, or was cut short`, AGAIN);
  }
  const { width, height } = bitmap;
  if (width * height > MOST_PIXELS)
    return fail(
      'picture/large',
      [],
      `${file} has ${width} by ${height} pixels; at most ${MOST_PIXELS / 1e6} million are read`,
      'a smaller copy of it; 2000 pixels on the long side are plenty',
    );
  const scale = Math.min(1, longSide / Math.max(width, height));
  const canvas = new OffscreenCanvas(Math.max(1, Math.round(width * scale)), Math.max(1, Math.round(height * scale)));
  const pen = canvas.getContext('2d', { willReadFrequently: true })!;
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  const { data } = pen.getImageData(0, 0, canvas.width, canvas.height);
  return good({ raster: { width: canvas.width, height: canvas.height, data }, width, height });
}

export async function rasterOf(bytes: Uint8Array, name: string): Promise<Result<Raster>> {
  const found = await unpack(bytes, name);
  return found.ok ? good(found.value.raster) : found;
}
