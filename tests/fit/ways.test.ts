import { expect, test } from 'vitest';
import { alternating, hasRoom, landingAt, waysToLand } from '../../src/fit/ways.ts';
import { CENTRED, PLAIN } from '../../src/motif/motif.ts';

const SQUARES = { mirrors: [0.25, 0.75], whole: [0, 0.5], half: [0.25, 0.75] };

// Parity (mathematics): a whole diamond on the centre line needs an odd count, a joint on it an even one.
test('an odd count of whole diamonds has one on the centre line, an even count a joint', () => {
  expect(waysToLand(10, CENTRED)).toEqual([
    { phase: 0, edge: 'whole', centre: 'half' },
    { phase: 0.5, edge: 'half', centre: 'whole' },
  ]);
  expect(waysToLand(8, CENTRED)).toEqual([
    { phase: 0, edge: 'whole', centre: 'whole' },
    { phase: 0.5, edge: 'half', centre: 'half' },
  ]);
});

test('diamonds never land on an odd count of halves: one edge would show whole ones and the other halves', () => {
  for (const halves of [1, 3, 5, 7, 9]) expect(waysToLand(halves, CENTRED)).toEqual([]);
});

test('a checkerboard lands on an odd count of squares, whole at the edges and through a square at the centre', () => {
  for (const squares of [3, 5, 7, 9]) {
    expect(
      waysToLand(squares, SQUARES)
        .filter((way) => way.edge === 'whole')
        .map((way) => way.phase),
    ).toEqual([0, 0.5]);
    expect(waysToLand(squares, SQUARES).every((way) => way.centre === 'half' || way.edge === 'half')).toBe(true);
  }
});

test('a checkerboard of an even count of squares lands only with halves at the edges', () => {
  for (const squares of [4, 6, 8]) expect(waysToLand(squares, SQUARES).every((way) => way.edge === 'half')).toBe(true);
});

test('a motif with no mirror lands on the boundaries of its repeats', () => {
  const oneWay = { mirrors: [], whole: [0], half: [] };
  expect(waysToLand(6, oneWay)).toEqual([{ phase: 0, edge: 'whole', centre: 'cut' }]);
  expect(waysToLand(8, oneWay)).toEqual([{ phase: 0, edge: 'whole', centre: 'whole' }]);
  expect(waysToLand(7, oneWay)).toEqual([]);
});

test('plain ground lands everywhere', () => {
  for (const halves of [1, 2, 3, 4, 5]) expect(waysToLand(halves, PLAIN).length).toBeGreaterThan(0);
});

test.each([
  [0, 'whole'],
  [1, 'whole'],
  [2.5, 'half'],
  [0.25, 'cut'],
  [-0.5, 'half'],
])('a line at %d of a diamond meets it %s', (at, landing) => {
  expect(landingAt(at, CENTRED)).toBe(landing);
});

// Parity (mathematics): two kinds by turns are alike at both ends only when their count is odd.
test('alternate diamonds land whole on odd counts, with one kind at both ends', () => {
  for (const count of [3, 5, 7]) {
    expect(waysToLand(2 * count, alternating(CENTRED))).toEqual([{ phase: 0, edge: 'whole', centre: 'half' }]);
  }
  for (const count of [2, 4, 6]) {
    expect(waysToLand(2 * count, alternating(CENTRED))).toEqual([{ phase: 0.5, edge: 'half', centre: 'half' }]);
  }
});

test('a medallion takes an odd room among an odd count of whole repeats, an even room among an even one', () => {
  for (const count of [5, 6, 7, 8]) {
    for (const room of [1, 2, 3, 4]) {
      const whole = waysToLand(2 * count, CENTRED).filter((way) => way.edge === 'whole');
      expect(whole.every((way) => hasRoom(way, 2 * count, room))).toBe((count - room) % 2 === 0);
    }
  }
});
