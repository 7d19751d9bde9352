import type { Looks } from '../job/preview.ts';
import { edgeDistance } from './distance.ts';
import type { Layers } from './layers.ts';
import { addNoise, chance, type Grid, mixed } from './noise.ts';

/** How much of each coat is there still, 0 to 1 for every pixel. */
export interface Left {
  /** How far the film of the pattern's paint hides what is under it. */
  film: Float32Array;
  /** How much of the pixel that film covers. */
  pattern: Float32Array;
  /** The same of the ground. */
  ground: Float32Array;
}

/** What people walk on, mm wide. */
const WALKED = 610;

/** From 0 to 1 as `value` goes from `-soft` to `soft`. */
function ramp(value: number, soft: number): number {
  const t = value / (2 * soft) + 0.5;
  return t <= 0 ? 0 : t >= 1 ? 1 : t * t * (3 - 2 * t);
}

/** Sizes of features are told across and along the way that people walk. */
function textured(layers: Grid, walks: Looks['walks'], seed: number) {
  const field = new Float32Array(layers.width * layers.height);
  const add = (n: number, across: number, along: number, weight: number): void =>
    addNoise(field, layers, {
      seed: mixed(seed, n, 0),
      ...(walks === 'along' ? { across, along } : { across: along, along: across }),
      weight,
    });
  return { field, add };
}

const MOST_SAMPLES = 50_000;
const HALVINGS = 30;

/** Places that stand for all of the pattern, one taken at random out of every so many. */
function sampled({ pattern }: Layers, counts: (at: number) => boolean = () => true): Uint32Array {
  const total = pattern.width * pattern.height;
  const isCounted = (at: number): boolean => pattern.data[4 * at + 3]! > 127 && counts(at);
  let count = 0;
  for (let at = 0; at < total; at++) if (isCounted(at)) count++;
  const every = Math.max(1, Math.floor(count / MOST_SAMPLES));
  const found = new Uint32Array(Math.floor(count / every));
  let next = 0;
  let wanted = mixed(7, next, 0) % every;
  for (let at = 0, nth = 0; next < found.length; at++) {
    if (!isCounted(at)) continue;
    if (nth++ !== wanted) continue;
    found[next++] = at;
    wanted = next * every + (mixed(7, next, 0) % every);
  }
  return found;
}

