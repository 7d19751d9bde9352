import { expect, test } from 'vitest';
import type { Raster } from '../../src/picture/raster.ts';
import { daylightOf } from '../../src/preview/daylight.ts';

const [WIDTH, HEIGHT] = [400, 300];
const BOARD = 16;
/** Grey boards that come and go by a sine, under two lights: right of the edge there is 0.4 of the light. Steps of sRGB, IEC 61966-2-1. */
const [SHADE, EDGE] = [0.4, 196];
const tone = (x: number) => 1 + 0.3 * Math.sin((2 * Math.PI * x) / BOARD);
const photo: Raster = { width: WIDTH, height: HEIGHT, data: new Uint8Array(WIDTH * HEIGHT * 4) };
for (let at = 0; at < WIDTH * HEIGHT; at++) {
  const x = at % WIDTH;
  const l = 0.4 * tone(x) * (x < EDGE ? 1 : SHADE);
  const step = Math.round(255 * (l <= 0.0031308 ? 12.92 * l : 1.055 * l ** (1 / 2.4) - 0.055));
  photo.data.set([step, step, step, 255], 4 * at);
}
const WINDOW = { left: 0, top: 0, width: WIDTH, height: HEIGHT };

test('shade stays whole, boards stay in part, and the middle of the light is 1', () => {
  const { data } = daylightOf(photo, WINDOW, new Uint8Array(WIDTH * HEIGHT).fill(1));
  const logs = (from: number, to: number) =>
    Array.from({ length: to - from }, (_, n) => Math.log(data[150 * WIDTH + from + n]!));
  const mean = (values: number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  const spread = (values: number[]) => Math.sqrt(mean(values.map((value) => (value - mean(values)) ** 2)));
  // Whole boards, away from the edge of the shade.
  const [lit, shaded] = [logs(48, 48 + 5 * BOARD), logs(272, 272 + 5 * BOARD)];
  expect(Math.exp(mean(shaded) - mean(lit)) / SHADE).toBeCloseTo(1, 1);
  const boards = spread(Array.from({ length: BOARD }, (_, x) => Math.log(tone(x))));
  for (const half of [lit, shaded]) {
    expect(spread(half) / boards).toBeGreaterThan(0.3);
    expect(spread(half) / boards).toBeLessThan(0.85);
  }
  // Where the boards are alike on both sides of it, three pixels away, the edge of the shade is nearly as sharp as it was.
  const across = data[150 * WIDTH + EDGE + 3]! / data[150 * WIDTH + EDGE - 3]!;
  expect(tone(EDGE + 3)).toBeCloseTo(tone(EDGE - 3), 9);
  expect(across).toBeGreaterThan(0.9 * SHADE);
  expect(across).toBeLessThan(0.6);
  const sorted = Float32Array.from(data).sort();
  expect(sorted[0]).toBeLessThan(1);
  expect(sorted[sorted.length - 1]).toBeGreaterThan(1);
});

test('only what lies under the work decides which light is 1', () => {
  const left = Uint8Array.from({ length: WIDTH * HEIGHT }, (_, at) => (at % WIDTH < 150 ? 1 : 0));
  const { data } = daylightOf(photo, WINDOW, left);
  const row = Array.from(data.subarray(150 * WIDTH, 150 * WIDTH + 144)).sort((a, b) => a - b);
  expect(row[72]).toBeGreaterThan(0.85);
  expect(row[72]).toBeLessThan(1.15);
  expect(data[150 * WIDTH + 350]).toBeLessThan(0.7);
});

test('a floor of one light and no boards changes nothing', () => {
  const plain: Raster = { width: 7, height: 5, data: new Uint8Array(7 * 5 * 4).fill(130) };
  const { data } = daylightOf(plain, { left: 1, top: 0, width: 6, height: 5 }, new Uint8Array(30).fill(1));
  for (const value of data) expect(value).toBeCloseTo(1, 5);
});
