import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import checkerboard from '../../motifs/checkerboard.ts';
import diamond from '../../motifs/diamond.ts';
import plainBand from '../../motifs/plain-band.ts';
import sawtooth from '../../motifs/sawtooth.ts';
import { joints } from '../../src/marks/joints.ts';
import { scheduleMarks } from '../../src/marks/marks.ts';
import type { Schedule } from '../../src/marks/schedule.ts';
import type { Motif } from '../../src/motif/motif.ts';
import { writeTape } from '../../src/units/index.ts';
import { type LayoutWish, makeLayout } from '../support/layout.ts';
import { makeJob, metric } from './job.ts';

const IN = 25.4;
const field = diamond as Motif;
const lineOf = (schedule: Schedule, name: string) => schedule.lines.find((line) => line.name === name)!;
const read = (schedule: Schedule, name: string) => lineOf(schedule, name).marks.map((mark) => mark.reads);

/** A runner whose field is 139 3/8 in of a 151 3/8 in run, border 6 in: 12 repeats of 11.61458 in (worked by hand, and by highs). */
const wall = makeLayout({
  repeats: { across: 3, along: 12 },
  pitch: { across: 11.625 * IN, along: (139.375 / 12) * IN },
  border: 6 * IN,
  borderRepeats: { across: 6, along: 24 },
});

describe('along', () => {
  const schedule = scheduleMarks(wall, makeJob(), { field, border: sawtooth as Motif });
  const marks = lineOf(schedule, 'axis').marks;

  test('the marks of a 151 3/8 in run, border 6 in, 12 repeats', () => {
    // 6 + i × 139.375 / 12, each to the nearest sixteenth, by hand. 40 13.5/16 and 110 8.5/16 lie midway between two marks
    // and go to the even one (NIST Handbook 44, Sec. 10.3).
    const tape = ['0"', '6"', '17 5/8"', '29 1/4"', '40 7/8"', '52 7/16"', '64 1/16"', '75 11/16"', '87 5/16"'];
    tape.push('98 15/16"', '110 1/2"', '122 1/8"', '133 3/4"', '145 3/8"', '151 3/8"');
    expect(marks.map((mark) => writeTape(mark.reads, 'in', IN / 16))).toEqual(tape);
  });

  test('each says what it is for, in order', () => {
    expect(marks[0]).toMatchObject({ number: 1, for: 'work begins' });
    expect(marks[1]!.for).toBe('inner edge of the border, field begins');
    expect(marks[2]!.for).toBe('between repeats 1 and 2');
    expect(marks[7]!.for).toBe('between repeats 6 and 7, mid-run');
    expect(marks.at(-1)!.for).toBe('work ends');
    expect(marks.map((mark) => mark.number)).toEqual(marks.map((_, at) => at + 1));
  });

  test('the axis and both edges carry the same numbers, from points that lie square to each other', () => {
    expect(read(schedule, 'left-edge')).toEqual(read(schedule, 'axis'));
    expect(read(schedule, 'right-edge')).toEqual(read(schedule, 'axis'));
    expect(new Set(schedule.lines.map((line) => line.name)).size).toBe(schedule.lines.length);
  });

  test('end gaps and thresholds of a runner', () => {
    const layout = { ...makeLayout({ border: 60, endGap: 12, reserve: { along: 20 } }) };
    layout.gaps = { ...layout.gaps, near: 12, far: 13 };
    const axis = lineOf(scheduleMarks(layout, makeJob(metric), { field }), 'axis');
    expect(axis.datum).toBe('the near threshold, on the axis');
    expect(axis.marks.slice(0, 3).map((mark) => mark.true)).toEqual([12, 72, 92]);
    expect(axis.marks.at(-2)).toMatchObject({ true: 12 + 660, for: 'work ends' });
    expect(axis.marks.at(-1)).toMatchObject({ true: 12 + 660 + 13, for: 'the far threshold' });
  });
});

