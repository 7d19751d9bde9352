import { describe, expect, test } from 'vitest';
import { flatten } from '../../../src/geometry/flatten.ts';
import { boxCentre, piecesBox } from '../../../src/geometry/measure.ts';
import type { Piece, Point } from '../../../src/geometry/path.ts';
import { mirrored, shifted, turned } from '../../../src/geometry/transform.ts';
import { circle, polygon, rectangle } from '../../../src/motif/shapes.ts';
import type { BridgeSettings } from '../../../src/stencil/bridges/bridge.ts';
import { bridgeWindows } from '../../../src/stencil/bridges/bridge-windows.ts';
import { areaOf, differing, keptParts, loose } from './clipping.ts';
import { drawn, frame, rings, star } from './shapes.ts';

const SETTINGS: BridgeSettings = { bridge: 3, window: 1.5 };

const SHAPES: [name: string, windows: Piece[], islands: number][] = [
  ['a ring', rings(0, 0, 30, 20), 1],
  ['a small ring', rings(0, 0, 10, 6), 1],
  ['rings in a ring', rings(0, 0, 35, 30, 25, 20, 15, 10), 3],
  ['a frame', frame(60, 60, 10), 1],
  ['an oblong frame', frame(80, 40, 10), 1],
  ['a star of 4 in a diamond', drawn((pen) => [star(pen, 0, 0, 4, 40), star(pen, 0, 0, 4, 24, 8)]), 1],
  ['a star of 5 in a disc', drawn((pen) => [circle(pen, 0, 0, 40), star(pen, 0, 0, 5, 30, 15)]), 1],
  ['a star of 8 in a disc', drawn((pen) => [circle(pen, 0, 0, 40), star(pen, 0, 0, 8, 30, 15)]), 1],
  ['a six-sided frame', drawn((pen) => [star(pen, 0, 0, 6, 40), star(pen, 0, 0, 6, 30)]), 1],
  ['four rings', [-30, 30].flatMap((x) => [-30, 30].flatMap((y) => rings(x, y, 20, 14))), 4],
  [
    'a net of sixteen squares',
    drawn((pen) => {
      rectangle(pen, 0, 0, 100, 100);
      for (let n = 0; n < 16; n++) rectangle(pen, 24 * (n % 4) - 36, 24 * Math.floor(n / 4) - 36, 20, 20);
    }),
    16,
  ],
];

/** Mirror images about the middle of the drawing's box. */
const reflections = (windows: Piece[], [x, y]: Point): Piece[][] =>
  (['across', 'along'] as const).map((axis) =>
    windows.map((piece) => shifted(mirrored(shifted(piece, -x, -y), axis), x, y)),
  );

describe.each(SHAPES)('%s', (_, windows, islands) => {
  test('nothing falls out: before, as many loose pieces as islands; after, none; at least one bridge an island (Euler)', async () => {
    expect(loose(keptParts(windows))).toBe(islands);
    const { windows: after, bridges, unmended } = await bridgeWindows(windows, SETTINGS);
    expect(loose(keptParts(after))).toBe(0);
    expect(bridges.length).toBeGreaterThanOrEqual(islands);
    expect(unmended).toEqual([]);
  });

  test('bridges are 3 mm wide: the sheet holds when eroded as far as 2.98, not as far as 3.06', async () => {
    const { windows: after } = await bridgeWindows(windows, SETTINGS);
    expect(loose(keptParts(after, 2.98 / 2))).toBe(0);
    expect(loose(keptParts(after, 3.06 / 2))).toBeGreaterThan(0);
  });

  test('what it costs in paint is what clipper2 measures, and only bridges were taken', async () => {
    const { windows: after, bridges, lost } = await bridgeWindows(windows, SETTINGS);
    const before = areaOf(windows);
    expect(Math.abs(1 - areaOf(after) / before - lost)).toBeLessThan(5e-5);
    const strips = bridges.reduce((sum, { length, width }) => sum + length * width, 0);
    expect(Math.abs(lost * before - strips)).toBeLessThan(0.06 * strips);
  });

  test('every mirror line across and along is kept', async () => {
    const { windows: after } = await bridgeWindows(windows, SETTINGS);
    const centre = boxCentre(piecesBox(windows));
    reflections(windows, centre).forEach((image, at) => {
      if (differing(windows, image) > 0.05) return;
      expect(differing(after, reflections(after, centre)[at]!)).toBeLessThan(0.05);
    });
  });

  test('same in, same out; and the same drawing elsewhere gets the same bridges', async () => {
    const one = await bridgeWindows(windows, SETTINGS);
    expect(await bridgeWindows(windows, SETTINGS)).toEqual(one);
    const there = await bridgeWindows(
      windows.map((piece) => shifted(piece, 512, -128)),
      SETTINGS,
    );
    expect(
      differing(
        there.windows.map((piece) => shifted(piece, -512, 128)),
        one.windows,
      ),
    ).toBeLessThan(0.01);
  });
});

