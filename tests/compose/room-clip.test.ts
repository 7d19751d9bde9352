import { areaPaths, difference, FillRule, intersect } from 'clipper2-ts';
import { expect, test } from 'vitest';
import { clipToFloor } from '../../src/compose/room-clip.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { pieceArea } from '../../src/geometry/measure.ts';
import type { Piece, Point } from '../../src/geometry/path.ts';
import { shifted } from '../../src/geometry/transform.ts';
import { findMotif } from '../../src/motif/library.ts';
import { drawMotif } from '../../src/motif/record.ts';
import { fillSettings } from '../../src/motif/settings.ts';

const ROOM: Point[] = [
  [-510, 700],
  [520, 690],
  [505, -720],
  [-500, -690],
];
const HEARTH: Point[] = [
  [-180, -760],
  [200, -750],
  [190, -480],
  [-175, -470],
];
const POST: Point[] = [
  [130, 90],
  [210, 60],
  [240, 180],
];

const GRID = 8000;
const onGrid = (points: readonly Point[]) =>
  points.map(([x, y]) => ({ x: Math.round(x * GRID), y: Math.round(y * GRID) }));

/** Area of pieces on the floor by clipper2, chords within half a micrometre. */
function byClipper(pieces: Piece[]): number {
  const floor = difference([onGrid(ROOM)], [onGrid(HEARTH), onGrid(POST)], FillRule.NonZero);
  const rings = pieces.flatMap((piece) => piece.map((ring) => onGrid(flatten(ring, 0.0005))));
  return Math.abs(areaPaths(intersect(rings, floor, FillRule.EvenOdd))) / GRID / GRID;
}

// clipper2 is a general-purpose library for polygons; it shares nothing with the cut along walls.
test.each(['eight-point-star', 'ogee', 'quatrefoil'])(
  '%s: the area left is that of clipper2, to 0.01 %',
  async (name) => {
    const motif = findMotif(name)!;
    const clip = await clipToFloor(ROOM, [HEARTH, POST]);
    const filled = fillSettings(motif, {});
    if (!filled.ok) throw new Error(name);
    for (const { part, pieces } of drawMotif(motif, { across: 170, along: 170 * motif.ratio }, filled.value)) {
      const at: number[] = [];
      for (let i = -5; i <= 5; i++) for (let j = -7; j <= 7; j++) at.push(i * 170 + 3, j * 170 * motif.ratio - 5);
      const all = [];
      for (let n = 0; n < at.length; n += 2) all.push(...pieces.map((piece) => shifted(piece, at[n]!, at[n + 1]!)));
      const regions = clip.regions([{ element: 'field', part, pieces, cut: false, at: Float64Array.from(at) }]);
      const area = regions.reduce(
        (sum, region) => sum + (region.at.length / 2) * region.pieces.reduce((one, piece) => one + pieceArea(piece), 0),
        0,
      );
      const due = byClipper(all);
      expect(Math.abs(area - due) / due).toBeLessThan(1e-4);
      expect(due).toBeGreaterThan(1000);
    }
  },
);

test('what nothing cuts comes back as it was, and what lies beyond is gone', async () => {
  const clip = await clipToFloor(ROOM, [HEARTH]);
  const piece = (x: number, y: number): Piece => [
    {
      start: [x, y],
      sides: [
        { kind: 'line', to: [x + 20, y] },
        { kind: 'line', to: [x + 20, y + 20] },
        { kind: 'line', to: [x, y + 20] },
      ],
    },
  ];
  const inside = piece(0, 0);
  expect(clip.piece(inside)).toEqual([inside]);
  expect(clip.piece(inside)[0]).toBe(inside);
  expect(clip.piece(piece(-540, 0))).toEqual([]);
  expect(clip.piece(piece(0, -600))).toEqual([]);
});
