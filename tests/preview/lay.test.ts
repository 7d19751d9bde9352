import { describe, expect, test } from 'vitest';
import type { Raster } from '../../src/picture/raster.ts';
import { floorToPhoto } from '../../src/preview/corners.ts';
import { after, type Homography, type Spot } from '../../src/preview/homography.ts';
import { layInto, shareSeen } from '../../src/preview/lay.ts';
import { type Camera, placeSeen, seenAt } from './camera.ts';

/** A pixel for each square mm. */
const raster = (width: number, height: number, grey: (x: number, y: number) => number): Raster => {
  const data = new Uint8Array(width * height * 4);
  for (let y = 0, at = 0; y < height; y++)
    for (let x = 0; x < width; x++, at += 4) data.set([...Array(3).fill(grey(x, y)), 255], at);
  return { width, height, data };
};

// IEC 61966-2-1, written out again.
const light = (step: number) => (step / 255 <= 0.04045 ? step / 255 / 12.92 : ((step / 255 + 0.055) / 1.055) ** 2.4);
const stepOf = (l: number) => 255 * (l <= 0.0031308 ? 12.92 * l : 1.055 * l ** (1 / 2.4) - 0.055);

/** The map for a work whose near left corner lies on the place 0, 0 of the floor, by four corners that the camera sees. */
function mapFor(camera: Camera, work: Raster): Homography {
  const rectangle = { across: 500, along: 700 };
  const found = floorToPhoto(
    {
      file: 'f.png',
      rectangle,
      corners: {
        'near-left': seenAt(camera, [0, 0]),
        'near-right': seenAt(camera, [500, 0]),
        'far-right': seenAt(camera, [500, 700]),
        'far-left': seenAt(camera, [0, 700]),
      },
    },
    { width: camera.width, height: camera.pixelsHigh },
  );
  if (!found.ok) throw new Error(found.issues[0]!.says);
  return after(found.value, [1, 0, 0, 0, -1, work.height, 0, 0, 1]);
}

const CAMERA: Camera = {
  across: 260,
  along: -620,
  height: 800,
  pan: 0.06,
  tilt: 0.62,
  roll: -0.04,
  focal: 180,
  width: 160,
  pixelsHigh: 150,
};
const GREY = 120;
const SQUARE = 50;
const [DARK, PALE] = [30, 240];
const checks = (across: number, along: number) =>
  (Math.floor(across / SQUARE) + Math.floor(along / SQUARE)) % 2 === 0 ? DARK : PALE;

/** Every pixel as the mean of the light of so many rays each way, followed to a floor painted with squares: what a perfect picture would show. */
function rayTraced(camera: Camera, work: Raster, rays: number): Float64Array {
  const { width, pixelsHigh } = camera;
  return Float64Array.from({ length: width * pixelsHigh }, (_, at) => {
    let sum = 0;
    for (let i = 0; i < rays ** 2; i++) {
      const u = (at % width) + ((i % rays) + 0.5) / rays;
      const v = Math.floor(at / width) + (Math.floor(i / rays) + 0.5) / rays;
      const [across, along] = placeSeen(camera, [u, v]) ?? [-1, -1];
      const inside = across >= 0 && along >= 0 && across < work.width && along < work.height;
      sum += light(inside ? checks(across, along) : GREY);
    }
    return stepOf(sum / rays ** 2);
  });
}

