import { Resvg } from '@resvg/resvg-js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flatten } from '../../src/geometry/flatten.ts';
import { pieceArea, pieceBox, ringArea, ringBox } from '../../src/geometry/measure.ts';
import type { Piece, Point, Ring, Side } from '../../src/geometry/path.ts';
import { mirrored, quarterTurn, reversedRing, shifted, turned } from '../../src/geometry/transform.ts';
import { pathText } from '../../src/write/path.ts';
import { woundArea } from '../support/areas.ts';
import { readRings } from '../support/read-path.ts';

/** The drawn extent of a path as resvg finds it. */
function drawnBox(d: string) {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="-2000 -2000 4000 4000" width="4000" height="4000"><path d="${d}"/></svg>`;
  return new Resvg(svg).getBBox()!;
}

const coordinate = fc.integer({ min: -900_000, max: 900_000 }).map((n) => n / 1000);
const point = fc.tuple(coordinate, coordinate);
const side: fc.Arbitrary<Side> = fc.oneof(
  point.map((to): Side => ({ kind: 'line', to })),
  fc.tuple(point, point, point).map(([out, into, to]): Side => ({ kind: 'curve', out, into, to })),
);
const ring: fc.Arbitrary<Ring> = fc
  .tuple(point, fc.array(side, { minLength: 2, maxLength: 5 }))
  .map(([start, sides]) => ({ start, sides: [...sides, { kind: 'line', to: start }] }));

describe('area', () => {
  test('of the triangle in the SVG 2 path chapter is 20,000', () => {
    expect(Math.abs(ringArea(readRings('M 100 100 L 300 100 L 200 300 z')[0]!))).toBe(20_000);
  });

  test('is positive clockwise on the page', () => {
    expect(ringArea(readRings('M0 0 L10 0 L10 10 z')[0]!)).toBe(50);
    expect(ringArea(readRings('M0 0 L10 10 L10 0 z')[0]!)).toBe(-50);
  });

  test('of a parabola segment is two thirds of its box (Archimedes), drawn as one cubic', () => {
    // The quadratic from 0,0 over 30,60 to 60,0, raised to a cubic; it peaks at 30.
    expect(Math.abs(ringArea(readRings('M0 0C20 40 40 40 60 0z')[0]!))).toBeCloseTo((2 / 3) * 60 * 30, 9);
  });

  test('of any ring is what clipper2 adds up of its chords', () => {
    fc.assert(
      fc.property(ring, (one) => {
        const length = one.sides.length * 4000;
        expect(Math.abs(woundArea([[one]]) - Math.abs(ringArea(one)))).toBeLessThan(length * 0.0005);
      }),
      { seed: 6, numRuns: 200 },
    );
  });

  test('of a piece leaves its holes out', () => {
    const [outer, hole] = readRings('M0 0L10 0L10 10L0 10zM2 2L2 5L6 5L6 2z');
    expect(pieceArea([outer!, hole!])).toBe(88);
  });
});

describe('box', () => {
  test('is what resvg draws, to a hundredth of a millimetre, whatever the ring', () => {
    fc.assert(
      fc.property(ring, (one) => {
        const drawn = drawnBox(pathText([one]));
        const box = ringBox(one);
        expect(Math.abs(box.left - drawn.x)).toBeLessThan(0.02);
        expect(Math.abs(box.top - drawn.y)).toBeLessThan(0.02);
        expect(Math.abs(box.right - box.left - drawn.width)).toBeLessThan(0.03);
        expect(Math.abs(box.bottom - box.top - drawn.height)).toBeLessThan(0.03);
      }),
      { seed: 7, numRuns: 200 },
    );
  });

  test('follows a curve to where it turns, not to its handles', () => {
    expect(ringBox(readRings('M0 0C20 40 40 40 60 0z')[0]!)).toEqual({ left: 0, top: 0, right: 60, bottom: 30 });
  });
});

describe('chords', () => {
  test.each([0.1, 0.005])('stay within %d mm of a circle', (tolerance) => {
    const k = 0.5522847498307936 * 250;
    const circle = `M250 0C250 ${k} ${k} 250 0 250C${-k} 250 -250 ${k} -250 0C-250 ${-k} ${-k} -250 0 -250C${k} -250 250 ${-k} 250 0z`;
    const points = flatten(readRings(circle)[0]!, tolerance);
    for (let i = 0; i < points.length; i++) {
      const [a, b] = [points[i]!, points[(i + 1) % points.length]!];
      const middle = Math.sqrt(((a[0] + b[0]) / 2) ** 2 + ((a[1] + b[1]) / 2) ** 2);
      expect(250 - middle).toBeLessThan(tolerance);
    }
    // And are not finer than needed: a chord of sagitta s on radius r spans 2 √(2 r s).
    expect(points.length).toBeLessThan((1.3 * 2 * Math.PI * 250) / (2 * Math.sqrt(2 * 250 * tolerance)) + 8);
  });
});

describe('moving', () => {
  const flag: Piece = readRings('M0 0L10 0C12 2 12 4 10 5L0 5z');

  test('a quarter turn takes the top to the right, clockwise on the page', () => {
    const top: Point = [0, -1];
    expect([0, 1, 2, 3, 4, -1].map((turns) => quarterTurn(turns)(top).map((v) => v + 0))).toEqual([
      [0, -1],
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
      [-1, 0],
    ]);
  });

  test.each([1, 2, 3])('%d quarter turns are what the SVG rotate of resvg draws', (turns) => {
    const d = pathText(flag);
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="-20 -20 40 40"><path transform="rotate(${90 * turns})" d="${d}"/></svg>`;
    const drawn = new Resvg(svg).getBBox()!;
    const box = pieceBox(turned(flag, turns));
    expect(box.left).toBeCloseTo(drawn.x, 3);
    expect(box.top).toBeCloseTo(drawn.y, 3);
    expect(box.right - box.left).toBeCloseTo(drawn.width, 3);
  });

  test('turning, shifting and mirroring keep area and direction', () => {
    fc.assert(
      fc.property(ring, (one) => {
        const area = ringArea(one);
        const close = 1e-6 * (1 + Math.abs(area));
        for (const [moved] of [
          turned([one], 3),
          shifted([one], 12, -7),
          mirrored([one], 'across'),
          mirrored([one], 'along'),
        ]) {
          expect(Math.abs(ringArea(moved!) - area)).toBeLessThan(close);
        }
        expect(Math.abs(ringArea(reversedRing(one)) + area)).toBeLessThan(close);
        expect(reversedRing(reversedRing(one))).toEqual(one);
      }),
      { seed: 8, numRuns: 200 },
    );
  });

  test('mirroring across swaps left and right', () => {
    const { left, right, top, bottom } = pieceBox(mirrored(flag, 'across'));
    expect([left, right + 0, top, bottom]).toEqual([-11.5, 0, 0, 5]);
  });
});
