import { describe, expect, test } from 'vitest';
import type { AxisWish, MeasuredRoom, Opening } from '../../src/job/job.ts';
import { layAxis, longestWall } from '../../src/site/axis.ts';
import { coverOf, sayCasings, sayOpposite, spreadOf } from '../../src/site/casing.ts';
import { stripsBeside, toCasings } from '../../src/site/clearance.ts';
import { frameOf } from '../../src/site/frame.ts';
import { leansOf, sayLeans } from '../../src/site/leans.ts';
import { placeFrom, placeObstacles } from '../../src/site/obstacles.ts';
import { placeOpenings } from '../../src/site/openings.ts';
import { centredOn, placeRoom } from '../../src/site/placing.ts';
import { leastRun, sayRuns } from '../../src/site/runs.ts';
import { sayClearances } from '../../src/site/say-placing.ts';
import { bestReserve, hidingReserve, sayTapers } from '../../src/site/taper.ts';
import type { Room } from '../../src/site/walls.ts';

const INCH = 25.4;
const TAPE = { units: 'in', system: 'inch', step: INCH / 16 } as const;
const inch = (...values: number[]): number[] => values.map((value) => value * INCH);
const room = (corners: Record<keyof Room, [number, number]>): Room =>
  Object.fromEntries(Object.entries(corners).map(([corner, at]) => [corner, inch(...at)])) as unknown as Room;

const SQUARE = room({ 'near-left': [0, 0], 'near-right': [144, 0], 'far-right': [144, -120], 'far-left': [0, -120] });
/** The left wall leans out by 7/16 in, the far wall rises by 1 in to the right. */
const CROOKED = room({
  'near-left': [0, 0],
  'near-right': [144, 0],
  'far-right': [144, -121],
  'far-left': [-7 / 16, -120],
});

const opening = (wall: Opening['wall'], from: Opening['from'], starts: number, ends: number): Opening => ({
  wall,
  from,
  starts: starts * INCH,
  ends: ends * INCH,
});
function placed(...openings: Opening[]) {
  const found = placeOpenings(SQUARE, openings, TAPE);
  if (!found.ok) throw new Error(JSON.stringify(found.issues));
  return found.value;
}

describe('openings', () => {
  test('lie where their casings were measured, from either corner', () => {
    const [near, far, left] = placed(
      opening('near', 'left', 40, 72.5),
      opening('far', 'right', 50, 80),
      opening('left', 'far', 10, 40),
    );
    expect(near!.casing.flat().map((mm) => mm / INCH)).toEqual([40, 0, 72.5, 0]);
    expect(near!.width / INCH).toBeCloseTo(32.5, 9);
    // 144 less 80 and 50; the left edge comes first.
    expect(far!.casing.map(([x]) => x / INCH)).toEqual([64, 94]);
    // From the far end of a wall of 120; the near edge comes first.
    left!.casing.forEach(([, y], at) => {
      expect(y / INCH).toBeCloseTo([-80, -110][at]!, 9);
    });
  });

  test.each([
    [
      opening('near', 'far', 40, 72),
      ['from'],
      'the near wall is measured from its left or its right corner; far is none of them',
      'from: left',
    ],
    [
      opening('near', 'left', 72, 40),
      ['ends'],
      `the casing starts 6' from the corner and ends at 40"; it ends further from it than it starts`,
      `starts: 40", ends: 6'`,
    ],
    [
      opening('near', 'left', 120, 150),
      ['ends'],
      `the casing ends 12' 6" from the corner, but the near wall is only 12' long`,
      'measure the near wall and the casing again',
    ],
  ])('wrong ones are refused %#', (wrong, path, says, hint) =>
    expect(placeOpenings(SQUARE, [wrong], TAPE)).toMatchObject({
      ok: false,
      issues: [{ path: ['site', 'openings', 0, ...path], says, hint }],
    }),
  );

  test('a second one in a wall is refused', () =>
    expect(
      placeOpenings(SQUARE, [opening('near', 'left', 10, 40), opening('near', 'left', 60, 90)], TAPE),
    ).toMatchObject({
      ok: false,
      issues: [{ code: 'site/opening-twice', path: ['site', 'openings', 1] }],
    }));
});

