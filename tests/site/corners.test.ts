import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Diagonal, Wall } from '../../src/job/job.ts';
import { surveyRoom } from '../../src/site/corners.ts';
import { sayDisagreement, saySurvey } from '../../src/site/say-survey.ts';
import { cornerAngles } from '../../src/site/trilaterate.ts';
import { distance, ENDS, outlineOf, READINGS, type Reading, type Room } from '../../src/site/walls.ts';
import { readingDoubt } from '../../src/units/index.ts';

const INCH = 25.4;
const TAPE = { units: 'in', system: 'inch', step: INCH / 16 } as const;

type Six = [
  near: number,
  right: number,
  far: number,
  left: number,
  rising?: number | undefined,
  falling?: number | undefined,
];

/** A room by its readings in inches: near, right, far, left, near left to far right, near right to far left. */
function measured([near, right, far, left, rising, falling]: Six, scale = INCH) {
  const sides: Record<Wall, number> = {
    near: near * scale,
    right: right * scale,
    far: far * scale,
    left: left * scale,
  };
  const diagonals: { [D in Diagonal]?: number } = {};
  if (rising !== undefined) diagonals['near-left to far-right'] = rising * scale;
  if (falling !== undefined) diagonals['near-right to far-left'] = falling * scale;
  return { sides, diagonals };
}

function survey(six: Six, tape: Parameters<typeof surveyRoom>[1] = TAPE, scale = INCH) {
  const found = surveyRoom(measured(six, scale), tape);
  if (!found.ok) throw new Error(JSON.stringify(found.issues));
  return found.value;
}

const areaOf = (room: Room): number => {
  const corners = outlineOf(room);
  return Math.abs(
    corners.reduce((sum, [x, y], at) => {
      const [u, v] = corners[(at + 1) % corners.length]!;
      return sum + (x * v - u * y) / 2;
    }, 0),
  );
};

/** Area of a quadrilateral by its sides and diagonals: Bretschneider's formula in the form with both diagonals (Planetmath, "area of a quadrilateral"). */
const bretschneider = (a: number, b: number, c: number, d: number, p: number, q: number): number =>
  Math.sqrt(4 * p * p * q * q - (b * b + d * d - a * a - c * c) ** 2) / 4;

const between = (room: Room, reading: Reading): number => {
  const [a, b] = ENDS[reading];
  return distance(room[a], room[b]);
};

describe('four walls and one diagonal', () => {
  // A(0,0), B(144,0), C(143.86176, 120.24992), D(-0.63802, 119.99830), BD 187.93549, area 17327.9389 in²: by intersecting two circles.
  test('of a room a little out of square', () => {
    const { room, residuals } = survey([144, 120.25, 144.5, 120, 187.5]);
    const at = ([x, y]: readonly [number, number]) => [x / INCH, -y / INCH];
    expect(at(room['near-right'])[0]).toBeCloseTo(144, 9);
    expect(at(room['far-right'])[0]).toBeCloseTo(143.86176, 5);
    expect(at(room['far-right'])[1]).toBeCloseTo(120.24992, 5);
    expect(at(room['far-left'])[0]).toBeCloseTo(-0.63802, 5);
    expect(at(room['far-left'])[1]).toBeCloseTo(119.9983, 5);
    expect(between(room, 'near-right to far-left') / INCH).toBeCloseTo(187.93549, 5);
    expect(areaOf(room) / INCH ** 2).toBeCloseTo(17327.9389, 4);
    expect(areaOf(room) / INCH ** 2).toBeCloseTo(bretschneider(144, 120.25, 144.5, 120, 187.5, 187.93549), 2);
    const degrees = cornerAngles(room).map((angle) => (angle * 180) / Math.PI);
    [90.3046, 89.9341, 89.9661, 89.7951].forEach((angle, corner) => {
      expect(degrees[corner]).toBeCloseTo(angle, 4);
    });
    for (const { residual } of residuals) expect(residual).toBeCloseTo(0, 9);
  });

  // Sides 13, 15, 25, 25 with the diagonal 14: Heron gives 84 + 168, the other diagonal is the root of 1300.
  test('of whole numbers', () => {
    const { room } = survey([13, 15, 25, 25, 14], TAPE, 100);
    expect(areaOf(room) / 1e4).toBeCloseTo(252, 9);
    expect(between(room, 'near-right to far-left') / 100).toBeCloseTo(Math.sqrt(1300), 9);
    expect(bretschneider(13, 15, 25, 25, 14, Math.sqrt(1300))).toBeCloseTo(252, 9);
  });

  test('either diagonal gives the same room', () => {
    const one = survey([144, 120.25, 144.5, 120, 187.5]).room;
    const other = survey([144, 120.25, 144.5, 120, undefined, between(one, 'near-right to far-left') / INCH]).room;
    outlineOf(one).forEach(([x, y], at) => {
      expect(outlineOf(other)[at]![0]).toBeCloseTo(x, 8);
      expect(outlineOf(other)[at]![1]).toBeCloseTo(y, 8);
    });
  });

  test('says what the other diagonal should be', () =>
    expect(saySurvey(survey([144, 120.25, 144.5, 120, 187.5]), TAPE)).toEqual([
      `The diagonal from near right to far left was not measured. It should be 15' 7 15/16"; measuring it proves the other five readings.`,
    ]));
});

