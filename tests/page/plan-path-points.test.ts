import { expect, test } from 'vitest';
import { pathPoints } from '../../src/page/plan/path-points.ts';

// The path data grammar and the first square are those of SVG 1.1, section 8.3; the arc's flags may stand without a gap (section 8.3.9).
test.each([
  [
    'M 1 1 H 3 V 3 H 1 Z',
    [
      [1, 1],
      [2, 1],
      [3, 1],
      [3, 2],
      [3, 3],
      [2, 3],
      [1, 3],
      [1, 2],
    ],
  ],
  [
    'm1 1h2v2h-2z',
    [
      [1, 1],
      [2, 1],
      [3, 1],
      [3, 2],
      [3, 3],
      [2, 3],
      [1, 3],
      [1, 2],
    ],
  ],
  [
    'M0 0 2-2.5.5',
    [
      [0, 0],
      [1, -1.25],
      [2, -2.5],
    ],
  ],
  [
    'M0 0c1 0 2 1 2 2s1 2 2 2',
    [
      [0, 0],
      [2, 2],
      [4, 4],
    ],
  ],
  [
    'M0 0a5 5 0 01 10 0',
    [
      [0, 0],
      [10, 0],
    ],
  ],
  [
    'm1 1 2 0zm5 5l1 1',
    [
      [1, 1],
      [2, 1],
      [3, 1],
      [2, 1],
      [6, 6],
      [6.5, 6.5],
      [7, 7],
    ],
  ],
] as const)('%s', (d, points) => {
  expect(pathPoints(d)).toEqual(points);
});
