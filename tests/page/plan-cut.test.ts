import { expect, test } from 'vitest';
import type { Region } from '../../src/compose/drawing.ts';
import type { Piece } from '../../src/geometry/path.ts';
import { lookAt } from '../../src/page/engine/look.ts';
import { bridgesBetween, cutViewOf } from '../../src/page/engine/plan/cut.ts';
import { coveredArea, sharedArea } from '../support/areas.ts';

/** Letters with counters that would fall out, among repeats that need no bridge. */
const jobOf = (text: string): string => `
evenfield: 1
title: Letters
surface: floor-cloth
overall: { across: 30", along: 42" }
field: { motif: greek-cross, pitch: { across: 5" to 7" } }
lettering: { text: ${text}, cap height: 3" }
palette: { chalk: '#eeeeee', ink: '#223344', clay: '#a0522d' }
colours: { ground: chalk, field: ink, alternate: clay, lettering: clay }
`;

const sum = (regions: readonly Region[], of: (region: Region) => number): number =>
  regions.reduce((whole, region) => whole + (region.at.length / 2) * of(region), 0);

// Areas by clipper2, a general-purpose library for polygons; see tests/support/areas.ts.
test.each([
  ['BOARD', true],
  ['HILL', false],
] as const)(
  '%s: windows and bridges together are what is painted, and no bridge lies in a window',
  async (text, isHeld) => {
    const [look, cut] = [await lookAt(jobOf(text), 0), await cutViewOf(jobOf(text), 0)];
    if (!look.ok || !cut.ok) throw new Error(JSON.stringify([look, cut]).slice(0, 500));
    const { windows, bridges } = cut.value;
    const [painted, open, held] = [look.value.drawing.regions, windows, bridges].map((regions) =>
      sum(regions, ({ pieces }) => coveredArea(pieces)),
    );
    expect(open! + held!).toBeCloseTo(painted!, 0);
    expect(held! > 0).toBe(isHeld);
    for (const bridge of bridges)
      for (const window of windows)
        if (window.part === bridge.part && window.at.join(' ') === bridge.at.join(' '))
          expect(sharedArea(bridge.pieces, window.pieces)).toBeLessThan(0.01);
  },
);

const oblong = (left: number, top: number, right: number, bottom: number): Piece => [
  {
    start: [left, top],
    sides: (
      [
        [right, top],
        [right, bottom],
        [left, bottom],
        [left, top],
      ] as const
    ).map(([x, y]) => ({ kind: 'line', to: [x, y] })),
  },
];
const region = (pieces: Piece[], ...at: number[]): Region => ({
  element: 'field',
  part: 'field',
  pieces,
  cut: false,
  at: new Float64Array(at),
});

// By hand: of a square of 10 mm at three places the first is cut in halves with 2 mm between, the second whole, the third 1 mm short at one side.
test('a shape that is cut otherwise at each of its places shows its bridges where they are', async () => {
  const square = [oblong(0, 0, 10, 10)];
  const bridges = await bridgesBetween(
    [region(square, 0, 0, 50, 0, 0, 50)],
    [
      region([oblong(0, 0, 4, 10)], 0, 0),
      region([oblong(6, 0, 10, 10)], 0, 0),
      region(square, 50, 0),
      region([oblong(0, 0, 9, 10)], 0, 50),
    ],
  );
  expect(bridges.map(({ at, pieces }) => [[...at], coveredArea(pieces)])).toEqual([
    [[0, 0], expect.closeTo(20, 6)],
    [[0, 50], expect.closeTo(10, 6)],
  ]);
});
