import { LIGHT, stepOf } from './light.ts';
import type { Raster } from './raster.ts';

/** For every new pixel of a row: the first old one it covers, and the share of each that it covers. */
function shares(from: number, to: number): { first: number; weights: Float32Array }[] {
  const step = from / to;
  return Array.from({ length: to }, (_, at) => {
    const [start, end] = [at * step, Math.min(from, (at + 1) * step)];
    const first = Math.min(from - 1, Math.floor(start));
    const count = Math.max(1, Math.ceil(end - 1e-9) - first);
    const weights = Float32Array.from({ length: count }, (_, n) =>
      Math.max(0, Math.min(first + n + 1, end) - Math.max(first + n, start)),
    );
    const sum = weights.reduce((all, one) => all + one, 0);
    return { first, weights: weights.map((one) => one / sum) };
  });
}

/**
 * A picture of fewer pixels: each is the mean of the light and of the opacity that falls on it, so fine stripes turn into their middle tone and do not
 * shimmer. One that is small enough already is returned as it is.
 * @param longSide at most so many pixels on the longer side
 */
export function smaller(raster: Raster, longSide: number): Raster {
  const { width, height, data } = raster;
  const by = longSide / Math.max(width, height);
  if (by >= 1) return raster;
  const wide = Math.max(1, Math.round(width * by));
  const high = Math.max(1, Math.round(height * by));
  const columns = shares(width, wide);
  const made = new Uint8Array(wide * high * 4);
  const band = new Float32Array(width * 4);
  for (const [y, row] of shares(height, high).entries()) {
    band.fill(0);
    for (const [n, weight] of row.weights.entries()) {
      let from = (row.first + n) * width * 4;
      for (let at = 0; at < band.length; at += 4, from += 4) {
        const opacity = weight * data[from + 3]!;
        band[at]! += opacity * LIGHT[data[from]!]!;
        band[at + 1]! += opacity * LIGHT[data[from + 1]!]!;
        band[at + 2]! += opacity * LIGHT[data[from + 2]!]!;
        band[at + 3]! += opacity;
      }
    }
    let to = y * wide * 4;
    for (const { first, weights } of columns) {
      let r = 0;
      let g = 0;
      let b = 0;
      let a = 0;
      for (let n = 0, at = first * 4; n < weights.length; n++, at += 4) {
        const weight = weights[n]!;
        r += weight * band[at]!;
        g += weight * band[at + 1]!;
        b += weight * band[at + 2]!;
        a += weight * band[at + 3]!;
      }
      if (a > 0) {
        made[to] = stepOf(r / a);
        made[to + 1] = stepOf(g / a);
        made[to + 2] = stepOf(b / a);
        made[to + 3] = Math.round(a);
      }
      to += 4;
    }
  }
  return { width: wide, height: high, data: made };
}
