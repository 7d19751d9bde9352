import { LIGHT, stepOf } from '../picture/light.ts';
import type { Raster } from '../picture/raster.ts';
import { type Daylight, daylightOf } from './daylight.ts';
import { type Homography, inverse, mapped } from './homography.ts';

/** A picture and ever smaller ones, each pixel the mean of four of the one before; in light, opacity multiplied in, 0 to 65 535. */
interface Level {
  width: number;
  height: number;
  data: Uint16Array;
}

const OPAQUE = 65_535;

function finest({ width, height, data }: Raster): Level {
  const light = new Uint16Array(width * height * 4);
  for (let at = 0; at < light.length; at += 4) {
    const opacity = data[at + 3]!;
    if (opacity === 0) continue;
    for (let c = at; c < at + 3; c++) light[c] = (LIGHT[data[c]!]! * opacity) / 255;
    light[at + 3] = (OPAQUE * opacity) / 255;
  }
  return { width, height, data: light };
}

/** Half as wide and high. What an odd last row or column lacks is not counted. */
function halved({ width, height, data }: Level): Level {
  const [wide, high] = [(width + 1) >> 1, (height + 1) >> 1];
  const made = new Uint16Array(wide * high * 4);
  for (let y = 0, to = 0; y < high; y++) {
    const upper = 2 * y * width * 4;
    const lower = 2 * y + 1 < height ? upper + width * 4 : -1;
    for (let x = 0; x < wide; x++) {
      const at = 2 * x * 4;
      const beside = 2 * x + 1 < width;
      for (let c = at; c < at + 4; c++, to++) {
        let sum = data[upper + c]!;
        if (beside) sum += data[upper + c + 4]!;
        if (lower >= 0) sum += data[lower + c]! + (beside ? data[lower + c + 4]! : 0);
        made[to] = sum / ((beside ? 2 : 1) * (lower >= 0 ? 2 : 1));
      }
    }
  }
  return { width: wide, height: high, data: made };
}

function levelsOf(work: Raster): Level[] {
  const levels = [finest(work)];
  for (let last = levels[0]!; last.width > 2 || last.height > 2; levels.push(last)) last = halved(last);
  return levels;
}

/** Light from here up is drawn together towards white, as film and eye do, so that sun on pale paint does not become one white patch. */
const [SHOULDER, WHITE] = [0.72 * OPAQUE, OPAQUE];
const drawnIn = (light: number): number =>
  light <= SHOULDER ? light : WHITE - (WHITE - SHOULDER) * Math.exp((SHOULDER - light) / (WHITE - SHOULDER));

/** Samples of one pixel in each direction: so many at least, for smooth edges, and so many at most, before a coarser level is taken. */
const [FEWEST, MOST] = [2, 12];

export interface Laid {
  picture: Raster;
  /** Pixels of the photo that it covers at least in part. */
  pixels: number;
}

/** The part of the photo in which the work may be seen: all of it where the work reaches to the horizon or behind the camera. */
function windowOf(work: Raster, toPhoto: Homography, photo: Raster): Omit<Daylight, 'data'> | undefined {
  const corners = [
    [0, 0],
    [work.width, 0],
    [work.width, work.height],
    [0, work.height],
  ] as const;
  const ahead = corners.every(([x, y]) => toPhoto[6] * x + toPhoto[7] * y + toPhoto[8] > 0);
  const spots = ahead
    ? corners.map((corner) => mapped(toPhoto, corner))
    : [[0, 0] as const, [photo.width, photo.height] as const];
  const within = (value: number, most: number): number => Math.min(most, Math.max(0, value));
  const xs = spots.map(([x]) => x);
  const ys = spots.map(([, y]) => y);
  const left = within(Math.floor(Math.min(...xs)), photo.width);
  const right = within(Math.ceil(Math.max(...xs)), photo.width);
  const top = within(Math.floor(Math.min(...ys)), photo.height);
  const bottom = within(Math.ceil(Math.max(...ys)), photo.height);
  return right > left && bottom > top ? { left, top, width: right - left, height: bottom - top } : undefined;
}

const PLACES = 64;

/** How much of the work lies inside the photo, 0 to 1; looked at in so many places each way. */
export function shareSeen(photo: Pick<Raster, 'width' | 'height'>, work: Raster, toPhoto: Homography): number {
  let seen = 0;
  for (let row = 0; row < PLACES; row++)
    for (let column = 0; column < PLACES; column++) {
      const place = [((column + 0.5) / PLACES) * work.width, ((row + 0.5) / PLACES) * work.height] as const;
      if (toPhoto[6] * place[0] + toPhoto[7] * place[1] + toPhoto[8] <= 0) continue;
      const [x, y] = mapped(toPhoto, place);
      if (x >= 0 && y >= 0 && x < photo.width && y < photo.height) seen++;
    }
  return seen / PLACES ** 2;
}

/**
 * Lays a flat picture of the work into a photo. Each pixel of the photo takes the mean of what of the work falls on it, in light: its square is followed back to
 * the work, a level of the work is chosen by its shorter side there, and so many samples are taken along both sides that no pixel of that level is stepped
 * over. Pixels that the edge of the work crosses take their share of it; where it is clear, the photo is seen.
 * @param toPhoto from pixels of the work to pixels of the photo, both from the left top corner; m6 x + m7 y + m8 is above 0 in front of the camera
 * @param light whether the photo's light lies over the work
 */
