import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Looks } from '../../src/job/preview.ts';
import { edgeDistance } from '../../src/preview/distance.ts';
import { painted } from '../../src/preview/flat.ts';
import type { Layers } from '../../src/preview/layers.ts';
import { coatsLeft } from '../../src/preview/worn.ts';

const SQUARE = 120;

/** A floor of painted squares on point-blank ground: `wide` by `high` mm. */
function squares(wide: number, high: number, step: number): Layers {
  const [width, height] = [wide / step, high / step];
  const shapes = Uint8Array.from({ length: width * height }, (_, at) => {
    const [x, y] = [Math.floor(((at % width) * step) / SQUARE), Math.floor((Math.floor(at / width) * step) / SQUARE)];
    return (x + y) % 2;
  });
  const coat = (colour: number[], is: (at: number) => boolean) => {
    const data = new Uint8Array(width * height * 4);
    for (let at = 0; at < width * height; at++) if (is(at)) data.set([...colour, 255], 4 * at);
    return { width, height, data };
  };
  return {
    width,
    height,
    step,
    box: { left: 0, top: 0, right: wide, bottom: high },
    ground: coat([233, 223, 199], () => true),
    pattern: coat([51, 66, 79], (at) => shapes[at] === 1),
    shapes,
  };
}

const NEW: Looks = { thinCoat: 0, dryBrush: 0, wear: 0, walks: 'along', seed: 5 };
const FLOOR = squares(1200, 1800, 2);
const { width, step } = FLOOR;

/** Mean over the painted pixels that count. */
function mean(values: Float32Array, counts: (x: number, y: number) => boolean = () => true): number {
  let [sum, count] = [0, 0];
  for (let at = 0; at < values.length; at++) {
    if (FLOOR.shapes[at] === 0 || !counts(((at % width) + 0.5) * step, (Math.floor(at / width) + 0.5) * step)) continue;
    sum += values[at]!;
    count++;
  }
  return sum / count;
}

describe('so much is missing as is stated', () => {
  test.each([0.05, 0.3, 0.6, 0.9])('of a thin coat, %d', (thinCoat) => {
    const { film, pattern, ground } = coatsLeft(FLOOR, { ...NEW, thinCoat });
    expect(Math.abs(mean(film) - (1 - thinCoat))).toBeLessThan(0.01);
    expect([Math.min(...new Set(pattern)), Math.min(...new Set(ground))]).toEqual([1, 1]);
  });

  test.each([0.05, 0.3, 0.6, 0.9])('by a dry brush, %d', (dryBrush) => {
    const { pattern } = coatsLeft(FLOOR, { ...NEW, dryBrush });
    expect(Math.abs(mean(pattern) - (1 - dryBrush))).toBeLessThan(0.01);
  });

  test.each([0.05, 0.3, 0.6, 0.9])('by wear, %d, on a strip of 610 mm', (wear) => {
    const { pattern } = coatsLeft(FLOOR, { ...NEW, wear });
    expect(Math.abs(mean(pattern, (x) => Math.abs(x - 600) < 305) - (1 - wear))).toBeLessThan(0.01);
  });

  test('and none where nothing is stated', () => {
    for (const coat of Object.values(coatsLeft(FLOOR, NEW))) expect(new Set(coat)).toEqual(new Set([1]));
  });
});

test('a dry brush leaves least at the edge of a shape', () => {
  const { pattern } = coatsLeft(FLOOR, { ...NEW, dryBrush: 0.25 });
  const inside = (place: number) => Math.min(place % SQUARE, SQUARE - (place % SQUARE));
  const share = (from: number, to: number) =>
    mean(pattern, (x, y) => Math.min(inside(x), inside(y)) >= from && Math.min(inside(x), inside(y)) < to);
  const rings = [share(0, 4), share(4, 12), share(12, 24), share(30, 60)];
  expect(rings).toEqual([...rings].sort((a, b) => a - b));
  expect(rings[3]! - rings[0]!).toBeGreaterThan(0.4);
});

