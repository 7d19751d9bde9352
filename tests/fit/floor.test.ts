import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutAt, isBalanced } from '../../src/fit/floor/cut.ts';
import type { FloorAxis, FloorProblem } from '../../src/fit/floor/problem.ts';
import { layingsOf, searchFloor } from '../../src/fit/floor/search.ts';
import { tapeOf } from '../../src/fit/tape.ts';
import { waysTable } from '../../src/fit/ways.ts';
import { CENTRED } from '../../src/motif/motif.ts';
import type { Reach } from '../../src/site/floor-room.ts';
import { plainFloors } from './plain-floor.ts';

const IN = 25.4;
const tape = tapeOf('inch', IN / 16);

/** A wall so far from the centre line, in, that strays by so much over its length to either side. */
const wall = (away: number, stray = 0): Reach => ({
  centre: away * IN,
  ends: [(away - stray) * IN, (away + stray) * IN],
  least: (away - stray) * IN,
  most: (away + stray) * IN,
});

const axis = (walls: [Reach, Reach], pitch: { from: number; to: number; wish?: number }): FloorAxis => ({
  walls,
  pitch: { ...pitch, from: pitch.from * IN, to: pitch.to * IN, ...(pitch.wish ? { wish: pitch.wish * IN } : {}) },
  halves: { from: 1, to: 1000 },
  pieces: 1,
  ways: waysTable(CENTRED).map((ways) => ways.filter(({ edge }) => edge === 'whole')),
});

const oneWay = (space: number, pitch: number) =>
  layingsOf(axis([wall(space / 2), wall(space / 2)], { from: pitch, to: pitch }), pitch * IN, tape);

describe('balanced cuts as published', () => {
  // fcimag.com, article 95138: a 24 in tile would leave a sliver of 1 1/2 in; (24 + 1 1/2) / 2 = 12 3/4 in at each side.
  test.each([1, 2, 3, 4, 5])('%i repeats of 24 in and 1 1/2 in over: 12 3/4 in at each side', (count) => {
    const found = oneWay(24 * count + 1.5, 24);
    expect(found).toHaveLength(1);
    for (const cut of found[0]!.cuts) expect(cut.least / IN).toBeCloseTo(12.75, 9);
  });

  // floortrendsmag.com, article 111279: 1 3/4 in and 1 1/4 in are left beside tiles of 11 3/4 in: 14 3/4 in, half of which, 7 3/8 in, goes to each side.
  test.each([2, 3, 6])('%i repeats of 11 3/4 in, 1 3/4 in and 1 1/4 in over: 7 3/8 in at each side', (count) => {
    const found = oneWay(11.75 * count + 1.75 + 1.25, 11.75);
    expect(found).toHaveLength(1);
    for (const cut of found[0]!.cuts) expect(cut.least / IN).toBeCloseTo(7.375, 9);
  });

  // ANSI A108.02, 4.3.1 and 4.3.2, as quoted in fcimag.com, article 94416: centre and balance; no piece under half size.
  test('no cut under half a repeat, both sides alike, in any room', () => {
    fc.assert(
      fc.property(fc.integer({ min: 400, max: 4000 }), fc.integer({ min: 32, max: 300 }), (space, pitch) => {
        for (const { cuts, pitch: p, halves } of oneWay(space / 16, pitch / 16)) {
          expect(Math.abs(cuts[0].centre - cuts[1].centre)).toBeLessThan(1e-9);
          expect(cuts[0].least).toBeGreaterThanOrEqual(p / 2 - 1e-5);
          // Whole repeats between the cuts fill the room exactly.
          const between = (space / 16) * IN - 2 * cuts[0].centre;
          expect(Math.abs(between / p - Math.round(between / p))).toBeLessThan(1e-6);
          expect((halves / 2) * p).toBeGreaterThanOrEqual((space / 16) * IN - 1e-4);
        }
      }),
    );
  });
});

describe('a crooked wall', () => {
  test('is told at its narrowest and widest, and refused where half would not be left', () => {
    const spacing = { unit: 10, first: 0 };
    expect(cutAt({ centre: 37, ends: [36, 38], least: 36, most: 38 }, spacing)).toEqual({
      centre: 7,
      least: 6,
      most: 8,
      whole: false,
    });
    const narrow = cutAt({ centre: 36, ends: [34, 38], least: 34, most: 38 }, spacing)!;
    expect(isBalanced(narrow, spacing)).toBe(false);
    expect(cutAt({ centre: 40, ends: [39, 41], least: 39, most: 41 }, spacing)).toBeUndefined();
  });

  test('that runs on a line between repeats cuts nothing', () => {
    const cut = cutAt({ centre: 40, ends: [40, 40], least: 40, most: 40 }, { unit: 10, first: 0 });
    expect(cut).toEqual({ centre: 10, least: 10, most: 10, whole: true });
  });
});

const problem = (across: FloorAxis, along: FloorAxis, stretch = { from: 0.95, to: 1.05 }): FloorProblem => ({
  tape,
  across,
  along,
  ratio: 1,
  stretch,
  middleFits: () => true,
});

describe('the search', () => {
  const rooms = [
    problem(
      axis([wall(42.2, 0.1), wall(42.2, 0.3)], { from: 9, to: 12, wish: 10 }),
      axis([wall(54, 0.2), wall(54, 0.6)], { from: 9, to: 12 }),
    ),
    problem(axis([wall(48), wall(48)], { from: 7, to: 8 }), axis([wall(60.5), wall(60.5)], { from: 6.75, to: 8.25 })),
    problem(
      axis([wall(30), wall(35)], { from: 9, to: 11, wish: 10 }),
      axis([wall(41), wall(41)], { from: 8, to: 12 }),
      { from: 1, to: 1 },
    ),
  ];

  test.each(rooms.map((room, at) => [at, room] as const))('room %i: the same as plain nested loops', (_, room) => {
    const found = searchFloor(room, 10);
    const plain = plainFloors(room, 10);
    expect(plain.list.length).toBeGreaterThan(1);
    expect(
      found.candidates.map(({ across, along, cost }) => [across.pitch, across.halves, along.pitch, along.halves, cost]),
    ).toEqual(plain.list);
    expect(found.searched).toBe(plain.gone);
  });

  test('lists kinds that differ in how many repeats are laid', () => {
    const kinds = searchFloor(rooms[0]!, 10).candidates.map(({ across, along }) => `${across.halves} ${along.halves}`);
    expect(new Set(kinds).size).toBe(kinds.length);
  });
});
