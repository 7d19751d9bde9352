/** Pixels of a flat picture, and how far apart they lie on the floor. */
export interface Grid {
  width: number;
  height: number;
  /** mm from pixel to pixel. */
  step: number;
}

/** A well mixed whole number of 32 bits from three; the finisher of MurmurHash3 (A. Appleby, public domain). */
export function mixed(seed: number, a: number, b: number): number {
  let h = (seed ^ Math.imul(a, 0x9e3779b1) ^ Math.imul(b, 0x85ebca77)) | 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/** The same as a number from 0 to 1. */
export const chance = (seed: number, a: number, b: number): number => mixed(seed, a, b) / 0x1_0000_0000;

/** Gradient noise has a spread near a quarter; times this it is near 1. */
const SPREAD = 4;
const DIRECTIONS = 256;
const [COS, SIN] = [Math.cos, Math.sin].map((f) =>
  Float32Array.from({ length: DIRECTIONS }, (_, n) => f((2 * Math.PI * n) / DIRECTIONS)),
) as [Float32Array, Float32Array];

const eased = (t: number): number => t * t * t * (t * (t * 6 - 15) + 10);

/** Whole cells left of every pixel of a row, how far into the cell it lies, and that eased. */
function places(count: number, step: number, size: number, off: number) {
  const cell = new Int32Array(count);
  const into = new Float32Array(count);
  const ease = new Float32Array(count);
  for (let at = 0; at < count; at++) {
    const place = (at * step) / size + off;
    cell[at] = Math.floor(place);
    into[at] = place - cell[at]!;
    ease[at] = eased(into[at]!);
  }
  return { cell, into, ease };
}

/** Play of chance by the size of its features across and along, mm, and its spread. */
interface Noise {
  seed: number;
  across: number;
  along: number;
  weight: number;
}

function addFine(field: Float32Array, { width, height, step }: Grid, { seed, across, along, weight }: Noise): void {
  // Cells of several noises would else meet in the corner of the work.
  const columns = places(width, step, across, 61 * chance(seed, 1, 2));
  const rows = places(height, step, along, 61 * chance(seed, 3, 4));
  const first = columns.cell[0]!;
  const count = columns.cell[width - 1]! - first + 2;
  let above = new Uint8Array(count);
  let below = new Uint8Array(count);
  const turn = (into: Uint8Array, row: number): void => {
    for (let n = 0; n < count; n++) into[n] = mixed(seed, first + n, row) >>> 24;
  };
  let known = Number.NaN;
  const factor = weight * SPREAD;
  for (let y = 0, at = 0; y < height; y++) {
    const row = rows.cell[y]!;
    if (row !== known) {
      [above, below] = [below, above];
      if (row !== known + 1) turn(above, row);
      turn(below, row + 1);
      known = row;
    }
    const v = rows.into[y]!;
    const ease = rows.ease[y]!;
    for (let x = 0; x < width; x++, at++) {
      const n = columns.cell[x]! - first;
      const u = columns.into[x]!;
      const a = above[n]!;
      const b = above[n + 1]!;
      const c = below[n]!;
      const d = below[n + 1]!;
      const p = COS[a]! * u + SIN[a]! * v;
      const q = COS[b]! * (u - 1) + SIN[b]! * v;
      const r = COS[c]! * u + SIN[c]! * (v - 1);
      const s = COS[d]! * (u - 1) + SIN[d]! * (v - 1);
      const e = columns.ease[x]!;
      const top = p + e * (q - p);
      field[at]! += factor * (top + ease * (r + e * (s - r) - top));
    }
  }
}

/** What changes slowly is worked out so many times a feature, and laid straight between. */
const A_FEATURE = 8;

/**
 * Adds soft play of chance to a field: gradient noise (K. Perlin, Improving Noise, 2002), mean 0, spread about `weight`. Features have the sizes told in mm,
 * whatever the step of the grid, and lie where they lie whatever its size.
 */
export function addNoise(field: Float32Array, grid: Grid, noise: Noise): void {
  const stride = Math.floor(Math.min(noise.across, noise.along) / (A_FEATURE * grid.step));
  if (stride < 2) {
    addFine(field, grid, noise);
    return;
  }
  const { width, height } = grid;
  const wide = Math.ceil(width / stride) + 1;
  const coarse = { width: wide, height: Math.ceil(height / stride) + 1, step: grid.step * stride };
  const few = new Float32Array(coarse.width * coarse.height);
  addFine(few, coarse, noise);
  const line = new Float32Array(wide);
  for (let y = 0, at = 0; y < height; y++) {
    const row = Math.floor(y / stride) * wide;
    const down = (y % stride) / stride;
    for (let n = 0; n < wide; n++) line[n] = few[row + n]! + down * (few[row + wide + n]! - few[row + n]!);
    for (let n = 0, x = 0; x < width; n++) {
      const from = line[n]!;
      const rise = (line[n + 1]! - from) / stride;
      for (let k = 0; k < stride && x < width; k++, x++, at++) field[at]! += from + k * rise;
    }
  }
}