/** The setting between two at which the paint left is, on average over the samples, as wished; more of the setting leaves more. */
function settle(
  samples: Uint32Array,
  wished: number,
  from: number,
  to: number,
  left: (at: number, by: number) => number,
): number {
  let [low, high] = [from, to];
  for (let round = 0; round < HALVINGS; round++) {
    const middle = (low + high) / 2;
    let sum = 0;
    for (const at of samples) sum += left(at, middle);
    if (sum < wished * samples.length) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** A small roller: how wide a lane it leaves and how far it runs between two loads of paint, mm. */
const [LANE, STROKE] = [96, 620];

/** Paint that a roller leaves, thicker and thinner by lanes: each stroke has its own load, runs dry towards its end, and leaves a ridge at its sides. */
function addLanes(field: Float32Array, { width, height, step }: Grid, walks: Looks['walks'], seed: number): void {
  const sway = textured({ width, height, step }, walks, mixed(seed, 90, 0));
  sway.add(1, 300, 420, 9);
  for (let y = 0, at = 0; y < height; y++)
    for (let x = 0; x < width; x++, at++) {
      const across = (walks === 'along' ? x : y) * step;
      const along = (walks === 'along' ? y : x) * step;
      const place = (across + sway.field[at]!) / LANE + 5;
      const lane = Math.floor(place);
      const into = place - lane;
      const run = along / STROKE + 3 * chance(seed, lane, 80) + 5 + 0.04 * sway.field[at]! * into;
      const stroke = Math.floor(run);
      const spent = run - stroke;
      const load = chance(seed, lane, stroke) - 0.5;
      const before = chance(seed, lane, stroke - 1) - 0.5;
      const joined = Math.min(1, spent / 0.12);
      const ridge = Math.exp(-(((Math.min(into, 1 - into) - 0.015) / 0.028) ** 2));
      field[at]! += 1.1 * (before + joined * (load - before)) + 0.7 * (0.5 - spent) * joined + 0.8 * ridge;
    }
}

/** Coverage of a coat grows towards full with its thickness, as light that passes through it is lost (Beer and Lambert). */
function thinCoat(layers: Layers, { thinCoat: missing, walks, seed }: Looks, left: Float32Array): void {
  const { field, add } = textured(layers, walks, mixed(seed, 1, 0));
  addLanes(field, layers, walks, mixed(seed, 2, 0));
  add(1, 85, 110, 0.45);
  add(2, 24, 34, 0.4);
  add(3, 5, 70, 0.12);
  add(4, 12, 240, 0.16);
  add(5, 3.4, 3.7, 0.32);
  add(6, 1.8, 2, 0.3);
  for (let at = 0; at < field.length; at++) field[at] = Math.exp(0.4 * field[at]!);
  const cover = (at: number, by: number): number => 1 - Math.exp(-by * field[at]!);
  const by = settle(sampled(layers), 1 - missing, 0, 40, cover);
  for (let at = 0; at < left.length; at++) left[at]! *= cover(at, by);
}

/** How far in from the edge the foam is lifted, mm, and how much less it touches there, in spreads of the chance that it does. */
const [LIFTED, LESS] = [24, 2.5];

/** Foam that is nearly dry touches the high places only; towards the edge of each shape it is lifted, and touches ever fewer. */
function dryBrush(layers: Layers, { dryBrush: missing, walks, seed }: Looks, left: Float32Array): void {
  const { field, add } = textured(layers, walks, mixed(seed, 3, 0));
  add(1, 1.7, 1.8, 0.42);
  add(2, 3.6, 3.9, 0.52);
  add(3, 8, 9, 0.45);
  add(4, 21, 24, 0.42);
  add(5, 65, 75, 0.35);
  const edge = edgeDistance(layers.shapes, layers.width, layers.height);
  for (let at = 0; at < field.length; at++)
    field[at]! += LESS * Math.sqrt(Math.min(1, (edge[at]! * layers.step) / LIFTED));
  const cover = (at: number, by: number): number => ramp(field[at]! + by, 0.75);
  const by = settle(sampled(layers), 1 - missing, -12, 12, cover);
  for (let at = 0; at < left.length; at++) left[at]! *= cover(at, by);
}

/** Spread of the feet about the line they walk on, mm; how much deeper wear is on it than far beside it; what more the ground stands. */
const [ASTRAY, DEEPER, GROUND] = [165, 4.2, 2.3];

/** Feet rub coats down from the top: the pattern first, then the ground, deepest on the line they walk on, in patches, streaks and scratches. */
function wear(layers: Layers, { wear: missing, walks, seed }: Looks, left: Left): void {
  const { width, height, step } = layers;
  const { field, add } = textured(layers, walks, mixed(seed, 4, 0));
  add(1, 150, 330, 0.75);
  add(2, 48, 80, 0.45);
  add(3, 14, 24, 0.4);
  add(4, 4, 90, 0.32);
  add(5, 1.6, 22, 0.32);
  add(6, 2.2, 3, 0.35);
  const [long, wide] = walks === 'along' ? [height, width] : [width, height];
  const beside = (at: number): number => {
    const place = walks === 'along' ? at % width : Math.floor(at / width);
    return Math.abs((place + 0.5 - wide / 2) * step);
  };
  const under = Float32Array.from({ length: wide }, (_, place) => {
    const off = ((place + 0.5 - wide / 2) * step) / ASTRAY;
    return DEEPER * (Math.exp(-off * off * 0.5) - 1);
  });
  const passed = Float32Array.from({ length: long }, (_, place) => -0.9 * ((2 * (place + 0.5)) / long - 1) ** 4);
  for (let y = 0, at = 0; y < height; y++)
    for (let x = 0; x < width; x++, at++)
      field[at]! += walks === 'along' ? under[x]! + passed[y]! : under[y]! + passed[x]!;
  const cover = (at: number, by: number): number => 1 - ramp(field[at]! - by, 0.75);
  const strip = sampled(layers, (at) => beside(at) <= WALKED / 2);
  const by = settle(strip.length > 0 ? strip : sampled(layers), 1 - missing, -14, 14, cover);
  for (let at = 0; at < field.length; at++) {
    left.pattern[at]! *= cover(at, by);
    left.ground[at]! *= 1 - ramp(field[at]! - by - GROUND, 0.55);
  }
}

/**
 * What is left of the coats of a work that is not new. Each look is set so that, on average, the stated share of the pattern's paint is missing: over all of
 * it for a thin coat and a dry brush, on the walked strip for wear. Looks lie over each other. The same seed gives the same, another another.
 */
export function coatsLeft(layers: Layers, looks: Looks): Left {
  const count = layers.width * layers.height;
  const full = () => new Float32Array(count).fill(1);
  const left = { film: full(), pattern: full(), ground: full() };
  if (looks.thinCoat > 0) thinCoat(layers, looks, left.film);
  if (looks.dryBrush > 0) dryBrush(layers, looks, left.pattern);
  if (looks.wear > 0) wear(layers, looks, left);
  return left;
}