describe('obstacles', () => {
  test('are measured from a corner along its two walls, also where these are not square', () => {
    expect(placeFrom(SQUARE, 'far-right', { across: 100, along: 50 })).toEqual([144 * INCH - 100, -120 * INCH + 50]);
    const [x, y] = placeFrom(CROOKED, 'near-left', { across: 0, along: 60 * INCH });
    // Half of the way along the left wall, but for its own slant.
    expect(x / INCH).toBeCloseTo(-7 / 32, 4);
    expect(y / INCH).toBeCloseTo(-60, 2);
  });

  test.each([
    [
      'has no area',
      [
        [0, 0],
        [10, 0],
        [20, 0],
      ],
    ],
    [
      'crosses itself',
      [
        [0, 0],
        [100, 100],
        [100, 0],
        [0, 90],
      ],
    ],
  ])('an outline that %s is refused', (wrong, outline) =>
    expect(
      placeObstacles(SQUARE, [
        {
          name: 'post',
          corner: 'near-left',
          outline: outline.map(([across, along]) => ({ across: across!, along: along! })),
        },
      ]),
    ).toMatchObject({
      ok: false,
      issues: [{ code: 'site/obstacle', says: expect.stringContaining(`the outline of the post ${wrong}`) }],
    }),
  );
});

describe('the axis', () => {
  const degrees = (wish: AxisWish, where: Room = CROOKED, ...openings: Opening[]): number => {
    const found = layAxis(where, placed(...openings), wish);
    if (!found.ok) throw new Error(JSON.stringify(found.issues));
    return (found.value.turn * 180) / Math.PI;
  };
  const slant = (Math.atan(7 / 16 / 120) * 180) / Math.PI;

  test('parallel to a wall', () => {
    expect(degrees({ way: 'parallel', wall: 'left' })).toBeCloseTo(-slant, 9);
    expect(degrees({ way: 'parallel', wall: 'right' })).toBeCloseTo(0, 9);
    expect(degrees({ way: 'parallel', wall: 'near' })).toBeCloseTo(0, 9);
    // The far wall rises 1 in over 144 7/16 in, so the work turns to the left with it.
    expect(degrees({ way: 'parallel', wall: 'far' })).toBeCloseTo((-Math.atan(1 / (144 + 7 / 16)) * 180) / Math.PI, 9);
  });

  test('from opening to opening', () =>
    // Centres at 50 and 60 in, 120 in apart.
    expect(
      degrees({ way: 'openings' }, SQUARE, opening('near', 'left', 40, 60), opening('far', 'left', 45, 75)),
    ).toBeCloseTo((Math.atan(10 / 120) * 180) / Math.PI, 9));

  test('square to a threshold, through its centre', () => {
    const found = layAxis(SQUARE, placed(opening('far', 'left', 45, 75)), { way: 'square', opening: 'far' });
    expect(found).toMatchObject({ ok: true, value: { through: [60 * INCH, -120 * INCH] } });
    expect(found.ok && found.value.turn).toBeCloseTo(0, 12);
  });

  test('with the boards, by a turn from a wall or by two points on a joint, whichever way they run', () => {
    expect(degrees({ way: 'boards', wall: 'left', turn: Math.PI / 360 })).toBeCloseTo(0.5 - slant, 9);
    const at = (across: number, along: number) => ({ across: across * INCH, along: along * INCH });
    const up: AxisWish = { way: 'boards', corner: 'near-left', line: [at(24, 12), at(25, 112)] };
    const down: AxisWish = { way: 'boards', corner: 'near-left', line: [at(25, 112), at(24, 12)] };
    const level: AxisWish = { way: 'boards', corner: 'near-left', line: [at(12, 24), at(112, 23)] };
    for (const wish of [up, down, level])
      expect(degrees(wish, SQUARE)).toBeCloseTo((Math.atan(1 / 100) * 180) / Math.PI, 9);
  });

  test('to an opening that was not measured is refused', () =>
    expect(layAxis(SQUARE, placed(opening('near', 'left', 40, 60)), { way: 'openings' })).toMatchObject({
      ok: false,
      issues: [{ code: 'site/axis', says: 'the axis is laid to the far opening, which was not measured' }],
    }));

  test('the longest wall', () => {
    expect(longestWall(SQUARE)).toBe('near');
    expect(longestWall(CROOKED)).toBe('far');
  });

  test('against each wall, in words', () => {
    expect(sayLeans(CROOKED, TAPE)).toEqual([
      'The far wall runs away from the work by 1" over its length, from left to right.',
      'The left wall runs away from the work by 7/16" over its length, from near to far.',
      'The near and right walls run true with the work.',
    ]);
    expect(sayLeans(SQUARE, TAPE)).toEqual(['All four walls run true with the work.']);
    // Turned 1 in 120 to the right, the left wall seems to lean to the left, the right one in.
    const { into } = frameOf(Math.asin(1 / 120));
    const turned = Object.fromEntries(
      Object.entries(SQUARE).map(([corner, point]) => [corner, into(point)]),
    ) as unknown as Room;
    const leans = leansOf(turned);
    expect(leans.left / INCH).toBeCloseTo(1, 9);
    expect(leans.right / INCH).toBeCloseTo(-1, 9);
    expect(leans.near / INCH).toBeCloseTo(-1.2, 9);
    expect(leans.far / INCH).toBeCloseTo(1.2, 9);
  });
});

