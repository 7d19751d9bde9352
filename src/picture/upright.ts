import type { Raster } from './raster.ts';

/**
 * How a picture lies, as EXIF counts it (CIPA DC-008, tag Orientation): 1 upright, 2 mirrored left to right, 3 upside down, 4 mirrored top to bottom, 5 to 8 the
 * same with rows and columns exchanged: 6 has its top at the right, 8 at the left.
 */
export type Lie = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;

/** The picture turned and mirrored so that its top is at the top. */
export function upright(raster: Raster, lie: Lie): Raster {
  if (lie === 1) return raster;
  const { width, height } = raster;
  const exchanged = lie >= 5;
  const [wide, high] = exchanged ? [height, width] : [width, height];
  const fromRight = lie === 2 || lie === 3 || lie === 7 || lie === 8;
  const fromBottom = lie === 3 || lie === 4 || lie === 6 || lie === 7;
  const from = new Uint32Array(raster.data.buffer, raster.data.byteOffset, width * height);
  const to = new Uint32Array(wide * high);
  for (let y = 0, at = 0; y < high; y++)
    for (let x = 0; x < wide; x++, at++) {
      const [across, down] = exchanged ? [y, x] : [x, y];
      to[at] = from[(fromBottom ? height - 1 - down : down) * width + (fromRight ? width - 1 - across : across)]!;
    }
  return { width: wide, height: high, data: new Uint8Array(to.buffer) };
}
