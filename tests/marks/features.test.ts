import { describe, expect, test } from 'vitest';
import { joints } from '../../src/marks/joints.ts';
import { scheduleMarks } from '../../src/marks/marks.ts';
import type { Schedule } from '../../src/marks/schedule.ts';
import type { Motif } from '../../src/motif/motif.ts';
import { roundToStep } from '../../src/units/index.ts';
import { makeLayout } from '../support/layout.ts';
import { needMotif } from '../support/motifs.ts';
import { makeJob, metric } from './job.ts';

const lineOf = (schedule: Schedule, name: string) => schedule.lines.find((line) => line.name === name);
/** `300 what for`, mark by mark. */
const said = (schedule: Schedule, name: string): string[] =>
  lineOf(schedule, name)!.marks.map((mark) => `${Number(mark.true.toFixed(3))} ${mark.for}`);

const field = needMotif('diamond');
const sawtooth = needMotif('sawtooth');
/** A border that runs one way. */
const scroll: Motif = { ...sawtooth, lines: { ...sawtooth.lines, across: { mirrors: [], whole: [0], half: [] } } };
const base = makeJob(metric);

describe('an inner border', () => {
  // Border 50, 20 to the inner border of 30, 10 to the field of 3 × 5 repeats of 100: worked by hand.
  const layout = {
    ...makeLayout({ border: 50, borderRepeats: { across: 8, along: 12 }, reserve: { across: 60, along: 60 } }),
    inner: { width: 30, offset: { across: 20, along: 20 }, repeats: { across: 4, along: 10 } },
  };
  const inner = { ...base.border, motif: 'sawtooth', width: 30, gap: 10, corner: base.border.corner };
  const job = { ...base, inner };
  const schedule = scheduleMarks(layout, job, { field, border: sawtooth, inner: sawtooth });

  test('has both its edges marked along and across', () => {
    expect(said(schedule, 'axis').slice(0, 6)).toEqual([
      '0 work begins',
      '50 inner edge of the border',
      '70 outer edge of the inner border',
      '100 inner edge of the inner border',
      '110 field begins',
      '210 between repeats 1 and 2',
    ]);
    expect(said(schedule, 'across-right').slice(-5)).toEqual([
      '150 edge of the field',
      '160 inner edge of the inner border',
      '190 outer edge of the inner border',
      '210 inner edge of the border',
      '260 edge of the work',
    ]);
  });

  test('has its own repeats marked on all four sides', () => {
    // Its long sides are 720 - 2 × 100 = 520, ten repeats of 52; its short ones 520 - 200 = 320, four of 80.
    const left = said(schedule, 'inner-border-left');
    expect(left.slice(0, 3)).toEqual([
      '70 corner block begins',
      '100 corner block ends, border repeats begin',
      '152 between border repeats 1 and 2',
    ]);
    expect(left.at(-1)).toBe('650 corner block ends');
    expect(lineOf(schedule, 'inner-border-left')!.datum).toContain('the left edge of the inner border');
    expect(said(schedule, 'inner-border-far-right')).toEqual([
      '80 between border repeats 3 and 4',
      '160 border repeats end, corner block begins',
      '190 corner block ends',
    ]);
    expect(new Set(schedule.lines.map(({ name }) => name)).size).toBe(schedule.lines.length);
  });

  test('of tape needs only its edges', () => {
    const taped = scheduleMarks(layout, job, { field, border: sawtooth, inner: needMotif('plain-band') });
    expect(taped.lines.filter(({ name }) => name.startsWith('inner-border'))).toEqual([]);
    expect(said(taped, 'axis')[2]).toBe('70 outer edge of the inner border');
  });

  test('every mark is rounded on its own', () => {
    for (const step of [25.4 / 16, 1]) {
      const odd = { ...layout, inner: { ...layout.inner, offset: { across: 17.31, along: 19.87 } } };
      for (const { marks } of scheduleMarks(odd, { ...job, step }, { field, border: sawtooth, inner: sawtooth })
        .lines) {
        for (const mark of marks) expect(mark.reads).toBe(roundToStep(mark.true, step));
      }
    }
  });
});

describe('a border that runs one way', () => {
  const layout = makeLayout({ border: 50, borderRepeats: { across: 6, along: 10 } });
  const lines = (run: 'reverse' | 'round') =>
    scheduleMarks(layout, { ...base, border: { ...base.border, run } }, { field, border: scroll });

  test('reverses at a mark of its long sides and at the axis', () => {
    const reversing = lines('reverse');
    // 50 to 550, ten repeats of 50: the middle is at 300.
    expect(said(reversing, 'border-left').filter((mark) => mark.includes('reverses'))).toEqual([
      '300 between border repeats 5 and 6, the border reverses',
    ]);
    expect(lineOf(reversing, 'border-far-left')!.says).toContain('The border reverses at the axis.');
  });

  test('says nothing of it where it runs round, or has a mirror', () => {
    const words = (schedule: Schedule) => JSON.stringify(schedule.lines);
    expect(words(lines('round'))).not.toContain('reverses');
    expect(words(scheduleMarks(layout, base, { field, border: sawtooth }))).not.toContain('reverses');
  });
});

