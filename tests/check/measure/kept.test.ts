import { describe, expect, test } from 'vitest';
import { leastGap, type Polygon } from '../../../src/check/measure/gap.ts';
import { lookAtKept } from '../../../src/check/measure/kept.ts';

const polygon = (points: number[]): Polygon => {
  const xs = points.filter((_, i) => i % 2 === 0);
  const ys = points.filter((_, i) => i % 2 === 1);
  return {
    points,
    frame: { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) },
  };
};
const box = (left: number, top: number, right: number, bottom: number) =>
  polygon([left, top, right, top, right, bottom, left, bottom]);

/** A ring cut open at angles; each opening in it is a bridge of the width given. */
function ring(inner: number, outer: number, bridges: number[]): Polygon[] {
  return bridges.map((width, at) => {
    const next = bridges[(at + 1) % bridges.length]!;
    const turn = (2 * Math.PI) / bridges.length;
    const points: number[] = [];
    const side = (radius: number, from: number, to: number) => {
      for (let k = 0; k <= 400; k++) {
        const angle = from + ((to - from) * k) / 400;
        points.push(100 + radius * Math.cos(angle), 100 + radius * Math.sin(angle));
      }
    };
    // Half the bridge is taken off on both flanks, parallel to the ray.
    const begin = (radius: number) => at * turn + Math.asin(width / 2 / radius);
    const end = (radius: number) => (at + 1) * turn - Math.asin(next / 2 / radius);
    side(outer, begin(outer), end(outer));
    side(inner, end(inner), begin(inner));
    return polygon(points);
  });
}

const sheet = { left: 0, top: 0, right: 200, bottom: 200 };
const look = (windows: Polygon[], bridge = 2) =>
  lookAtKept(
    sheet,
    windows.map((one) => [one]),
    [],
    bridge,
    2,
  );

describe('what is left of a sheet', () => {
  test('an uncut ring leaves an island', async () => {
    const [outer, inner] = [box(50, 50, 150, 150), box(60, 60, 140, 140)];
    const kept = await lookAtKept(sheet, [[outer, inner]], [], 2, 2);
    expect(kept).toMatchObject({ pieces: 2, overlap: 0 });
  });

  test('bridges keep the middle in the sheet, as many windows as bridges (Euler)', async () => {
    expect(await look(ring(40, 60, [4, 4, 4, 4]))).toMatchObject({ pieces: 1, pared: 1, narrow: -1 });
  });

  // A single neck is found out by paring; its width is right to 0.02 mm, on the safe side.
  test.each([
    [2.1, 1],
    [2, 1],
    [1.99, 1],
    [1.96, 2],
    [1, 2],
  ])('one bridge of %f mm where 2 mm are asked for leaves %i', async (width, pared) => {
    expect(await look(ring(40, 60, [width]))).toMatchObject({ pieces: 1, pared });
  });

  test('one thin bridge of four is measured', () => {
    expect(leastGap(ring(40, 60, [4, 4, 1.2, 4]), 10).gap).toBeCloseTo(1.2, 3);
  });

  test('windows that overlap, whichever way they run', async () => {
    const one = box(20, 20, 60, 60);
    const back = polygon([40, 40, 40, 80, 80, 80, 80, 40]);
    expect((await look([one, back])).overlap).toBeCloseTo(400, 6);
    expect((await look([one, one])).overlap).toBeCloseTo(1600, 6);
    expect((await look([one, box(60, 20, 90, 60)])).overlap).toBeCloseTo(0, 6);
  });

  test('a window narrower than the least, or with a narrow waist, is named', async () => {
    expect((await look([box(20, 20, 60, 60), box(100, 20, 101.5, 60)])).narrow).toBe(1);
    const waist = polygon([
      20, 20, 60, 20, 60, 40, 41, 40, 41, 60, 60, 60, 60, 80, 20, 80, 20, 60, 39.5, 60, 39.5, 40, 20, 40,
    ]);
    expect((await look([waist])).narrow).toBe(0);
    expect((await look([box(100, 20, 102.1, 60)])).narrow).toBe(-1);
  });
});

describe('the least gap', () => {
  test('between sides, corners and crossings', () => {
    expect(leastGap([box(0, 0, 10, 10), box(13, 0, 20, 10)], 99).gap).toBeCloseTo(3, 12);
    expect(leastGap([box(0, 0, 10, 10), box(13, 14, 20, 20)], 99).gap).toBeCloseTo(5, 12);
    expect(leastGap([box(0, 0, 10, 10), box(5, 5, 20, 20)], 99).gap).toBe(0);
    expect(leastGap([box(0, 0, 10, 10), box(500, 0, 510, 10)], 4).gap).toBe(4);
  });
});
