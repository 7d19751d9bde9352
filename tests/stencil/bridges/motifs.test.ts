import { expect, test } from 'vitest';
import { loadBooleans } from '../../../src/geometry/booleans.ts';
import { boxCentre, boxHeight, boxWidth, piecesBox } from '../../../src/geometry/measure.ts';
import type { Piece } from '../../../src/geometry/path.ts';
import { allMotifs } from '../../../src/motif/library.ts';
import { drawMotif } from '../../../src/motif/record.ts';
import { rectangle } from '../../../src/motif/shapes.ts';
import { bridgeWindows } from '../../../src/stencil/bridges/bridge-windows.ts';
import { keptParts, loose } from './clipping.ts';
import { floodedOf } from './raster.ts';
import { drawn } from './shapes.ts';

const SETTINGS = { bridge: 2, window: 1 };

/** A motif left bare in a painted panel: every piece of it is an island. */
async function panel(motif: ReturnType<typeof allMotifs>[number]): Promise<Piece[]> {
  const { unite, subtract } = await loadBooleans();
  const settings = Object.fromEntries(Object.entries(motif.parameters).map(([key, one]) => [key, one.default]));
  const pieces = drawMotif(motif, { across: 90, along: 90 * motif.ratio }, settings).flatMap((one) => one.pieces);
  const motifAlone = pieces.reduce<Piece[]>((all, piece) => unite(all, [piece]), []);
  const box = piecesBox(motifAlone);
  const ground = drawn((pen) => rectangle(pen, ...boxCentre(box), boxWidth(box) + 24, boxHeight(box) + 24));
  return subtract(ground, motifAlone);
}

const motifs = allMotifs();

test.each(motifs.map((motif) => [motif.name, motif] as const))('%s, bare in a painted panel', async (_, motif) => {
  const windows = await panel(motif);
  const before = keptParts(windows);
  expect((await floodedOf(windows, 2)).loose).toBe(loose(before));
  expect(loose(before)).toBeGreaterThan(0);
  const { windows: after, bridges, lost, unmended } = await bridgeWindows(windows, SETTINGS);
  expect(bridges.length).toBeGreaterThanOrEqual(loose(before));
  expect(unmended.filter(({ says }) => !says.includes('window is narrower'))).toEqual([]);
  expect(loose(keptParts(after, 0.98))).toBe(0);
  expect(await floodedOf(after, 2)).toEqual({ loose: 0, pared: 0 });
  expect(lost).toBeLessThan(0.15);
});
