import { describe, expect, test } from 'vitest';
import type { Job } from '../../src/job/job.ts';
import { readJob } from '../../src/job/read.ts';
import { KNOWN } from './known.ts';

function siteOf(site: string, surface = 'rug'): Job['site'] {
  const size = surface === 'rug' ? "overall: { across: 5', along: 7' }\n" : '';
  const read = readJob(
    `evenfield: 1\nsurface: ${surface}\n${size}site:\n${site}\nfield: { motif: diamond }\n`,
    'f',
    KNOWN,
  );
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 1));
  return read.value.site;
}

// 1 in = 25.4 mm exactly (16 CFR 500.19).
const inch = (count: number): number => (count * 254) / 10;
const WALLS = `  room: { near: 12', right: 10' 0 1/4", far: 12' 1/2", left: 10', diagonals: { near-left to far-right: 15' 7 1/2" } }`;
const BARE = {
  sides: { near: inch(144), right: inch(120.25), far: inch(144.5), left: inch(120) },
  diagonals: { 'near-left to far-right': inch(187.5) },
  openings: [],
  obstacles: [],
};

describe('a room in a job', () => {
  test('in its short form', () =>
    expect(siteOf('  room: { across: 3.61 m, along: 4.27 m }')).toEqual({ room: { across: 3610, along: 4270 } }));

  test('by its four walls and a diagonal', () => expect(siteOf(WALLS)).toEqual({ measured: BARE }));

  test('openings, each from the usual corner or from a stated one', () =>
    expect(
      siteOf(`${WALLS}
  openings:
    - { wall: near, starts: 40", ends: 72 1/2" }
    - { wall: far, from: right, starts: 0 in, ends: 30" }
    - { wall: left, starts: 12", ends: 42" }`).measured!.openings,
    ).toEqual([
      { wall: 'near', from: 'left', starts: inch(40), ends: inch(72.5) },
      { wall: 'far', from: 'right', starts: 0, ends: inch(30) },
      { wall: 'left', from: 'near', starts: inch(12), ends: inch(42) },
    ]));

  test('obstacles, as rectangles and as outlines', () =>
    expect(
      siteOf(`${WALLS}
  obstacles:
    - { name: hearth, corner: far-left, across: 48" to 96", along: 0 to 20" }
    - { outline: [{ across: 1", along: 2" }, { across: 3", along: 2" }, { across: 2", along: 4" }] }`).measured!
        .obstacles,
    ).toEqual([
      {
        name: 'hearth',
        corner: 'far-left',
        outline: [
          { across: inch(48), along: 0 },
          { across: inch(96), along: 0 },
          { across: inch(96), along: inch(20) },
          { across: inch(48), along: inch(20) },
        ],
      },
      {
        name: 'obstacle',
        corner: 'near-left',
        outline: [
          { across: inch(1), along: inch(2) },
          { across: inch(3), along: inch(2) },
          { across: inch(2), along: inch(4) },
        ],
      },
    ]));

  test.each([
    ['opening to opening', { way: 'openings' }],
    ['{ parallel to: right }', { way: 'parallel', wall: 'right' }],
    ['{ square to: near }', { way: 'square', opening: 'near' }],
    ['{ along boards: { wall: left, turn: -0.5 } }', { way: 'boards', wall: 'left', turn: -Math.PI / 360 }],
    ['{ along boards: { wall: far } }', { way: 'boards', wall: 'far', turn: 0 }],
    [
      '{ along boards: { points: [{ across: 1", along: 2" }, { across: 3", along: 90" }] } }',
      {
        way: 'boards',
        corner: 'near-left',
        line: [
          { across: inch(1), along: inch(2) },
          { across: inch(3), along: inch(90) },
        ],
      },
    ],
  ])('its axis %s', (axis, read) =>
    expect(siteOf(`${WALLS}\n  axis: ${axis}`).measured).toEqual({ ...BARE, axis: read }),
  );
});

describe('a run in three places', () => {
  test('counts as the least of them', () =>
    expect(
      siteOf(`  run: 235"\n  run at sides: { left: 235 1/4", right: 234 7/8" }\n  openings: 32"`, 'runner'),
    ).toEqual({
      run: inch(234.875),
      runs: { left: inch(235.25), centre: inch(235), right: inch(234.875) },
      openings: { near: inch(32), far: inch(32) },
    }));
});
