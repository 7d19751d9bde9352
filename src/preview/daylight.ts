import { LIGHT } from '../picture/light.ts';
import type { Raster } from '../picture/raster.ts';

/** The photo's light over a window of it: pixel by pixel, 1 where it is as over the middle of the work. */
export interface Daylight {
  left: number;
  top: number;
  width: number;
  height: number;
  data: Float32Array;
}

/** Share of the boards' own grain, joints and knots that is still seen through paint. A matter of taste, no source. */
const GRAIN = 0.35;
/** Differences of light, as natural logarithms, well above this count as shade and light, well below it as grain of the floor. */
const SHADE = 0.25;
/** The longer side of the small picture in which they are told apart, pixels, and how far it is looked about there. */
const [SMALL, REACH] = [480, 9];
/** Shares of red, green and blue in brightness; ITU-R BT.709. */
const [RED, GREEN, BLUE] = [0.2126, 0.7152, 0.0722];
/** The darkest that is told apart. */
const DARKEST = 60;

/** Mean over a square that reaches `reach` pixels to every side, cut off at the edges: running sums, along rows and then columns. */
function blurred(data: Float32Array, width: number, height: number, reach: number): Float32Array {
  const half = new Float32Array(data.length);
  const whole = new Float32Array(data.length);
  const run = (from: Float32Array, to: Float32Array, start: number, count: number, step: number): void => {
    let sum = 0;
    let held = 0;
    for (let at = 0; at < Math.min(reach, count); at++, held++) sum += from[start + at * step]!;
    for (let at = 0; at < count; at++) {
      if (at + reach < count) {
        sum += from[start + (at + reach) * step]!;
        held++;
      }
      if (at - reach - 1 >= 0) {
        sum -= from[start + (at - reach - 1) * step]!;
        held--;
      }
      to[start + at * step] = sum / held;
    }
  };
  for (let y = 0; y < height; y++) run(data, half, y * width, width, 1);
  for (let x = 0; x < width; x++) run(half, whole, x, height, width);
  return whole;
}

/** The middle of many values: half are lower. */
function median(values: Float32Array): number {
  return Float32Array.from(values).sort()[values.length >> 1] ?? 0;
}

/**
 * How the light falls on the floor, from the photo's brightness: shade and light apart from the floor's own grain by a guided filter on logarithms (K. He, J. Sun,
 * X. Tang, Guided Image Filtering, 2013; on a smaller picture as in their Fast Guided Filter, 2015). Shade and light stay whole with their edges; of the grain a
 * part stays. 1 is the middle of the light over the work, so that colours are there as in the palette.
 * @param covered of the window, row by row: pixels that lie under the work
 */
export function daylightOf(photo: Raster, window: Omit<Daylight, 'data'>, covered: Uint8Array): Daylight {
  const { left, top, width, height } = window;
  const bright = new Float32Array(width * height);
  for (let y = 0, at = 0; y < height; y++) {
    let from = ((top + y) * photo.width + left) * 4;
    for (let x = 0; x < width; x++, at++, from += 4) {
      const [r, g, b] = [photo.data[from]!, photo.data[from + 1]!, photo.data[from + 2]!];
      bright[at] = Math.log(Math.max(DARKEST, RED * LIGHT[r]! + GREEN * LIGHT[g]! + BLUE * LIGHT[b]!));
    }
  }
  const by = Math.max(1, Math.ceil(Math.max(width, height) / SMALL));
  const [wide, high] = [Math.ceil(width / by), Math.ceil(height / by)];
  const small = new Float32Array(wide * high);
  const square = new Float32Array(wide * high);
  for (let y = 0; y < high; y++)
    for (let x = 0; x < wide; x++) {
      let [sum, squares, count] = [0, 0, 0];
      for (let v = y * by; v < Math.min(height, (y + 1) * by); v++)
        for (let u = x * by; u < Math.min(width, (x + 1) * by); u++, count++) {
          const value = bright[v * width + u]!;
          sum += value;
          squares += value * value;
        }
      small[y * wide + x] = sum / count;
      square[y * wide + x] = squares / count;
    }
  const reach = Math.max(1, Math.min(REACH, Math.floor(Math.min(wide, high) / 4)));
  const mean = blurred(small, wide, high, reach);
  const meanSquare = blurred(square, wide, high, reach);
  const kept = new Float32Array(wide * high);
  const base = new Float32Array(wide * high);
  for (let at = 0; at < kept.length; at++) {
    const spread = Math.max(0, meanSquare[at]! - mean[at]! ** 2);
    kept[at] = spread / (spread + SHADE * SHADE);
    base[at] = (1 - kept[at]!) * mean[at]!;
  }
  const [slope, offset] = [blurred(kept, wide, high, reach), blurred(base, wide, high, reach)];
  const shade = new Float32Array(width * height);
  for (let y = 0, at = 0; y < height; y++) {
    const v = Math.min(high - 1, Math.max(0, (y + 0.5) / by - 0.5));
    const row = Math.min(Math.max(0, high - 2), Math.floor(v)) * wide;
    const down = high > 1 ? v - row / wide : 0;
    const next = high > 1 ? wide : 0;
    for (let x = 0; x < width; x++, at++) {
      const u = Math.min(wide - 1, Math.max(0, (x + 0.5) / by - 0.5));
      const column = Math.min(Math.max(0, wide - 2), Math.floor(u));
      const over = wide > 1 ? u - column : 0;
      const n = row + column;
      const beside = wide > 1 ? 1 : 0;
      const between = (few: Float32Array): number => {
        const upper = few[n]! + over * (few[n + beside]! - few[n]!);
        const lower = few[n + next]! + over * (few[n + next + beside]! - few[n + next]!);
        return upper + down * (lower - upper);
      };
      shade[at] = between(slope) * bright[at]! + between(offset);
    }
  }
  const middle = median(shade.filter((_, at) => covered[at] === 1));
  for (let at = 0; at < shade.length; at++)
    shade[at] = Math.exp(shade[at]! - middle + GRAIN * (bright[at]! - shade[at]!));
  return { ...window, data: shade };
}
