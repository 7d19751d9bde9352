import type { Raster } from './raster.ts';

/** Every row as its difference from what lies left of it and over it, which suits photos and flat colours alike; ISO/IEC 15948, 9.4. */
const PAETH = 4;

/** A picture as PNG, without opacity where all of it is opaque. The same pixels give the same bytes. */
export async function encodePng({ width, height, data }: Raster): Promise<Uint8Array> {
  const { PNG } = await import('pngjs');
  const picture = new PNG({ width, height });
  picture.data = Buffer.from(data.buffer, data.byteOffset, data.byteLength);
  let opaque = true;
  for (let at = 3; opaque && at < data.length; at += 4) opaque = data[at] === 255;
  const [RGB, RGBA] = [2, 6] as const;
  const made = PNG.sync.write(picture, { colorType: opaque ? RGB : RGBA, filterType: PAETH, deflateLevel: 6 });
  return new Uint8Array(made.buffer, made.byteOffset, made.byteLength);
}