test('butted sides: the near and far ones run through to the edge of the work, the others stop at them', () => {
  // 400 × 600, border 50: eight repeats of 50 on the ends, ten on the sides.
  const layout = makeLayout({ border: 50, borderRepeats: { across: 8, along: 10 } });
  const schedule = scheduleMarks(
    layout,
    { ...base, border: { ...base.border, turn: 'butt' } },
    { field, border: sawtooth },
  );
  expect(said(schedule, 'border-near-right')).toEqual([
    '50 between border repeats 5 and 6',
    '100 between border repeats 6 and 7',
    '150 between border repeats 7 and 8',
    '200 border repeats end',
  ]);
  const left = said(schedule, 'border-left');
  expect(left.slice(0, 2)).toEqual(['0 near side begins', '50 near side ends, border repeats begin']);
  expect(left.slice(-2)).toEqual(['550 border repeats end, far side begins', '600 far side ends']);
});

test.each(['mitre', 'own'] as const)('a corner that is no block is not called one: %s', (turn) => {
  const layout = makeLayout({ border: 50, borderRepeats: { across: 6, along: 10 } });
  const job = { ...base, border: { ...base.border, turn } };
  const left = said(scheduleMarks(layout, job, { field, border: sawtooth }), 'border-left');
  expect(left.slice(0, 2)).toEqual(['0 corner begins', '50 corner ends, border repeats begin']);
});

describe('alternate repeats', () => {
  const layout = makeLayout({ repeats: { across: 4, along: 3 } });
  const axis = (alternation: NonNullable<(typeof base)['field']['alternation']>, motif = field) =>
    scheduleMarks(layout, { ...base, field: { ...base.field, alternation } }, { field: motif });

  test('by row: every line between rows says which kind begins; columns are all alike', () => {
    const schedule = axis({ by: 'row' });
    expect(said(schedule, 'axis').slice(1, 4)).toEqual([
      '100 between repeats 1 and 2, row 2 in exchanged colours',
      '150 mid-run',
      '200 between repeats 2 and 3, row 3 in its own colours',
    ]);
    expect(said(schedule, 'across-right')[0]).toBe('100 between repeats 3 and 4');
  });

  test('by column with another motif: counted from the left on both sides of the axis', () => {
    const schedule = axis({ by: 'column', other: { motif: 'pinwheel', settings: {} } });
    expect(said(schedule, 'across-right')[0]).toBe('100 between repeats 3 and 4, column 4 of pinwheel');
    expect(said(schedule, 'across-left')[0]).toBe('100 between repeats 1 and 2, column 2 of pinwheel');
    expect(said(schedule, 'axis')[1]).toBe('100 between repeats 1 and 2');
  });

  test('in checks: what each row and each column begins with', () => {
    const schedule = axis({ by: 'checker' });
    expect(said(schedule, 'axis')[1]).toBe('100 between repeats 1 and 2, row 2 begins in exchanged colours');
    expect(said(schedule, 'across-right')[0]).toBe('100 between repeats 3 and 4, column 4 begins in exchanged colours');
  });

  test('of squares: only lines between repeats, not those inside one', () => {
    const along = said(axis({ by: 'row' }, needMotif('checkerboard')), 'axis');
    expect(along.slice(1, 4)).toEqual([
      '50 between squares 1 and 2',
      '100 between squares 2 and 3, row 2 in exchanged colours',
      '150 between squares 3 and 4, mid-run',
    ]);
  });

  test('a row that begins on half a repeat: the first, half row is as drawn', () => {
    expect(joints(300, 100, 0.5).map(({ at, begins }) => [at, begins])).toEqual([
      [50, 2],
      [150, 3],
      [250, 4],
    ]);
  });
});

test('the room of a medallion has its four edges marked', () => {
  const layout = makeLayout({ repeats: { across: 5, along: 7 } });
  const medallion = { motif: 'compass-rose', settings: {}, repeats: { across: 3, along: 3 } };
  const schedule = scheduleMarks(layout, { ...base, medallion }, { field });
  const room = (name: string) => said(schedule, name).filter((mark) => mark.includes('medallion'));
  expect(room('axis')).toEqual([
    '200 between repeats 2 and 3, room of the medallion begins',
    '500 between repeats 5 and 6, room of the medallion ends',
  ]);
  expect(room('across-left')).toEqual(['150 between repeats 1 and 2, edge of the room of the medallion']);
});

test('marks that coincide say what they are for in the order given, whichever is a hair nearer', () => {
  // Found by a random layout: here mid-run comes out a rounding error before the joint it coincides with.
  const layout = makeLayout({
    repeats: { across: 0.5, along: 4 },
    pitch: { across: 40, along: 235.19036144839748 },
    border: 21.670905927013226,
    endGap: 25.96200142560081,
  });
  const axis = lineOf(scheduleMarks(layout, { ...base, step: 3.175 }, { field }), 'axis')!;
  expect(axis.marks.map((mark) => mark.for)).toContain('between repeats 2 and 3, mid-run');
});
