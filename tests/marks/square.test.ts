import { describe, expect, test } from 'vitest';
import { bowFor, leanFor, rightTriangle, squareChecks, squaringMove, strayFor } from '../../src/marks/square.ts';
import { writeLength } from '../../src/units/index.ts';
import { makeLayout } from '../support/layout.ts';
import { makeJob } from './job.ts';

const IN = 25.4;
const job = makeJob();

/** A bare rectangle, inches. */
const rectangle = (across: number, along: number) =>
  makeLayout({ repeats: { across: 1, along: 1 }, pitch: { across: across * IN, along: along * IN } });

const found = (across: number, along: number, says: RegExp) =>
  squareChecks(rectangle(across, along), job).find((check) => says.test(check.says))!;

describe('diagonals', () => {
  // Exact square roots, worked out apart from the code: 144 × 120, 150 1/2 × 119 1/4, 151 3/8 × 122 1/2 in.
  test.each([
    [120, 144, 187.44599],
    [119.25, 150.5, 192.01774],
    [122.5, 151.375, 194.73223],
  ])('%d × %d in: %d in', (across, along, inches) => {
    expect(found(across, along, /^Work.*both diagonals/).true / IN).toBeCloseTo(inches, 4);
  });

  test('60 × 100 ft is 116.619 ft, which reads 116 ft 7 7/16 in and not 116 ft 6 in', () => {
    // The carpenter's worked example on tractorbynet.com, thread 41040, gives "116 feet and six tenths".
    const check = found(720, 1200, /^Work.*both diagonals/);
    expect(check.true / IN / 12).toBeCloseTo(116.619, 3);
    expect(writeLength(check.reads, 'ft', job.step)).toBe(`116' 7 7/16"`);
  });

  test('mid-run: half of a 72 × 192 in run is a 3-4-5 of 24 in', () => {
    expect(found(72, 192, /mid-run/).true / IN).toBeCloseTo(120, 9);
  });

  test('the field has its own where a border or a reserve parts it from the work', () => {
    const layout = makeLayout({ repeats: { across: 3, along: 4 }, pitch: { across: 100, along: 100 }, border: 50 });
    expect(squareChecks(layout, job).find((check) => check.says.startsWith('Field'))!.true).toBeCloseTo(500, 9);
    expect(squareChecks(rectangle(72, 192), job).some((check) => check.says.startsWith('Field'))).toBe(false);
  });
});

describe('3-4-5', () => {
  // 15-20-25 is the largest whole-foot triangle for a 25 ft tape: boulderlibrary.net, framing, "Checking reference".
  test('a floor of 15 × 20 ft takes 15-20-25', () => {
    expect(rightTriangle(15, 20, 1)).toEqual({ across: 15, along: 20, slant: 25 });
    expect(rightTriangle(20, 15, 1)).toEqual({ across: 20, along: 15, slant: 25 });
  });

  test('a runner 36 in wide takes 36-48-60 and says both legs', () => {
    const check = found(36, 240, /^3-4-5/);
    expect(check.true / IN).toBeCloseTo(60, 9);
    expect(check.says).toContain(`36" along the near edge, 48" up the left edge`);
  });

  test('work smaller than a hand still gets one, in steps', () => {
    expect(rightTriangle(2.9, 30, 1)).toEqual({ across: 0, along: 0, slant: 0 });
    const check = found(2, 2.5, /^3-4-5/);
    expect(check.reads).toBeGreaterThan(0);
    expect(check.true).toBeCloseTo(check.reads, 9);
  });
});

describe('how far off', () => {
  // Parallelogram 144 × 120 in, from d1² − d2² = 4wh cos A: differences of 1/4, 1/2 and 1 in lean 0.16271, 0.32543, 0.65085 over 120.
  test.each([
    [0.25, 0.16271],
    [0.5, 0.32543],
    [1, 0.65085],
  ])('diagonals that differ by %d in lean %d in', (difference, lean) => {
    expect(leanFor(difference, 144, 120)).toBeCloseTo(lean, 4);
    const skew = Math.atan2(lean, 120);
    const [long, short] = [1, -1].map((side) => Math.hypot(144 + side * lean, 120 * Math.cos(skew)));
    expect(long! - short!).toBeCloseTo(difference, 2);
  });

  // Law of cosines, slanted side 1/8 in too long, drift over 144 in: 0.62566, 0.31266, 0.20841. The rule is its first term.
  test.each([
    [36, 48, 60, 0.62566],
    [72, 96, 120, 0.31266],
    [108, 144, 180, 0.20841],
  ])('an eighth on %d-%d-%d strays %d in over 144', (across, along, slant, stray) => {
    expect(strayFor(1 / 8, { across, along, slant }, 144)).toBeCloseTo(stray, 2);
  });

  // The identity d1² − d2² = 4wh cos A, and both far corners moved as the job sheet says: equal diagonals again.
  test.each([-0.65085, -0.16271, 0.16271, 0.32543, 0.65085])(
    '144 × 120 in, leaning %d in: moved back, it is square',
    (lean) => {
      const [width, height] = [144, Math.sqrt(120 * 120 - lean * lean)];
      const diagonals = (shift: number) =>
        [Math.hypot(width + shift, height), Math.hypot(width - shift, height)] as const;
      const { way, by } = squaringMove(...diagonals(lean), width);
      expect(by).toBeCloseTo(Math.abs(lean), 9);
      const [one, other] = diagonals(lean + (way === 'left' ? -by : by));
      expect(one).toBeCloseTo(other, 9);
      expect(leanFor(diagonals(lean)[0] - diagonals(lean)[1], width, 120)).toBeCloseTo(lean, 3);
    },
  );

  test('the words say which corners, which way and how far: 144 × 120 in, 1/8 in apart', () => {
    // A quarter leans 0.16271 in, so an eighth leans 0.08135 in: 1/16 on the tape.
    const { otherwise } = found(144, 120, /^Work/);
    expect(otherwise).toContain('near left to far right is the longer, move both far corners to the left');
    expect(otherwise).toContain('1/16" for every 1/8" between them');
  });

  test('3-4-5 on a corner that leans: an eighth too long on 36-48-60 is 5/8 in over 144, to be moved back to the right', () => {
    // 0.62566 in by the law of cosines.
    const { otherwise } = found(36, 144, /^3-4-5/);
    expect(otherwise).toContain('Too long: move the far end of the left edge to the right, 5/8" for every 1/8"');
  });

  test('an edge that bows: the distance to its middle grows as Pythagoras has it', () => {
    for (const out of [-0.5, 0.25, 1]) {
      const off = Math.hypot(36 + out, 60) - Math.hypot(36, 60);
      expect(bowFor(off, 36, 120)).toBeCloseTo(out, 1);
    }
  });

  test('every check says what to do', () => {
    for (const check of squareChecks(rectangle(34, 240), job)) expect(check.otherwise.length).toBeGreaterThan(40);
  });
});