describe('across', () => {
  test('even counts meet on the axis, odd counts do not', () => {
    const even = scheduleMarks(makeLayout({ repeats: { across: 4 } }), makeJob(metric), { field });
    expect(read(even, 'across-right')).toEqual([100, 200]);
    expect(lineOf(even, 'across-left').says).toContain('between repeats 2 and 3');
    const odd = scheduleMarks(makeLayout({ repeats: { across: 3 } }), makeJob(metric), { field });
    expect(read(odd, 'across-right')).toEqual([50, 150]);
    expect(lineOf(odd, 'across-left').says).toContain('through the middle of a repeat');
  });

  test('repeats are counted from the left on both sides', () => {
    const schedule = scheduleMarks(makeLayout({ repeats: { across: 3 } }), makeJob(metric), { field });
    expect(lineOf(schedule, 'across-left').marks[0]!.for).toBe('between repeats 1 and 2');
    expect(lineOf(schedule, 'across-right').marks[0]!.for).toBe('between repeats 2 and 3');
  });

  test('the two sides mirror each other', () => {
    const schedule = scheduleMarks(wall, makeJob(), { field });
    expect(read(schedule, 'across-left')).toEqual(read(schedule, 'across-right'));
  });
});

describe('landing', () => {
  test('a field that begins on half a repeat is first met half a pitch in', () => {
    expect(joints(400, 100, 0.5).map((joint) => joint.at)).toEqual([50, 150, 250, 350]);
    expect(joints(400, 100).map((joint) => joint.at)).toEqual([100, 200, 300]);
  });

  test('9 squares of a checkerboard meet on 8 lines', () => {
    // One repeat holds 2 × 2 squares, so 4.5 repeats of 100 mm are 9 squares of 50 mm.
    const layout = makeLayout({ repeats: { across: 4.5, along: 2 }, pitch: { across: 100, along: 100 } });
    const schedule = scheduleMarks(layout, makeJob(metric), { field: checkerboard as Motif });
    expect(read(schedule, 'across-right')).toEqual([25, 75, 125, 175, 225]);
    expect(read(schedule, 'axis')).toEqual([0, 50, 100, 150, 200]);
    expect(lineOf(schedule, 'axis').marks[1]!.for).toBe('between squares 1 and 2');
  });
});

describe('border', () => {
  test('repeats are marked from the same datum as everything else', () => {
    const layout = makeLayout({
      repeats: { across: 4, along: 6 },
      border: 50,
      endGap: 10,
      borderRepeats: { across: 8, along: 12 },
    });
    const schedule = scheduleMarks(layout, makeJob(metric), { field, border: sawtooth as Motif });
    expect(read(schedule, 'border-left')).toEqual([10, ...Array.from({ length: 13 }, (_, i) => 60 + 50 * i), 710]);
    expect(read(schedule, 'border-far-right')).toEqual([50, 100, 150, 200, 250]);
    expect(lineOf(schedule, 'border-left').datum).toContain('the near threshold');
  });

  test('a taped band needs no marks of its own', () => {
    const names = scheduleMarks(wall, makeJob(), { field, border: plainBand as Motif }).lines.map((line) => line.name);
    expect(names.filter((name) => name.startsWith('border'))).toEqual([]);
  });
});

describe('where the axis is', () => {
  test('the centre of each opening of a runner', () => {
    const job = makeJob({ site: { run: 240 * IN, openings: { near: 34.375 * IN, far: 36 * IN } } });
    const schedule = scheduleMarks(wall, job);
    expect(read(schedule, 'near-opening')).toEqual([roundedInch(17.1875)]);
    expect(read(schedule, 'far-opening')).toEqual([18 * IN]);
  });

  test('a rug in a room is measured from its walls', () => {
    const layout = { ...makeLayout(), gaps: { near: 400, far: 401, left: 300, right: 301 } };
    const job = makeJob({ ...metric, surface: 'rug', site: { room: { across: 901, along: 1301 } } });
    const schedule = scheduleMarks(layout, job);
    expect(read(schedule, 'room')).toEqual([300, 450, 600, 901]);
    expect(lineOf(schedule, 'axis').datum).toBe('the near wall, on the axis');
    expect(read(schedule, 'axis')[0]).toBe(400);
    expect(read(schedule, 'axis').at(-1)).toBe(1301);
  });

  test('a floor cloth has only its edges', () => {
    const schedule = scheduleMarks(makeLayout(), makeJob({ ...metric, surface: 'floor-cloth' }));
    expect(schedule.lines.map((line) => line.name)).toEqual([
      'axis',
      'left-edge',
      'right-edge',
      'across-left',
      'across-right',
    ]);
    expect(lineOf(schedule, 'axis').datum).toBe('the near edge of the cloth, on the axis');
  });
});

