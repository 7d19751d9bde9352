import { expect, test } from 'vitest';
import type { Piece, Ring } from '../../src/geometry/path.ts';
import { cutBefore } from '../../src/stencil/cut-order/contain.ts';
import { EVERYWHERE, type Part, sameParts } from '../../src/stencil/part.ts';
import { soundness } from '../../src/stencil/soundness.ts';

const ring = (left: number, top: number, across: number, along: number): Ring => ({
  start: [left, top],
  sides: [
    { kind: 'line', to: [left + across, top] },
    { kind: 'line', to: [left + across, top + along] },
    { kind: 'line', to: [left, top + along] },
  ],
});

test('a small opening is cut before the nearest of the large ones, and before none that is far', () => {
  // 2 mm to the left of it 10 × 10 mm, 5 mm to the right 20 × 20 mm, and one 40 mm below.
  const [small, near, far, away] = [ring(0, 0, 4, 4), ring(-12, -3, 10, 10), ring(9, -8, 20, 20), ring(-8, 44, 20, 20)];
  expect([...cutBefore([small, near, far, away])]).toEqual([1, -1, -1, -1]);
  expect([...cutBefore([small, away])]).toEqual([-1, -1]);
});

test.each([
  ['left', [-50, 0]],
  ['right', [50, 0]],
  ['top', [0, -50]],
  ['bottom', [0, 50]],
] as const)('an opening too near the %s edge is told at the middle of what is left there', async (side, [dx, dy]) => {
  const windows: Piece[] = [[ring(-10 + dx, -10 + dy, 20, 20)]];
  const outline = { left: -61, top: -61, right: 61, bottom: 61 };
  const { weak } = await soundness({ outline, windows, keys: [] } as never, { bridge: 2, window: 1.5 });
  const middle = { left: [-60.5, 0], right: [60.5, 0], top: [0, -60.5], bottom: [0, 60.5] }[side];
  expect(weak.map(({ x, y, width }) => [x, y, width])).toEqual([[...middle, 1]]);
});

const part = (right: number, bottom = Infinity): Part => ({
  of: {},
  box: { ...EVERYWHERE, right, bottom },
  lap: 10,
  match: [],
  number: 1,
  count: 2,
});

test('one sheet serves parts whose lines lie a whole repeat apart that way, and no others', () => {
  const [x, y] = [
    { start: 0, pitch: 80, repeats: true },
    { start: 0, pitch: 100, repeats: true },
  ];
  expect(sameParts(part(30), part(30 + 80), x, y)).toBe(true);
  expect(sameParts(part(30), part(30 + 100), x, y)).toBe(false);
  expect(sameParts(part(30), part(30 + 80), { ...x, repeats: false }, y)).toBe(false);
  expect(sameParts(part(30, 40), part(30, 140), x, y)).toBe(true);
  expect(sameParts(part(30, 40), part(30, 120), x, y)).toBe(false);
});
