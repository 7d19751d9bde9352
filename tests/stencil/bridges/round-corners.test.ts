import { expect, test } from 'vitest';
import { pieceArea, piecesBox } from '../../../src/geometry/measure.ts';
import type { Piece } from '../../../src/geometry/path.ts';
import { bridgeWindows } from '../../../src/stencil/bridges/bridge-windows.ts';
import { soundness } from '../../../src/stencil/soundness.ts';
import { frame, letter, rings } from './shapes.ts';

const LEAST = { bridge: 3, window: 1.5 };
const area = (pieces: Piece[]): number => pieces.reduce((sum, piece) => sum + pieceArea(piece), 0);
const sides = (pieces: Piece[]): number => pieces.flat().reduce((sum, ring) => sum + ring.sides.length, 0);

test('a square corner of radius r loses r² (1 − π/4)', async () => {
  const windows = frame(80, 60, 12);
  const sharp = await bridgeWindows(windows, LEAST);
  const round = await bridgeWindows(windows, { ...LEAST, round: 1 });
  // Every bridge over a straight band cuts four square corners.
  const corners = 4 * sharp.bridges.length;
  expect(corners).toBeGreaterThan(0);
  expect(sides(round.windows) - sides(sharp.windows)).toBe(corners);
  // A quarter circle in one cubic is 0.0273 % too wide at most.
  const lost = area(sharp.windows) - area(round.windows);
  expect(lost / (corners * (1 - Math.PI / 4))).toBeCloseTo(1, 2);
});

test.each([
  ['a ring', rings(0, 0, 40, 25)],
  ['rings in rings', rings(0, 0, 60, 50, 40, 30, 20, 10)],
  ['the letter B', await letter('Libre Baskerville', 'B', 90)],
])(
  '%s: rounded, it is as sound as before, and no bridge is wider than it was by more than the corners',
  async (_, windows) => {
    const sharp = await bridgeWindows(windows, LEAST);
    const round = await bridgeWindows(windows, { ...LEAST, round: 1 });
    const { left, top, right, bottom } = piecesBox(windows);
    const outline = { left: left - 30, top: top - 30, right: right + 30, bottom: bottom + 30 };
    expect(await soundness({ outline, windows: round.windows, keys: [] }, LEAST)).toMatchObject({ sound: true });
    const lost = area(sharp.windows) - area(round.windows);
    expect(lost).toBeGreaterThan(0);
    expect(lost).toBeLessThan(4 * sharp.bridges.length);
  },
);

test('corners that no bridge made stay sharp', async () => {
  const windows = frame(80, 60, 12);
  const { windows: round } = await bridgeWindows(windows, { ...LEAST, round: 1 });
  const corners = round.flat().flatMap((ring) => ring.sides.map(({ to }) => to.map((v) => Math.abs(v)).join(' ')));
  expect(corners.filter((corner) => corner === '40 30')).toHaveLength(4);
});