export function layInto(photo: Raster, work: Raster, toPhoto: Homography, light: boolean): Laid {
  const data = new Uint8Array(photo.data);
  const window = windowOf(work, toPhoto, photo);
  if (!window) return { picture: { ...photo, data }, pixels: 0 };
  const { left, top, width, height } = window;
  const [m0, m1, m2, m3, m4, m5, m6, m7, m8] = inverse(toPhoto);
  const levels = levelsOf(work);
  const laid = new Float32Array(width * height * 4);
  const covered = new Uint8Array(width * height);
  let pixels = 0;
  for (let row = 0, n = 0; row < height; row++) {
    const y = top + row + 0.5;
    for (let column = 0; column < width; column++, n++) {
      const x = left + column + 0.5;
      const w = m6 * x + m7 * y + m8;
      if (w <= 0) continue;
      const u = (m0 * x + m1 * y + m2) / w;
      const v = (m3 * x + m4 * y + m5) / w;
      // The square of the pixel on the work: its two sides, as the map's slopes have them.
      const ux = (m0 - m6 * u) / w;
      const vx = (m3 - m6 * v) / w;
      const uy = (m1 - m7 * u) / w;
      const vy = (m4 - m7 * v) / w;
      const farU = Math.abs(ux) + Math.abs(uy);
      const farV = Math.abs(vx) + Math.abs(vy);
      if (u < -farU || v < -farV || u > work.width + farU || v > work.height + farV) continue;
      const sideX = Math.hypot(ux, vx);
      const sideY = Math.hypot(uy, vy);
      const wanted = Math.max(Math.min(sideX, sideY) / 2, Math.max(sideX, sideY) / MOST, 1);
      const nth = Math.min(levels.length - 1, Math.floor(Math.log2(wanted)));
      const level = levels[nth]!;
      const scale = 1 / 2 ** nth;
      const countX = Math.max(FEWEST, Math.ceil(sideX * scale));
      const countY = Math.max(FEWEST, Math.ceil(sideY * scale));
      let r = 0;
      let g = 0;
      let b = 0;
      let a = 0;
      for (let i = 0; i < countX; i++) {
        const px = x - 0.5 + (i + 0.5) / countX;
        for (let j = 0; j < countY; j++) {
          const py = y - 0.5 + (j + 0.5) / countY;
          const pw = m6 * px + m7 * py + m8;
          if (pw <= 0) continue;
          const su = (m0 * px + m1 * py + m2) / pw;
          const sv = (m3 * px + m4 * py + m5) / pw;
          if (su < 0 || sv < 0 || su >= work.width || sv >= work.height) continue;
          const fu = Math.max(0, Math.min(level.width - 1, su * scale - 0.5));
          const fv = Math.max(0, Math.min(level.height - 1, sv * scale - 0.5));
          const iu = fu | 0;
          const iv = fv | 0;
          const tu = fu - iu;
          const tv = fv - iv;
          const p = (iv * level.width + iu) * 4;
          const q = iu + 1 < level.width ? p + 4 : p;
          const down = iv + 1 < level.height ? level.width * 4 : 0;
          const from = level.data;
          const wp = (1 - tu) * (1 - tv);
          const wq = tu * (1 - tv);
          const wr = (1 - tu) * tv;
          const ws = tu * tv;
          r += wp * from[p]! + wq * from[q]! + wr * from[p + down]! + ws * from[q + down]!;
          g += wp * from[p + 1]! + wq * from[q + 1]! + wr * from[p + down + 1]! + ws * from[q + down + 1]!;
          b += wp * from[p + 2]! + wq * from[q + 2]! + wr * from[p + down + 2]! + ws * from[q + down + 2]!;
          a += wp * from[p + 3]! + wq * from[q + 3]! + wr * from[p + down + 3]! + ws * from[q + down + 3]!;
        }
      }
      if (a === 0) continue;
      const count = countX * countY;
      laid[4 * n] = r / count;
      laid[4 * n + 1] = g / count;
      laid[4 * n + 2] = b / count;
      laid[4 * n + 3] = a / count;
      covered[n] = 1;
      pixels++;
    }
  }
  const over = light && pixels > 0 ? daylightOf(photo, window, covered).data : undefined;
  for (let row = 0, n = 0; row < height; row++)
    for (let column = 0; column < width; column++, n++) {
      if (covered[n] === 0) continue;
      const to = ((top + row) * photo.width + left + column) * 4;
      const rest = 1 - laid[4 * n + 3]! / OPAQUE;
      const bright = over ? over[n]! : 1;
      for (let c = 0; c < 3; c++)
        data[to + c] = stepOf(
          (over ? drawnIn(bright * laid[4 * n + c]!) : laid[4 * n + c]!) +
            (rest > 0 ? rest * LIGHT[photo.data[to + c]!]! : 0),
        );
    }
  return { picture: { width: photo.width, height: photo.height, data }, pixels };
}
