import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { readJob } from '../../src/job/read.ts';
import { writeScalar } from '../../src/job/scalar.ts';
import { type Answers, writeJobFile } from '../../src/job/template.ts';
import { UNITS } from '../../src/units/index.ts';
import { KNOWN } from './known.ts';

const RUNNER: Answers = {
  title: 'Back passage',
  surface: 'runner',
  units: 'in',
  run: `19' 7 3/8"`,
  near: '32 1/2',
  far: '30"',
  motif: 'diamond',
  across: '5',
  border: 'sawtooth',
};
const RUG: Answers = {
  title: 'Reading room',
  surface: 'rug',
  units: 'cm',
  room: { across: '3.61 m', along: '4.27 m' },
  overall: { across: '176 to 184', along: '2.4 m' },
  motif: 'star',
};
const CLOTH: Answers = {
  title: 'Porch: "cloth" #2',
  surface: 'floor-cloth',
  units: 'in',
  overall: { across: '26⅝″', along: '38 3/16"' },
  motif: 'checkerboard',
  across: '4 to 6',
  border: 'none',
};
/** Scenarios of our own: readings that close. */
const WALLS = {
  near: '12 ft',
  right: `10' 0 1/4"`,
  far: '12\' 1/2"',
  left: '120',
  diagonal: '187 1/2',
  other: '187 15/16',
};
const MEASURED: Answers = {
  title: 'Back bedroom',
  surface: 'rug',
  units: 'in',
  walls: WALLS,
  overall: { across: '84', along: '96' },
  motif: 'diamond',
};
const { other: _, ...fewer } = WALLS;
const FLOOR: Answers = { title: 'Scullery', surface: 'floor', units: 'in', walls: fewer, motif: 'checkerboard' };
const PLAIN: Answers = {
  title: 'Pantry',
  surface: 'floor',
  units: 'cm',
  room: { across: '213', along: '274' },
  motif: 'star',
};
const BAND: Answers = {
  title: 'Dining room',
  surface: 'room-border',
  units: 'in',
  room: { across: '11 ft', along: '13 ft' },
  motif: 'diamond',
  border: 'sawtooth',
};
const STAIRS: Answers = {
  title: 'Back stairs',
  surface: 'stairs',
  units: 'in',
  steps: { count: '8', across: '36', high: '7 1/2' },
  motif: 'star',
};
const ALL: [string, Answers][] = [
  ...[RUNNER, RUG, CLOTH, FLOOR, BAND, STAIRS].map((answers): [string, Answers] => [answers.surface, answers]),
  ['rug in a room of four walls', MEASURED],
  ['floor from wall to wall', PLAIN],
];

const read = (text: string) => {
  const found = readJob(text, 'f.job.yaml', KNOWN);
  if (!found.ok) throw new Error(JSON.stringify(found.issues, null, 1));
  return found.value;
};

describe.each(ALL)('a new file for a %s', (_name, answers) => {
  const { surface } = answers;
  const text = writeJobFile(answers);

  test('reads back without an issue, as answered', () => {
    const { title, motif } = answers;
    const field = surface === 'room-border' ? {} : { motif };
    expect(read(text)).toMatchObject({ title, surface, field, units: answers.units });
  });

  test('still does with every wish made that stands in it as a comment', () => {
    const made = text.replace(/^( *)# ?( *(?:[a-z]+ )?[a-z]+:(?= |$))/gm, '$1$2');
    expect(made.split('\n').filter((line) => /^ *#/.test(line)).length).toBeLessThan(5);
    const job = read(made);
    if (surface !== 'room-border') expect(job.field.pitch.across).toBeDefined();
    expect(job.stencil.bridge).toBe(3);
    expect(job.reserve.across.to).toBeGreaterThan(0);
  });

  test('keeps its notes in one column and its lines short', () => {
    for (const line of text.split('\n')) expect(line.length, line).toBeLessThanOrEqual(120);
    expect(text.endsWith('\n')).toBe(true);
  });
});

test('the room is the one that was measured', () => {
  const inch = (value: number) => expect.closeTo(value * 25.4, 6);
  const sides = { near: inch(144), right: inch(120.25), far: inch(144.5), left: inch(120) };
  const long = { 'near-left to far-right': inch(187.5) };
  expect(read(writeJobFile(MEASURED)).site.measured).toMatchObject({
    sides,
    diagonals: { ...long, 'near-right to far-left': inch(187.9375) },
  });
  expect(read(writeJobFile(FLOOR)).site.measured).toMatchObject({ sides, diagonals: long });
  expect(read(writeJobFile(PLAIN)).site.room).toEqual({ across: 2130, along: 2740 });
  expect(read(writeJobFile(BAND)).site.walls?.map(({ length }) => length / 304.8)).toEqual([13, 11, 13, 11]);
  const steps = read(writeJobFile(STAIRS)).site.steps;
  expect(steps).toHaveLength(8);
  expect(steps?.[0]?.riser).toEqual({ across: inch(36), along: inch(7.5) });
});

test('the numbers are those typed', () => {
  expect(read(writeJobFile(RUNNER))).toMatchObject({
    site: { run: 5978.525, openings: { near: 825.5, far: 762 } },
    field: { repeats: { across: { from: 5, to: 5 } } },
    border: { motif: 'sawtooth' },
  });
  expect(read(writeJobFile(RUG))).toMatchObject({
    site: { room: { across: 3610, along: 4270 } },
    overall: { across: { from: 1760, to: 1840 }, along: { from: 2400, to: 2400 } },
    border: { motif: 'plain-band' },
  });
  expect(read(writeJobFile(CLOTH))).toMatchObject({
    overall: { across: { from: 676.275, to: 676.275 } },
    border: { motif: 'none' },
  });
});

test.each(UNITS)('comments show lengths that fit a job in %s', (units) => {
  const text = writeJobFile({ ...RUG, units, overall: { across: '2 m', along: '3 m' } });
  expect(text).toContain(units === 'in' || units === 'ft' ? '# tape: 1/16 in' : '# tape: 1 mm');
  expect(read(text).units).toBe(units);
});

test('one opening given stands for both', () => {
  const { far: _, ...one } = RUNNER;
  expect(read(writeJobFile(one)).site.openings).toEqual({ near: 825.5, far: 825.5 });
});

test('a value is written so that a YAML reader gives it back', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      const line = text.replace(/[\p{C}\s]+/gu, ' ').trim();
      const scalar = writeScalar(text);
      expect(parse(`a: ${scalar}\nb: { c: ${scalar} } # note\n`, { schema: 'failsafe' })).toEqual({
        a: line,
        b: { c: line },
      });
    }),
    { numRuns: 400 },
  );
  for (const text of [
    'null',
    '~',
    `19' 7 3/8"`,
    '34"',
    '"34"',
    "'",
    '#22384f',
    'a # b',
    'a: b',
    '- x',
    '26⅝″',
    'yes',
    '{x}',
  ])
    expect(parse(`a: ${writeScalar(text)}`, { schema: 'failsafe' })).toEqual({ a: text });
});
