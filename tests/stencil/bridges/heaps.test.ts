import { expect, test } from 'vitest';
import { loadBooleans } from '../../../src/geometry/booleans.ts';
import { piecesBox } from '../../../src/geometry/measure.ts';
import { bridgeWindows } from '../../../src/stencil/bridges/bridge-windows.ts';
import { soundness } from '../../../src/stencil/soundness.ts';
import { keptParts, loose } from './clipping.ts';
import { heap } from './fuzz.ts';
import { floodedOf } from './raster.ts';

const LEAST = { bridge: 2, window: 1 };
const SEEDS = Array.from({ length: 130 }, (_, seed) => seed);
/** Islands of less than this, mm², may be missed by a grid of 0.1 mm; so may necks of less than 0.2 mm. */
const DOUBTFUL = [0.02, 1] as const;

/** Clipping and a flood fill of the painted picture must tell the same of what falls out, before and after. */
test('130 heaps of discs, rings and bars: nothing falls out, by two roads that know nothing of each other', async () => {
  const booleans = await loadBooleans();
  let [islands, mended, doubtful] = [0, 0, 0];
  for (const seed of SEEDS) {
    const windows = heap(seed, booleans);
    const before = keptParts(windows);
    const thin = keptParts(windows, 0.1).filter((area) => area > 0.02).length - 1 !== loose(before);
    if (thin || before.some((area) => area > DOUBTFUL[0] && area < DOUBTFUL[1])) doubtful++;
    else expect((await floodedOf(windows, 2)).loose, `heap ${seed}`).toBe(loose(before));
    islands += loose(before);

    const { windows: after, bridges, unmended } = await bridgeWindows(windows, LEAST);
    expect(bridges.filter(({ kind }) => kind === 'island').length, `heap ${seed}`).toBeGreaterThanOrEqual(
      loose(before),
    );
    const box = piecesBox(after);
    const outline = { left: box.left - 20, top: box.top - 20, right: box.right + 20, bottom: box.bottom + 20 };
    const found = await soundness({ outline, windows: after, keys: [] }, LEAST);
    expect(found.islands, `heap ${seed}`).toBe(0);
    expect(found.weak, `heap ${seed}`).toEqual([]);
    // What is left over is named, and is only ever a window too narrow from the start.
    expect(unmended.length, `heap ${seed}`).toBe(found.narrow.length);
    expect(await floodedOf(after, 2), `heap ${seed}`).toEqual({ loose: 0, pared: 0 });
    if (found.sound) mended++;
  }
  expect(islands).toBeGreaterThan(150);
  expect(doubtful).toBeLessThan(40);
  expect(mended).toBeGreaterThan(110);
}, 240_000);
