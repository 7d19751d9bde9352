import { describe, expect, test } from 'vitest';
import { loadBooleans } from '../../../src/geometry/booleans.ts';
import { piecesBox } from '../../../src/geometry/measure.ts';
import type { Piece } from '../../../src/geometry/path.ts';
import { rectangle } from '../../../src/motif/shapes.ts';
import { bridgeWindows } from '../../../src/stencil/bridges/bridge-windows.ts';
import { twoParts } from '../../../src/stencil/bridges/two-parts.ts';
import { soundness } from '../../../src/stencil/soundness.ts';
import { areaOf, differing } from './clipping.ts';
import { drawn, frame, letter, rings } from './shapes.ts';

const LEAST = { bridge: 3, window: 1.5 };
const OVERLAP = 1;

const soundAlone = async (windows: Piece[]) => {
  const box = piecesBox(windows);
  const outline = { left: box.left - 20, top: box.top - 20, right: box.right + 20, bottom: box.bottom + 20 };
  return soundness({ outline, windows, keys: [] }, LEAST);
};

describe.each<[string, () => Promise<Piece[]>]>([
  ['a ring', async () => rings(0, 0, 30, 20)],
  ['rings in a ring', async () => rings(0, 0, 40, 34, 25, 20)],
  ['a frame', async () => frame(60, 60, 10)],
  ['B', () => letter('Barlow', 'B', 120)],
  ['8', () => letter('Libre Baskerville', '8', 120)],
])('%s in two parts', (name, windowsOf) => {
  test('together they paint the whole and nothing else; each is sound alone; they overlap by 1 mm', async () => {
    const windows = await windowsOf();
    const bridged = await bridgeWindows(windows, { ...LEAST, style: name.length === 1 ? 'letter' : 'motif' });
    const second = await twoParts(windows, bridged, OVERLAP, LEAST);
    expect(second.left).toEqual([]);
    expect(second.windows).toHaveLength(bridged.bridges.length);
    expect(differing([...bridged.windows, ...second.windows], windows)).toBeLessThan(0.05);
    expect((await soundAlone(bridged.windows)).sound).toBe(true);
    expect((await soundAlone(second.windows)).sound).toBe(true);
    const { intersect } = await loadBooleans();
    for (const window of second.windows) {
      const laps = intersect([window], bridged.windows);
      expect(laps).toHaveLength(2);
      // Of the 5 mm across a gap, 3 are the bridge and 1 on either side is painted twice.
      for (const lap of laps) expect(Math.abs(areaOf([lap]) / areaOf([window]) - 1 / 5)).toBeLessThan(0.03);
    }
  });
});

test('a gap whose window would come too near to another is left, and said to be', async () => {
  const windows = drawn((pen) => {
    rectangle(pen, 0, 0, 40, 40);
    rectangle(pen, 0, 0, 34, 34);
    rectangle(pen, 0, 0, 30, 30);
    rectangle(pen, 0, 0, 24, 24);
  });
  const bridged = await bridgeWindows(windows, LEAST);
  const second = await twoParts(windows, bridged, 4, LEAST);
  expect(second.windows.length + second.left.length).toBeGreaterThanOrEqual(bridged.bridges.length);
  expect((await soundAlone(second.windows)).weak).toEqual([]);
});