test('no bridge comes near a tip: stars, frames and diamonds', async () => {
  for (const [name, windows] of SHAPES) {
    if (!/star|frame/.test(name)) continue;
    const corners = windows.flat().flatMap((ring) => {
      return ring.sides.every(({ kind }) => kind === 'line') ? ring.sides.map(({ to }) => to) : [];
    });
    const { bridges } = await bridgeWindows(windows, SETTINGS);
    for (const { at, way, length, width } of bridges)
      for (const [x, y] of corners) {
        const [dx, dy] = [x - at[0], y - at[1]];
        const along = Math.max(0, Math.abs(dx * way[0] + dy * way[1]) - length / 2);
        const aside = Math.abs(dx * way[1] - dy * way[0]);
        expect(Math.hypot(along, aside), name).toBeGreaterThan(width / 2);
      }
  }
});

test('as short as can be: through a ring by its own width, through a leaning ring where it is narrow', async () => {
  const even = await bridgeWindows(rings(0, 0, 30, 20), SETTINGS);
  for (const { length } of even.bridges) expect(Math.abs(length - 10)).toBeLessThan(0.01);
  const leaning = await bridgeWindows(
    drawn((pen) => [circle(pen, 0, 0, 30), circle(pen, 9, 0, 12)]),
    SETTINGS,
  );
  // Narrowest on the right: 30 - 9 - 12.
  expect(Math.min(...leaning.bridges.map(({ length }) => length))).toBeLessThan(10);
});

test('an island wider than 25 mm, or than the job says, hangs on two bridges', async () => {
  const pair = (radius: number) =>
    drawn((pen) => {
      rectangle(pen, 0, 0, 90, 50);
      circle(pen, -20, 3, radius);
      circle(pen, 20, -3, radius);
    });
  const count = async (radius: number, settings = SETTINGS) =>
    (await bridgeWindows(pair(radius), settings)).bridges.length;
  expect(await count(12)).toBe(2);
  expect(await count(13)).toBe(4);
  expect(await count(12, { ...SETTINGS, atLeastTwoOver: 20 })).toBe(4);
});

test('a quarter turn of a drawing is bridged as soundly', async () => {
  const windows = drawn((pen) => {
    rectangle(pen, 0, 0, 80, 40);
    circle(pen, -15, 4, 10);
  }).map((piece) => turned(piece, 1));
  expect(loose(keptParts((await bridgeWindows(windows, SETTINGS)).windows, 1.49))).toBe(0);
});

test('necks thinner than a bridge are widened: discs 1 mm apart, diamonds that touch', async () => {
  for (const windows of [
    [...rings(0, 0, 20), ...rings(41, 0, 20)],
    [0, 40].flatMap((x) => drawn((pen) => star(pen, x, 0, 4, 20))),
    [0, 30].flatMap((x) => drawn((pen) => rectangle(pen, x, 0, 29, 60))),
  ]) {
    const { windows: after, bridges, unmended } = await bridgeWindows(windows, SETTINGS);
    expect(unmended).toEqual([]);
    expect(bridges.map(({ kind }) => kind)).toContain('neck');
    const [one, other] = after.map((piece) => flatten(piece[0]!, 0.002));
    const gap = Math.min(...one!.map((p) => Math.min(...other!.map((q) => Math.hypot(p[0] - q[0], p[1] - q[1])))));
    expect(gap).toBeGreaterThan(2.98);
    expect(gap).toBeLessThan(3.1);
  }
});

test('sides of windows away from a bridge come back as the curves they were', async () => {
  const windows = [...rings(0, 0, 30, 20), ...rings(100, 0, 10)];
  const { windows: after } = await bridgeWindows(windows, SETTINGS);
  expect(after.at(-1)).toBe(windows.at(-1));
  for (const piece of after.slice(0, -1)) expect(piece[0]!.sides.some(({ kind }) => kind === 'curve')).toBe(true);
});

test('a window too narrow to paint is named with its place and width', async () => {
  const windows = drawn((pen) =>
    polygon(pen, [
      [0, 0],
      [20, 0],
      [20, 9.6],
      [40, 9.6],
      [40, 0],
      [60, 0],
      [60, 20],
      [40, 20],
      [40, 10.4],
      [20, 10.4],
      [20, 20],
      [0, 20],
    ]),
  );
  const { unmended } = await bridgeWindows(windows, SETTINGS);
  expect(unmended).toHaveLength(1);
  const [{ x, y, width, says }] = unmended as [(typeof unmended)[number]];
  expect(x).toBeGreaterThan(19);
  expect(x).toBeLessThan(41);
  expect(Math.abs(y - 10)).toBeLessThan(0.5);
  expect(Math.abs(width - 0.8)).toBeLessThan(0.01);
  expect(says).toContain('narrower');
});

test('no windows, no bridges', async () => {
  expect(await bridgeWindows([], SETTINGS)).toEqual({ windows: [], bridges: [], lost: 0, unmended: [] });
});