describe('clearance and taper', () => {
  const work = { left: 10 * INCH, right: 134 * INCH, top: -112 * INCH, bottom: -8 * INCH };

  test('at each corner, to each wall', () => {
    const strips = stripsBeside(work, SQUARE);
    expect(strips.map(({ wall }) => wall)).toEqual(['near', 'right', 'far', 'left']);
    strips.forEach(({ from, to, taper }, at) => {
      expect(from.width / INCH).toBeCloseTo([8, 10, 8, 10][at]!, 9);
      expect(to.width / INCH).toBeCloseTo([8, 10, 8, 10][at]!, 9);
      expect(taper).toBeCloseTo(0, 9);
    });
    expect(sayTapers(strips, TAPE)).toEqual([]);
    expect(bestReserve(strips, TAPE.step)).toBe(0);
  });

  test('to the casings', () => {
    const found = toCasings(work, placed(opening('near', 'left', 4, 60)), (point) => point);
    expect(found.map(({ edge, least }) => [edge, least / INCH])).toEqual([
      ['left', 10],
      ['right', 8],
    ]);
    expect(found[0]!.corners['near-left'] / INCH).toBeCloseTo(10, 9);
    expect(found[1]!.corners['near-left'] / INCH).toBeCloseTo(Math.hypot(50, 8), 9);
  });

  test('a strip that narrows by more than 1/2 in is told, with the remedy', () => {
    // The far wall rises 1 in over its length, so beside 124 in of work the strip widens by 124/144.44 = 0.858 in.
    const strips = stripsBeside({ ...work, top: -117 * INCH }, CROOKED);
    const far = strips.find(({ wall }) => wall === 'far')!;
    expect(far.taper / INCH).toBeCloseTo(0.8585, 3);
    expect(sayTapers(strips, TAPE)).toEqual([
      'Beside the far wall the plain strip narrows from 3 15/16" at the far right to 3 1/16" at the far left, by 7/8": more than 1/2" shows beside a straight border. Set the work 7 3/4" off that wall at its narrow end, 4 11/16" more than now, or lay the axis parallel to it.',
    ]);
    // Nine times the taper, so that the narrow end is nine tenths of the wide one; on the tape. Common practice, no source.
    expect(hidingReserve(INCH / 2, TAPE.step) / INCH).toBeCloseTo(4.5, 9);
    expect(bestReserve(strips, TAPE.step)).toBeCloseTo(hidingReserve(far.taper, TAPE.step), 9);
    // As far off the wall as the remedy says, nothing is left to say.
    const moved = { ...work, top: -117 * INCH + hidingReserve(far.taper, TAPE.step) - far.narrow };
    expect(sayTapers(stripsBeside(moved, CROOKED), TAPE)).toEqual([]);
  });
});

describe('openings that differ', () => {
  const openings = placed(opening('near', 'left', 40, 72), opening('far', 'left', 45, 75));
  const axis = layAxis(SQUARE, openings, { way: 'openings' });
  if (!axis.ok) throw new Error('no axis');
  const { into } = frameOf(axis.value.turn);
  const middle = into(openings[0]!.centre)[0];
  const spreads = openings.map((one) => spreadOf(one, into, middle));

  test('are covered evenly, and what shows at each casing is told', () => {
    // The axis turns by atan(4/120), so a threshold of 32 in spans 32 cos across it.
    const across = 32 * Math.cos(Math.atan(4 / 120));
    expect((spreads[0]!.left + spreads[0]!.right) / INCH).toBeCloseTo(across, 9);
    expect(coverOf(spreads, 'inch') / INCH).toBeCloseTo(32, 9);
    expect(sayCasings(spreads, 34 * INCH, TAPE)).toEqual([
      'At the near opening the field runs 1" past the left casing, and as much at the right one.',
      'At the far opening the field runs 2" past the left casing, and as much at the right one.',
    ]);
    expect(sayCasings([{ wall: 'near', left: 15 * INCH, right: 17 * INCH }], 32 * INCH, TAPE)).toEqual([
      'At the near opening the field runs 1" past the left casing and leaves 1" of plain floor inside the right casing.',
    ]);
  });

  test('and are not opposite', () =>
    expect(sayOpposite(openings[0]!, openings[1]!, (point) => point, TAPE)).toEqual([
      'The openings are not opposite: the centre of the far one lies 4" to the right of straight across from the near one.',
    ]));
});

