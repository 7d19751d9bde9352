import { describe, expect, test } from 'vitest';
import { boxWidth, piecesBox, ringBox } from '../../../src/geometry/measure.ts';
import type { BridgeSettings } from '../../../src/stencil/bridges/bridge.ts';
import { bridgeWindows } from '../../../src/stencil/bridges/bridge-windows.ts';
import { soundness } from '../../../src/stencil/soundness.ts';
import { keptParts, loose } from './clipping.ts';
import { floodedOf } from './raster.ts';
import { FACE_NAMES, letter } from './shapes.ts';

const SETTINGS: BridgeSettings = { bridge: 2, window: 1, style: 'letter' };
const CHARACTERS = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789'];

/** Counters of plain capitals and digits: what anyone sees in print. The 4 of Barlow is open, so it has none. */
const countersOf = (face: string, character: string): number => {
  if ('B8'.includes(character)) return 2;
  if (character === '4' && face === 'Barlow') return 0;
  return 'ADOPQR0469'.includes(character) ? 1 : 0;
};

describe.each(FACE_NAMES)('%s, 80 mm to the em', (face) => {
  test.each(CHARACTERS)('%s holds together', async (character) => {
    const windows = await letter(face, character, 80);
    const counters = countersOf(face, character);
    expect(loose(keptParts(windows))).toBe(counters);
    expect((await floodedOf(windows, 2)).loose).toBe(counters);

    const { windows: after, bridges, unmended, lost } = await bridgeWindows(windows, SETTINGS);
    const islands = bridges.filter(({ kind }) => kind === 'island');
    expect(islands.length).toBeGreaterThanOrEqual(counters);
    expect(islands.length).toBeLessThanOrEqual(2 * counters);
    expect(unmended).toEqual([]);
    expect(lost).toBeLessThan(0.06);
    // Upright, whatever the letter.
    for (const { way } of islands) expect(Math.abs(way[0])).toBeLessThan(1e-9);

    const box = piecesBox(after);
    const outline = { left: box.left - 20, top: box.top - 20, right: box.right + 20, bottom: box.bottom + 20 };
    expect((await soundness({ outline, windows: after, keys: [] }, { bridge: 2, window: 1 })).sound).toBe(true);
    expect(await floodedOf(after, 2)).toEqual({ loose: 0, pared: 0 });
  });

  test.each([...'O0DPRB8'])(
    '%s: a pair above and below each counter, on one upright line through its middle two thirds',
    async (character) => {
      const windows = await letter(face, character, 80);
      const { bridges } = await bridgeWindows(windows, SETTINGS);
      const counters = windows.flatMap((piece) => piece.slice(1)).map(ringBox);
      expect(bridges).toHaveLength(counters.length + 1);
      const xs = bridges.map(({ at }) => at[0]);
      expect(Math.max(...xs) - Math.min(...xs)).toBeLessThan(0.1 * boxWidth(counters[0]!));
      for (const { left, right, top, bottom } of counters) {
        for (const x of xs) expect(Math.abs(x - (left + right) / 2)).toBeLessThan((right - left) / 3);
        const ys = bridges.map(({ at }) => at[1]);
        expect(ys.filter((y) => y < top).length).toBeGreaterThan(0);
        expect(ys.filter((y) => y > bottom).length).toBeGreaterThan(0);
      }
    },
  );

  test('A: two through the bar, none across the tip', async () => {
    const windows = await letter(face, 'A', 80);
    const { bridges } = await bridgeWindows(windows, SETTINGS);
    const { bottom } = ringBox(windows[0]![1]!);
    expect(bridges).toHaveLength(2);
    for (const { at } of bridges) expect(at[1]).toBeGreaterThan(bottom);
  });
});