test('feet take most on the line they walk on, the pattern before the ground, and walk the other way across', () => {
  const along = coatsLeft(FLOOR, { ...NEW, wear: 0.5 });
  const strip = (from: number, to: number) =>
    mean(along.pattern, (x) => Math.abs(x - 600) >= from && Math.abs(x - 600) < to);
  const strips = [strip(0, 100), strip(100, 200), strip(200, 300), strip(300, 450), strip(450, 600)];
  expect(strips).toEqual([...strips].sort((a, b) => a - b));
  expect(strips[4]).toBeGreaterThan(0.97);
  expect(along.ground.findIndex((value, at) => value < along.pattern[at]! - 1e-6)).toBe(-1);
  const bare = along.ground.filter((value) => value < 0.5).length / along.ground.length;
  expect(bare).toBeGreaterThan(0.002);
  expect(bare).toBeLessThan(0.1);
  const across = coatsLeft(FLOOR, { ...NEW, wear: 0.5, walks: 'across' });
  const band = (off: number) =>
    mean(across.pattern, (_, y) => Math.abs(y - 900) >= off && Math.abs(y - 900) < off + 150);
  expect(band(0)).toBeLessThan(band(450) - 0.4);
});

test('the same seed gives the same bytes, another seed others', () => {
  const looks = { ...NEW, thinCoat: 0.2, dryBrush: 0.2, wear: 0.4 };
  const [once, again, other] = [looks, looks, { ...looks, seed: 6 }].map((one) => painted(FLOOR, one).data);
  expect(Buffer.compare(Buffer.from(once!), Buffer.from(again!))).toBe(0);
  let differ = 0;
  for (let at = 0; at < once!.length; at += 4) if (once![at] !== other![at]) differ++;
  expect(differ / (once!.length / 4)).toBeGreaterThan(0.3);
});

test('worn places lie where they lie, however fine the picture is', () => {
  const [coarse, fine] = [4, 2].map((size) => coatsLeft(squares(1200, 1800, size), { ...NEW, wear: 0.5 }).ground);
  const means = Float32Array.from(coarse!, (_, at) => {
    const [x, y] = [2 * (at % 300), 2 * Math.floor(at / 300)];
    const from = y * 600 + x;
    return (fine![from]! + fine![from + 1]! + fine![from + 600]! + fine![from + 601]!) / 4;
  });
  let worst = 0;
  for (let at = 0; at < means.length; at++) worst += Math.abs(means[at]! - coarse![at]!);
  const spread = means.reduce((sum, value) => sum + (1 - value), 0);
  expect(worst / spread).toBeLessThan(0.75);
});

// The definition: the nearest of all pixels that have a neighbour of another shape, or lie at the edge of the picture.
test('distances to the edge are those of looking at every pixel', () => {
  const pictures = fc
    .tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 }))
    .chain(([w, h]) =>
      fc.tuple(
        fc.constant(w),
        fc.constant(h),
        fc.array(fc.integer({ min: 0, max: 1 }), { minLength: w * h, maxLength: w * h }),
      ),
    );
  fc.assert(
    fc.property(pictures, ([w, h, list]) => {
      const all = list.map((_, at) => [at % w, Math.floor(at / w)] as const);
      const value = (x: number, y: number) => (x < 0 || y < 0 || x >= w || y >= h ? -1 : list[y * w + x]);
      const edges = all.filter(([x, y]) =>
        [value(x - 1, y), value(x + 1, y), value(x, y - 1), value(x, y + 1)].some((one) => one !== value(x, y)),
      );
      const found = edgeDistance(Uint8Array.from(list), w, h);
      for (const [at, [x, y]] of all.entries()) {
        const nearest = Math.min(...edges.map(([u, v]) => Math.hypot(u - x, v - y)));
        expect(found[at]).toBeCloseTo(nearest + 0.5, 4);
      }
    }),
  );
});