describe('the run at left, centre and right', () => {
  const runs = (left: number, centre: number, right: number) => ({
    left: left * INCH,
    centre: centre * INCH,
    right: right * INCH,
  });
  test('the work takes the least', () => {
    expect(leastRun(runs(235.5, 235.375, 235.25)) / INCH).toBeCloseTo(235.25, 9);
    expect(sayRuns(runs(235.5, 235.375, 235.25), TAPE)).toEqual([
      `The run is 19' 7 1/2" at the left, 19' 7 3/8" at the centre and 19' 7 1/4" at the right. The work has square ends, so it takes the least, 19' 7 1/4"; up to 1/4" of plain floor is left at a threshold.`,
    ]);
    expect(sayRuns(runs(235, 235, 235), TAPE)).toEqual([]);
  });
  test('a centre that is off is named', () =>
    expect(sayRuns(runs(235, 236, 235), TAPE)[1]).toMatch(
      /^The centre is 1" longer than midway between left and right/,
    ));
});

describe('a room with a hearth', () => {
  const measured: MeasuredRoom = {
    sides: { near: 144 * INCH, right: 120.25 * INCH, far: 144.5 * INCH, left: 120 * INCH },
    diagonals: { 'near-left to far-right': 187.5 * INCH },
    openings: [],
    obstacles: [
      {
        name: 'hearth',
        corner: 'near-right',
        outline: [
          [0, 40],
          [18, 40],
          [18, 84],
          [0, 84],
        ].map(([across, along]) => ({ across: across! * INCH, along: along! * INCH })),
      },
    ],
    axis: { way: 'parallel', wall: 'left' },
  };
  const found = placeRoom(measured, TAPE);
  if (!found.ok) throw new Error(JSON.stringify(found.issues));
  const placing = found.value;

  test('the largest rectangle keeps clear of it and of the walls', () => {
    const { left, right, top, bottom } = placing.largest;
    // Parallel to the left wall it touches that wall, and the hearth 18 in off the right wall (which leans out 1/2 in over its 120 in).
    expect(left).toBeCloseTo(placing.room['near-left'][0], 6);
    expect((right - left) / INCH).toBeGreaterThan(126);
    expect((right - left) / INCH).toBeLessThan(126.25);
    expect((bottom - top) / INCH).toBeCloseTo(119.5, 1);
    expect(placing.into(placing.outOf([123, 45]))[0]).toBeCloseTo(123, 9);
  });

  test('the clearances of a rug are told corner by corner', () => {
    const said = sayClearances(placing, centredOn(placing, 96 * INCH, 108 * INCH), TAPE);
    expect(said).toEqual([
      `At 8' by 9' the corners of the work lie clear of the walls: the near left corner 5 7/8" from the near wall and 15 1/16" from the left wall, the near right corner 6 3/8" from the near wall and 32 15/16" from the right wall, the far right corner 33 3/8" from the right wall and 5 13/16" from the far wall and the far left corner 6 3/16" from the far wall and 15 1/16" from the left wall.`,
    ]);
  });

  test('readings that contradict each other grossly are refused, with the one that is likeliest wrong', () => {
    const wrong = placeRoom(
      { ...measured, diagonals: { 'near-left to far-right': 187.5 * INCH, 'near-right to far-left': 180 * INCH } },
      TAPE,
    );
    expect(wrong).toMatchObject({
      ok: false,
      issues: [
        {
          code: 'site/disagree',
          path: ['site', 'room', 'diagonals', 'near-right to far-left'],
          says: expect.stringContaining(`It would have to be 15' 7 15/16"`),
        },
      ],
    });
  });
});
