import { linearOfOklab, type Oklab, oklabOfLinear } from '../colour/oklab.ts';
import { coded, hexOf, linear } from '../colour/rgb.ts';
import type { Raster } from './raster.ts';

/** A colour of a picture, and its share of all that is not see-through, 0 to 1. */
export interface Dominant {
  hex: string;
  share: number;
}

/** Pixels less opaque than this are left out, of 255. */
const OPAQUE = 128;
/** Each channel is sorted into 32 steps. */
const BITS = 5;
/** Rounds of assigning and averaging; they end by themselves long before on any picture that was tried. */
const MOST_ROUNDS = 100;
/** Colours nearer than this in OKLab are one: about twice what is just seen side by side, so that the grain of a photograph is no colour. */
const ONE = 0.04;

/** So many times more clusters are looked for at first than are wanted, so that the grain of a large plain does not hide a small colour. */
const AT_FIRST = 4;

interface Bin {
  at: Oklab;
  weight: number;
}

const square = ([l, a, b]: Oklab, [l2, a2, b2]: Oklab): number => (l - l2) ** 2 + (a - a2) ** 2 + (b - b2) ** 2;

/** The pixels sorted into 32 × 32 × 32 boxes of sRGB, each box with the mean of what is in it. */
function binsOf({ data }: Raster): Bin[] {
  const count = 1 << (3 * BITS);
  const [weights, red, green, blue] = [0, 1, 2, 3].map(() => new Float64Array(count)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const drop = 8 - BITS;
  for (let at = 0; at + 3 < data.length; at += 4) {
    if (data[at + 3]! < OPAQUE) continue;
    const [r, g, b] = [data[at]!, data[at + 1]!, data[at + 2]!];
    const bin = ((r >> drop) << (2 * BITS)) | ((g >> drop) << BITS) | (b >> drop);
    weights[bin]! += 1;
    red[bin]! += r;
    green[bin]! += g;
    blue[bin]! += b;
  }
  const bins: Bin[] = [];
  for (let bin = 0; bin < count; bin++) {
    const weight = weights[bin]!;
    if (weight === 0) continue;
    const rgb = [red[bin]!, green[bin]!, blue[bin]!].map((sum) => sum / weight / 255);
    bins.push({ at: oklabOfLinear(linear([rgb[0]!, rgb[1]!, rgb[2]!])), weight });
  }
  return bins;
}

/** The heaviest box first, then always the one whose weight times the square of its distance to the nearest so far is most. */
function seedsOf(bins: readonly Bin[], count: number): Oklab[] {
  const away = bins.map(() => 1);
  const seeds: Oklab[] = [];
  while (seeds.length < count) {
    let best = 0;
    for (let at = 1; at < bins.length; at++)
      if (bins[at]!.weight * away[at]! > bins[best]!.weight * away[best]!) best = at;
    if (seeds.length > 0 && away[best] === 0) break;
    const seed = bins[best]!.at;
    for (const [at, bin] of bins.entries())
      away[at] = seeds.length === 0 ? square(bin.at, seed) : Math.min(away[at]!, square(bin.at, seed));
    seeds.push(seed);
  }
  return seeds;
}

const nearestTo = (at: Oklab, centres: readonly Oklab[]): number => {
  let best = 0;
  for (let n = 1; n < centres.length; n++) if (square(at, centres[n]!) < square(at, centres[best]!)) best = n;
  return best;
};

const meanOf = (bins: readonly Bin[]): Bin => {
  const weight = bins.reduce((sum, bin) => sum + bin.weight, 0);
  const mean = [0, 1, 2].map((axis) => bins.reduce((sum, bin) => sum + bin.weight * bin.at[axis]!, 0) / weight);
  return { at: [mean[0]!, mean[1]!, mean[2]!], weight };
};

/** Every box to its nearest centre, every centre to the mean of its boxes, until nothing moves. */
function settle(bins: readonly Bin[], seeds: readonly Oklab[]): Bin[] {
  let centres = [...seeds];
  let clusters: Bin[] = [];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const members: Bin[][] = centres.map(() => []);
    for (const bin of bins) members[nearestTo(bin.at, centres)]!.push(bin);
    clusters = members.filter((own) => own.length > 0).map(meanOf);
    const moved = clusters.length !== centres.length || clusters.some(({ at }, n) => square(at, centres[n]!) > 1e-12);
    centres = clusters.map(({ at }) => at);
    if (!moved) break;
  }
  return clusters;
}

/**
 * Clusters joined two by two: first what an eye would call one colour, the nearest two first; then, while there are more than are wanted, the two whose joining
 * moves their pixels least (J. H. Ward 1963).
 */
function joined(clusters: readonly Bin[], count: number): Bin[] {
  const left = [...clusters];
  for (;;) {
    let near: [number, number] | undefined;
    let cheap: [number, number] = [0, 1];
    let least = ONE ** 2;
    let cost = Number.POSITIVE_INFINITY;
    for (const [at, one] of left.entries())
      for (let to = at + 1; to < left.length; to++) {
        const other = left[to]!;
        const apart = square(one.at, other.at);
        if (apart < least) [least, near] = [apart, [at, to]];
        const moved = ((one.weight * other.weight) / (one.weight + other.weight)) * apart;
        if (moved < cost) [cost, cheap] = [moved, [at, to]];
      }
    if (near === undefined && left.length <= count) return left;
    const [one, other] = near ?? cheap;
    left[one] = meanOf([left[one]!, left[other]!]);
    left.splice(other, 1);
  }
}

/**
 * The colours that a picture is made of, the largest first: k-means in OKLab on a histogram of 32 steps a channel, weighted by pixels; the seeds are chosen one by
 * one as in k-means++ (D. Arthur, S. Vassilvitskii 2007), but always the most likely one instead of a drawn one, so that a picture always gives the same. Four times
 * as many clusters as are wanted are found, joined, and settled again. Colours that hardly differ are one. See-through pixels are left out.
 * @param count how many at most; fewer where the picture has fewer, none where all of it is see-through
 */
export function dominantColours(raster: Raster, count: number): Dominant[] {
  const bins = binsOf(raster);
  if (bins.length === 0) return [];
  const all = bins.reduce((sum, { weight }) => sum + weight, 0);
  const first = joined(settle(bins, seedsOf(bins, AT_FIRST * count)), count);
  const centres = first.map(({ at }) => at);
  return joined(settle(bins, centres), count)
    .map(({ at, weight }) => ({ hex: hexOf(coded(linearOfOklab(at))), share: weight / all }))
    .sort((a, b) => b.share - a.share || (a.hex < b.hex ? -1 : 1));
}
