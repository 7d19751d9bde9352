/** A picture of pixels, row by row from the top: red, green, blue, opacity, each 0 to 255, sRGB. */
export interface Raster {
  width: number;
  height: number;
  data: Uint8Array | Uint8ClampedArray;
}