describe('squares on a floor, seen through a pinhole camera', () => {
  const work = raster(500, 2000, (x, y) => checks(x + 0.5, 2000 - y - 0.5));
  const photo = raster(CAMERA.width, CAMERA.pixelsHigh, () => GREY);

  test.each([
    ['from above', CAMERA],
    ['low over the floor, where many squares fall on one pixel', { ...CAMERA, height: 260, tilt: 0.2, along: -900 }],
  ])('%s, every pixel is as rays of light have it', (_, camera) => {
    const { picture, pixels } = layInto(photo, work, mapFor(camera, work), false);
    const wanted = rayTraced(camera, work, 20);
    let [sum, worst, painted] = [0, 0, 0];
    for (const [at, value] of wanted.entries()) {
      const off = Math.abs(picture.data[4 * at]! - value);
      if (Math.abs(value - GREY) > 0.5) painted++;
      sum += off;
      worst = Math.max(worst, off);
    }
    // Two samples a side, and more where squares are small, against twenty, on edges of 210 steps.
    expect(sum / pixels).toBeLessThan(1.5);
    expect(worst).toBeLessThan(70);
    expect(painted).toBeGreaterThan(1500);
    expect(Math.abs(pixels / painted - 1)).toBeLessThan(0.1);
  });

  test('far away, squares turn into the middle of their light and not of their steps', () => {
    const fine = raster(1000, 1000, (x, y) => ((x + y) % 2 === 0 ? 0 : 255));
    const camera = { ...CAMERA, across: 500, height: 3000, along: -4000 };
    const { picture } = layInto(photo, fine, mapFor(camera, fine), false);
    const at = seenAt(camera, [500, 500]).map(Math.floor) as unknown as Spot;
    // Half the light of white is step 188 (IEC 61966-2-1); 128 would be a mean of steps.
    for (const off of [0, 1, 2, 3]) {
      const step = picture.data[4 * (at[1] * CAMERA.width + at[0] + off)]!;
      expect(Math.abs(step - 188)).toBeLessThanOrEqual(1);
    }
  });
});

test('where the work is clear the photo is seen, and outside it nothing changes', () => {
  const photo = raster(60, 60, (x, y) => (x * 7 + y * 3) % 256);
  const work = raster(20, 20, () => 200);
  for (let at = 3; at < work.data.length; at += 4) work.data[at] = (at >> 2) % 20 < 10 ? 0 : 255;
  const { picture } = layInto(photo, work, [1, 0, 20, 0, 1, 20, 0, 0, 1], false);
  for (let y = 0; y < 60; y++)
    for (let x = 0; x < 60; x++) {
      const at = 4 * (y * 60 + x);
      const solid = x >= 31 && x < 40 && y >= 20 && y < 40;
      const edge = x >= 29 && x < 31 && y >= 20 && y < 40;
      if (!edge) expect(picture.data[at], `${x}, ${y}`).toBe(solid ? 200 : photo.data[at]);
    }
});

test('what lies behind the camera is not seen', () => {
  const photo = raster(CAMERA.width, CAMERA.pixelsHigh, () => GREY);
  const work = raster(500, 4000, () => PALE);
  const camera = { ...CAMERA, along: 1800, tilt: 0.3, roll: 0 };
  const inside = floorSeenFrom(camera, work);
  const { picture, pixels } = layInto(photo, work, inside, false);
  expect(pixels).toBeGreaterThan(1500);
  // Every pixel is painted just where its own ray meets the work in front of the camera.
  for (let y = 0; y < photo.height; y += 3)
    for (let x = 0; x < photo.width; x += 3) {
      const corners = [0, 1, 2, 3].map((n) => placeSeen(camera, [x + (n & 1), y + (n >> 1)]));
      const on = corners.map(
        (place) => place && place[0] >= 0 && place[1] >= 0 && place[0] < work.width && place[1] < work.height,
      );
      const step = picture.data[4 * (y * photo.width + x)];
      if (on.every(Boolean)) expect(step, `${x}, ${y}`).toBe(PALE);
      else if (!on.some(Boolean)) expect(step, `${x}, ${y}`).toBe(GREY);
    }
  const share = shareSeen(photo, work, inside);
  expect(share).toBeGreaterThan(0.2);
  expect(share).toBeLessThan((4000 - 1800) / 4000);
});

/** The map for a camera that stands in the work, from a rectangle ahead of it. */
function floorSeenFrom(camera: Camera, work: Raster): Homography {
  const from = camera.along + 900;
  const corner = (across: number, along: number) => seenAt(camera, [across, from + along]);
  const found = floorToPhoto(
    {
      file: 'f.png',
      rectangle: { across: 200, along: 500 },
      corners: {
        'near-left': corner(160, 0),
        'near-right': corner(360, 0),
        'far-right': corner(360, 500),
        'far-left': corner(160, 500),
      },
    },
    { width: 4000, height: 4000 },
  );
  if (!found.ok) throw new Error(found.issues[0]!.says);
  return after(found.value, [1, 0, -160, 0, -1, work.height - from, 0, 0, 1]);
}
