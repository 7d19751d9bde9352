import { expect, test } from 'vitest';
import type { Clip } from '../../src/compose/room-clip.ts';
import type { Piece } from '../../src/geometry/path.ts';
import { sheetsOnFloor } from '../../src/stencil/on-floor.ts';
import type { Sheet } from '../../src/stencil/sheet.ts';

const square: Piece = [
  {
    start: [-5, -5],
    sides: [
      { kind: 'line', to: [5, -5] },
      { kind: 'line', to: [5, 5] },
      { kind: 'line', to: [-5, 5] },
    ],
  },
];

/** A floor to the right of the upright line through 0: what begins to the left of it lies beyond the wall. */
const clip = { area: (piece: Piece) => (piece[0]!.start[0] >= 0 ? 100 : 0) } as unknown as Clip;
const at = (x: number) => ({ turn: 0, x, y: 0, open: [0] });
const sheet = (passes: number[][]): Sheet =>
  ({ windows: [square], passes: passes.map((pass) => pass.map(at)) }) as unknown as Sheet;
const left = (sheets: Sheet[]) =>
  sheetsOnFloor(sheets, clip).map(({ passes }) => passes.map((pass) => pass.map(({ x }) => x)));

test('placements beyond the walls are left out, passes and sheets with none left as well', () => {
  expect(left([sheet([[20, -20], [-40, -60], [40]]), sheet([[-20], [-30]])])).toEqual([[[20], [40]]]);
});
