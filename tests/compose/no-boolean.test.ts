import { expect, test, vi } from 'vitest';
import { composeNamed } from '../support/compose.ts';

vi.mock('../../src/geometry/booleans.ts', () => ({
  loadBooleans: () => Promise.reject(new Error('a boolean was asked for')),
}));

test('nothing is clipped, nor the geometry library loaded, where every repeat lands whole', async () => {
  const border = { border: 80, borderRepeats: { across: 3, along: 5 } };
  await composeNamed(border, { field: 'eight-point-star', border: 'sawtooth', corner: 'quarter-fan' });
  await composeNamed({ ...border, repeats: { across: 2.5, along: 3.5 } }, { field: 'checkerboard' });
});

test('but it is where an edge cuts', async () => {
  await expect(composeNamed({ phase: { across: 0.5 } }, { field: 'diamond' })).rejects.toThrow(
    'a boolean was asked for',
  );
});