const roundedInch = (inches: number) => Math.round(inches * 16) * (IN / 16);

const wishes: fc.Arbitrary<Partial<LayoutWish>> = fc.record({
  repeats: fc.record({
    across: fc.integer({ min: 1, max: 40 }).map((halves) => halves / 2),
    along: fc.integer({ min: 1, max: 160 }).map((halves) => halves / 2),
  }),
  pitch: fc.record({
    across: fc.double({ min: 40, max: 500, noNaN: true }),
    along: fc.double({ min: 40, max: 500, noNaN: true }),
  }),
  phase: fc.record({ across: fc.constantFrom(0, 0.5), along: fc.constantFrom(0, 0.5) }),
  border: fc.oneof(fc.constant(0), fc.double({ min: 10, max: 200, noNaN: true })),
  endGap: fc.oneof(fc.constant(0), fc.double({ min: 0.5, max: 60, noNaN: true })),
});
const steps = fc.constantFrom(IN / 8, IN / 16, IN / 32, 1, 0.5);

/** The largest of some misses, so that a property is stated once and not mark by mark. */
const worst = (misses: number[]) => Math.max(0, ...misses.map(Math.abs));
const axisOf = (wish: Partial<LayoutWish>, change = metric) => {
  const layout = makeLayout(wish);
  return { layout, marks: lineOf(scheduleMarks(layout, makeJob(change)), 'axis').marks };
};

describe('every layout', () => {
  test('any mark lies within half a tape step of true, and on the tape', () => {
    fc.assert(
      fc.property(wishes, steps, (wish, step) => {
        const marks = scheduleMarks(makeLayout(wish), makeJob({ step })).lines.flatMap((line) => line.marks);
        expect(worst(marks.map((mark) => mark.reads - mark.true))).toBeLessThanOrEqual(step / 2 + 1e-9);
        expect(worst(marks.map(({ reads }) => reads / step - Math.round(reads / step)))).toBeLessThan(1e-6);
      }),
    );
  });

  test('the last joint is as true as the first, where stepping a rounded pitch drifts', () => {
    fc.assert(
      fc.property(wishes, steps, (wish, step) => {
        const { layout, marks } = axisOf(wish, { step });
        const met = marks.filter((mark) => mark.for.startsWith('between'));
        const stepped = Math.round(layout.pitch.along / step) * step;
        const trueAt = (at: number) => met[0]!.true + at * layout.pitch.along;
        expect(worst(met.map((mark, at) => mark.reads - trueAt(at)))).toBeLessThanOrEqual(step / 2 + 1e-6);
        const last = met.length - 1;
        const drift = last < 0 ? 0 : Math.abs(met[0]!.reads + last * stepped - trueAt(last));
        expect(drift).toBeGreaterThanOrEqual(last * Math.abs(stepped - layout.pitch.along) - step / 2 - 1e-6);
      }),
    );
  });

  test('a layout alike at both ends reads alike from both ends', () => {
    fc.assert(
      fc.property(wishes, (wish) => {
        const repeats = { along: Math.ceil(wish.repeats!.along!) };
        const { layout, marks } = axisOf({ ...wish, repeats });
        const run = layout.overall.along;
        const places = marks.map((mark) => mark.true).filter((at) => layout.endGap === 0 || Math.abs(at - run) > 1e-6);
        expect(worst(places.map((at, i) => at + places.at(-1 - i)! - run))).toBeLessThan(1e-6);
      }),
    );
  });

  test('doubling every length doubles every mark', () => {
    fc.assert(
      fc.property(wishes, (wish) => {
        const borderRepeats = { across: 4, along: 6 };
        const pitch = { across: 2 * wish.pitch!.across!, along: 2 * wish.pitch!.along! };
        const twice = { ...wish, pitch, border: 2 * wish.border!, endGap: 2 * wish.endGap!, borderRepeats };
        const marksOf = (of: Partial<LayoutWish>) =>
          scheduleMarks(makeLayout(of), makeJob(metric)).lines.flatMap((line) => line.marks);
        const [once, double] = [marksOf({ ...wish, borderRepeats }), marksOf(twice)];
        expect(double.map((mark) => mark.for)).toEqual(once.map((mark) => mark.for));
        expect(worst(double.map((mark, at) => mark.true - 2 * once[at]!.true))).toBeLessThan(1e-6);
      }),
    );
  });
});
