import type { Job } from '../job/job.ts';
import type { Looks } from '../job/preview.ts';
import { LIGHT, stepOf } from '../picture/light.ts';
import type { Raster } from '../picture/raster.ts';
import type { Layers } from './layers.ts';
import { addNoise, mixed } from './noise.ts';
import { coatsLeft } from './worn.ts';

/** Light of each step as its logarithm; the darkest is taken as one in a hundred thousand. */
const DENSITY = Float32Array.from(LIGHT, (light) => Math.log(Math.max(1, light)));

/**
 * The coats over each other: opaque where there is paint, clear where the floor is bare. Places that paint covers and places that it leaves add up in light. A
 * film that hides only in part takes so much of what passes through it (Beer and Lambert), so it lies between the two colours by their logarithms.
 */
export function painted(layers: Layers, looks?: Looks): Raster {
  const { ground, pattern, width, height } = layers;
  const left = looks && coatsLeft(layers, looks);
  const data = new Uint8Array(width * height * 4);
  for (let at = 0, n = 0; at < data.length; at += 4, n++) {
    const over = (pattern.data[at + 3]! / 255) * (left ? left.pattern[n]! : 1);
    const under = (1 - over) * (ground.data[at + 3]! / 255) * (left ? left.ground[n]! : 1);
    const all = over + under;
    if (all === 0) continue;
    const film = left ? left.film[n]! : 1;
    for (let c = at; c < at + 3; c++) {
      const [paint, below] = [pattern.data[c]!, ground.data[c]!];
      const seen =
        over === 0 || film === 1 ? LIGHT[paint]! : Math.exp(film * DENSITY[paint]! + (1 - film) * DENSITY[below]!);
      data[c] = stepOf((over * seen + under * LIGHT[below]!) / all);
    }
    data[at + 3] = Math.round(255 * all);
  }
  return { width, height, data };
}

/** What is seen where paint is worn off, by what the job says lies under it. Common colours, no source. */
const BARE = {
  'bare wood': '#b58a58',
  varnished: '#a9713a',
  painted: '#b9a98c',
  concrete: '#a3a09a',
  canvas: '#d8ccb2',
};

/** What is beside the work is no floor: plain paper. */
const PAPER = 0xf6f2e9;

const lightOf = (hex: number): number[] => [hex >> 16, (hex >> 8) & 255, hex & 255].map((value) => LIGHT[value]!);

/** The bare floor that lies under the work, and paper beside it; boards have a grain along it. */
export function bareFloor({ ground, width, height, step }: Layers, job: Pick<Job, 'surface' | 'underfoot'>): Raster {
  const is = job.surface === 'floor-cloth' ? 'canvas' : (job.underfoot?.is ?? 'bare wood');
  const colour = lightOf(Number.parseInt(BARE[is].slice(1), 16));
  const paper = lightOf(PAPER);
  const grain = new Float32Array(width * height);
  const wooden = is === 'bare wood' || is === 'varnished';
  const add = (n: number, across: number, along: number, weight: number): void =>
    addNoise(grain, { width, height, step }, { seed: mixed(9, n, 0), across, along, weight });
  if (wooden) {
    add(1, 7, 260, 0.1);
    add(2, 2.6, 120, 0.09);
  } else add(3, 3, 3, 0.05);
  const data = new Uint8Array(width * height * 4);
  for (let at = 0; at < grain.length; at++) {
    const bright = Math.max(0.3, 1 + grain[at]!);
    const share = ground.data[4 * at + 3]! / 255;
    for (let c = 0; c < 3; c++) data[4 * at + c] = stepOf(share * colour[c]! * bright + (1 - share) * paper[c]!);
    data[4 * at + 3] = 255;
  }
  return { width, height, data };
}

/** One picture over another of the same size, in light. */
export function over(top: Raster, under: Raster): Raster {
  const data = new Uint8Array(under.data);
  for (let at = 0; at < data.length; at += 4) {
    const share = top.data[at + 3]! / 255;
    if (share === 0) continue;
    for (let c = at; c < at + 3; c++)
      data[c] =
        share === 1 ? top.data[c]! : stepOf(share * LIGHT[top.data[c]!]! + (1 - share) * LIGHT[under.data[c]!]!);
  }
  return { width: top.width, height: top.height, data };
}