describe('both diagonals', () => {
  const CLOSE: Six = [144, 120.25, 144.5, 120, 187.5, 187.9375];

  test('that agree are reconciled', () => {
    const { residuals, disagreements } = survey(CLOSE);
    expect(disagreements).toEqual([]);
    for (const { residual } of residuals) expect(Math.abs(residual)).toBeLessThan(INCH / 1000);
    expect(saySurvey(survey(CLOSE), TAPE)).toEqual([
      'The six readings of the room agree: each lies within 1/16" of the room drawn from them.',
    ]);
  });

  test('moving any corner makes the weighed squares larger', () => {
    const six: Six = [147, 120, 144, 121, 187.446, 188];
    const { room } = survey(six);
    const { sides, diagonals } = measured(six);
    const given = { ...sides, ...diagonals } as Record<Reading, number>;
    const cost = (moved: Room) =>
      READINGS.reduce(
        (sum, reading) =>
          sum + ((between(moved, reading) - given[reading]) / readingDoubt(given[reading], TAPE.step, 'inch')) ** 2,
        0,
      );
    const least = cost(room);
    for (const corner of ['near-right', 'far-right', 'far-left'] as const)
      for (const [x, y] of [
        [0.01, 0],
        [-0.01, 0],
        [0, 0.01],
        [0, -0.01],
      ] as const)
        expect(cost({ ...room, [corner]: [room[corner][0] + x, room[corner][1] + y] })).toBeGreaterThan(least);
  });

  // A true rectangle 144 x 120 has diagonals of 187.44599.
  test.each<[Reading, Six, string]>([
    ['near', [147, 120, 144, 120, 187.446, 187.446], `12'`],
    ['left', [144, 120, 144, 117.5, 187.446, 187.446], `10'`],
    ['near-left to far-right', [144, 120, 144, 120, 188.446, 187.446], `15' 7 7/16"`],
    ['near-right to far-left', [144, 120, 144, 120, 187.446, 186.446], `15' 7 7/16"`],
  ])('of which %s was misread: it is named, with what it would have to be', (reading, six, wouldBe) => {
    const found = survey(six);
    expect(found.disagreements[0]!.reading).toBe(reading);
    expect(sayDisagreement(found, TAPE)[0]).toContain(`It would have to be ${wouldBe}.`);
  });

  test('in words', () =>
    expect(sayDisagreement(survey([144, 120, 144, 120, 188.446, 187.446]), TAPE)).toEqual([
      `The readings do not close: the diagonal from near left to far right was read as 15' 8 7/16", 1" more than the other five allow; careful readings may miss by 7/16". It would have to be 15' 7 7/16".`,
      `measure the diagonal from near left to far right again, then the left wall, which otherwise would have to be 10' 1 9/16"`,
    ]));

  // Readings that each lie within the tape's tolerance (NIST Handbook 44, 1/32 in to 6 ft, 1/16 in to 30 ft) and half a mark are never called wrong.
  test('within the tolerance of the tape are never called wrong', () => {
    const unit = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(unit, { minLength: 6, maxLength: 6 }),
        fc.array(unit, { minLength: 5, maxLength: 5 }),
        (errors, skew) => {
          const room: Room = {
            'near-left': [0, 0],
            'near-right': [4000 + 60 * skew[0]!, 0],
            'far-right': [4000 + 60 * skew[1]!, -3200 + 60 * skew[2]!],
            'far-left': [60 * skew[3]!, -3200 + 60 * skew[4]!],
          };
          const six = READINGS.map((reading, at) => {
            const true_ = between(room, reading);
            return true_ + 0.999 * errors[at]! * readingDoubt(true_, TAPE.step, 'inch');
          }) as Six;
          expect(survey(six, TAPE, 1).disagreements).toEqual([]);
        },
      ),
      { numRuns: 100, seed: 11 },
    );
  });

  test('doubts are those of the published tables', () => {
    // NIST Handbook 44 (2007), Sec. 5.52: 1/32 in up to 6 ft, 1/16 up to 30, 1/8 up to 55, 3/16 up to 80, 1/4 up to 100; half a mark more.
    for (const [feet, part] of [
      [6, 32],
      [6.1, 16],
      [30, 16],
      [55, 8],
      [80, 16 / 3],
      [100, 4],
    ] as const)
      expect(readingDoubt(feet * 304.8, INCH / 16, 'inch')).toBeCloseTo(INCH / part + INCH / 32, 9);
    // Class II, 3.8449 m from the hook: 0.3 + 0.2 x 4 + 0.2 = 1.3 mm (UK SI 2016/1153, Sched. 1I).
    expect(readingDoubt(3844.9, 1, 'metric')).toBeCloseTo(1.3 + 0.5, 9);
  });
});

describe('readings that cannot be', () => {
  test.each<[string, Six, string]>([
    [
      'a diagonal longer than both walls together',
      [144, 120, 144, 120, 270],
      `the diagonal from near left to far right is 22' 6", but the near wall, 12', and the right wall, 10', reach only 22' end to end: these three close no triangle`,
    ],
    [
      'a wall longer than the diagonal and the wall beside it',
      [144, 120, 300, 120, undefined, 170],
      `the far wall is 25', but the diagonal from near right to far left, 14' 2", and the right wall, 10', reach only 24' 2" end to end: these three close no triangle`,
    ],
  ])('%s', (_, six, says) =>
    expect(surveyRoom(measured(six), TAPE)).toMatchObject({ ok: false, issues: [{ code: 'site/triangle', says }] }),
  );

  // By the law of cosines the angles at the near left corner are 33.9 and 150.3 degrees, 184.2 together.
  test('a corner that points inwards', () =>
    expect(surveyRoom(measured([144, 100, 155, 100, 60]), TAPE)).toMatchObject({
      ok: false,
      issues: [
        {
          code: 'site/inward',
          path: ['site', 'room', 'diagonals', 'near-left to far-right'],
          says: 'with these readings the near left corner would point into the room; a room of four walls has all corners pointing outwards',
          hint: 'measure the diagonal from near left to far right and the two walls at that corner again',
        },
      ],
    }));
});
