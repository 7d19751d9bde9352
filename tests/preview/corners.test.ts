import { describe, expect, test } from 'vitest';
import { floorToPhoto } from '../../src/preview/corners.ts';
import { mapped, type Spot } from '../../src/preview/homography.ts';
import { type Camera, placeSeen, seenAt } from './camera.ts';

const SIZE = { width: 2000, height: 1500 };
const CAMERA: Camera = {
  across: 700,
  along: -1500,
  height: 1550,
  pan: 0.12,
  tilt: 0.55,
  roll: 0.03,
  focal: 1400,
  width: SIZE.width,
  pixelsHigh: SIZE.height,
};
const RECTANGLE = { across: 760, along: 2400 };
const cornersOf = (camera: Camera, { across, along }: typeof RECTANGLE) => ({
  'near-left': seenAt(camera, [0, 0]),
  'near-right': seenAt(camera, [across, 0]),
  'far-right': seenAt(camera, [across, along]),
  'far-left': seenAt(camera, [0, along]),
});

test('a pinhole camera sees every place of the floor where the map says', () => {
  const found = floorToPhoto({ file: 'f.jpg', rectangle: RECTANGLE, corners: cornersOf(CAMERA, RECTANGLE) }, SIZE);
  if (!found.ok) throw new Error(found.issues[0]!.says);
  for (const place of [
    [380, 1200],
    [-900, 300],
    [1800, 4000],
    [0, 9000],
    [250, -120],
  ] as Spot[]) {
    const [[x, y], [u, v]] = [mapped(found.value, place), seenAt(CAMERA, place)];
    expect(Math.hypot(x - u, y - v)).toBeLessThan(1e-6);
    const [across, along] = placeSeen(CAMERA, [u, v])!;
    expect(Math.hypot(across - place[0], along - place[1])).toBeLessThan(1e-6);
  }
});

describe('corners that cannot be', () => {
  const right = {
    'near-left': [412, 1400],
    'near-right': [1610, 1390],
    'far-right': [1220, 700],
    'far-left': [790, 705],
  } as const;
  const issue = (changes: object, rectangle = RECTANGLE) => {
    const found = floorToPhoto({ file: './hall.jpg', rectangle, corners: { ...right, ...changes } }, SIZE);
    return found.ok ? undefined : found.issues[0];
  };

  test('as they are they are taken', () => expect(issue({})).toBeUndefined());

  test.each([
    ['preview/outside', { 'near-left': [412, 1630] }, /near-left .* 1630 from the top.* 2000 by 1500/, /full size/],
    ['preview/together', { 'far-left': [1216, 702] }, /far-right and far-left lie 4 pixels apart/, /larger/],
    ['preview/in-line', { 'far-right': [1200, 1052] }, /near-right, far-right, far-left lie in one line/, /higher/],
    [
      'preview/order',
      { 'far-left': [1220, 700], 'far-right': [790, 705] },
      /do not run round/,
      /^far-right and far-left changed over$/,
    ],
    ['preview/order', { 'far-left': [1100, 1200] }, /do not run round/, /inside the other three/],
    [
      'preview/mirrored',
      {
        'near-left': right['near-right'],
        'near-right': right['near-left'],
        'far-left': right['far-right'],
        'far-right': right['far-left'],
      },
      /mirror/,
      /looks along/,
    ],
  ])('%s', (code, changes, says, hint) => {
    const found = issue(changes)!;
    expect(found.code).toBe(code);
    expect(found.path.slice(0, 3)).toEqual(['preview', 'photo', 'corners']);
    expect(found.says).toMatch(says);
    expect(found.hint).toMatch(hint);
  });
});
