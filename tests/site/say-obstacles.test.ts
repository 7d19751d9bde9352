import { expect, test } from 'vitest';
import { sayObstacles } from '../../src/site/say-obstacles.ts';

// A rectangle of 3 by 4 m, worked out by hand: y runs down, the near wall lies at the bottom.
const room = {
  'near-left': [0, 4000],
  'near-right': [3000, 4000],
  'far-right': [3000, 0],
  'far-left': [0, 0],
} as const;
const into = ([x, y]: readonly [number, number]): [number, number] => [x, y];
const said = (...corners: [number, number][]): string[] =>
  sayObstacles(
    { room: room as never, obstacles: [{ name: 'hearth', outline: corners }], into },
    { units: 'mm', step: 1, system: 'metric' },
  );

test('what stands inside the room, or at its walls to 1/2 in, is not told', () => {
  expect(said([1000, 0], [2000, 0], [2000, 400], [1000, 400])).toEqual([]);
  expect(said([1000, -12], [2000, -12], [2000, 400], [1000, 400])).toEqual([]);
});

test.each([
  ['far', [1000, -30], '30 mm'],
  ['near', [1000, 4030], '30 mm'],
  ['left', [-45, 2000], '45 mm'],
  ['right', [3120, 2000], '120 mm'],
] as const)('what reaches past the %s wall is told with how far', (wall, [x, y], far) => {
  const [note] = said([x, y], [1500, 2000], [1600, 2100]);
  expect(note).toContain(`The hearth reaches ${far} past the ${wall} wall`);
});
