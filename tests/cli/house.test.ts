import { appendFileSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkFiles } from '../../src/check/index.ts';
import { good } from '../../src/issue.ts';
import type { PaintPlan } from '../../src/paint/whole.ts';
import { type Assets, makeFiles, planJob } from '../../src/pipeline.ts';
import { paintAsStated } from '../../src/write/paint.ts';
import { evenfield, folder } from './support.ts';

const SAMPLE = resolve(import.meta.dirname, '../../samples/gable-house');
const SAMPLE_JOBS = ['hall.job.yaml', 'stairs.job.yaml', 'porch/mat.job.yaml'];

const HOUSE = `title: Mill Lane
palette: { chalk: '#efe9dc', slate: '#3b4a57' }
colours: { ground: chalk, field: slate }
paint:
  covers: 400 sq ft per gallon
  on hand: { slate: 1 quart }
  tins: [{ size: 1/2 pint, price: 9 }, { size: 1 pint, price: 14 }]
`;

const job = (house: string, ...lines: string[]): string =>
  [
    'evenfield: 1',
    'units: mm',
    'surface: floor-cloth',
    'overall: { across: 360, along: 480 }',
    'field: { motif: diamond }',
    'border: none',
    'print: { tiles: none }',
    `house: ${house}`,
    ...lines,
    '',
  ].join('\n');

/** A folder with `mill-lane.yaml` and these files, the folders they stand in made. */
function houseWith(files: Record<string, string>, house = HOUSE): string {
  const dir = folder();
  writeFileSync(join(dir, 'mill-lane.yaml'), house);
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(join(dir, name, '..'), { recursive: true });
    writeFileSync(join(dir, name), text);
  }
  return dir;
}

const TWO = { 'hall.job.yaml': job('mill-lane.yaml'), 'porch/mat.job.yaml': job('../mill-lane.yaml') };

describe('evenfield house', () => {
  test('finds the jobs beside the house and in the folders there, and adds up their paint; the tin at hand counts once', () => {
    const elsewhere = { 'shed.job.yaml': job('shed.yaml'), 'porch/deep/far.job.yaml': job('../../mill-lane.yaml') };
    const dir = houseWith({ ...TWO, ...elsewhere });
    const plain = evenfield(dir, ['house', 'mill-lane.yaml']);
    expect([plain.status, plain.err]).toEqual([0, '']);
    expect(plain.out).toMatch(
      /Mill Lane: the paint of 2 jobs together[\s\S]*slate .* 1 quart +nothing\n {2}Hall .*\n {2}Mat /,
    );
    const out = join(dir, 'out', 'mill-lane-house');
    const written = readdirSync(out).filter((name) => !name.startsWith('.'));
    expect(written.sort()).toEqual(['house-paint.csv', 'house.png', 'house.svg']);

    const { paints, jobs } = JSON.parse(evenfield(dir, ['house', 'mill-lane.yaml', '--json']).out);
    expect(jobs.map(({ file }: { file: string }) => file)).toEqual(['hall.job.yaml', 'porch/mat.job.yaml']);
    // What each job needs by itself is what `evenfield paint` says of it.
    const plans = jobs.map(({ file }: { file: string }) => JSON.parse(evenfield(dir, ['paint', file, '--json']).out));
    for (const { name, kind, needed, onHand, bought } of paints) {
      const alone = plans.map((plan: PaintPlan) => plan.paints.find((one) => one.name === name && one.kind === kind));
      expect(needed, name).toBeCloseTo(alone[0].needed + alone[1].needed, 6);
      expect(onHand, name).toBe(alone[0].onHand);
      if (name === 'chalk') expect(bought.cost).toBeLessThan(alone[0].cost + alone[1].cost);
    }
  });

  test('takes the jobs that are named, each once, and leaves alone what somebody edited', () => {
    const dir = houseWith(TWO);
    const ran = evenfield(dir, ['house', 'mill-lane.yaml', 'hall.job.yaml', './hall.job.yaml']);
    expect(ran.out).toContain('the paint of one job\n');
    writeFileSync(join(dir, 'out/mill-lane-house/house.svg'), '<svg/>');
    expect(evenfield(dir, ['house', 'mill-lane.yaml']).status).toBe(1);
    expect(evenfield(dir, ['house', 'mill-lane.yaml', '--replace']).status).toBe(0);
  });

  test.each([
    ['no job at all', {}, [], /no job names mill-lane\.yaml.*no \*\.job\.yaml.*write house: mill-lane\.yaml/],
    [
      'a house that is named as if it lay beside the job',
      { 'hall/hall.job.yaml': job('mill-lane.yaml') },
      [],
      /hall\/hall\.job\.yaml names mill-lane\.yaml, which leads to hall\/mill-lane\.yaml.*house: \.\.\/mill-lane\.yaml/,
    ],
    [
      'a job of another house',
      { ...TWO, 'shed.job.yaml': job('shed.yaml') },
      ['hall.job.yaml', 'shed.job.yaml'],
      /shed\.job\.yaml names shed\.yaml, which leads to shed\.yaml, not to mill-lane\.yaml \(write house: mill-lane\.yaml/,
    ],
    [
      'a job of no house',
      { 'shed.job.yaml': 'evenfield: 1\nsurface: rug\n' },
      ['shed.job.yaml'],
      /shed\.job\.yaml names no house \(write house: mill-lane\.yaml in it\)/,
    ],
    [
      'broken YAML in one job',
      { ...TWO, 'attic.job.yaml': job('mill-lane.yaml', 'reserve: [') },
      [],
      /^attic\.job\.yaml:\d+:\d+: .*not closed/,
    ],
    [
      'two jobs of one name',
      { ...TWO, 'attic/hall.job.yaml': job('../mill-lane.yaml') },
      [],
      /hall\.job\.yaml and attic\/hall\.job\.yaml are both called Hall \(title: /,
    ],
    [
      'one name for two colours',
      { ...TWO, 'attic.job.yaml': job('mill-lane.yaml', "palette: { slate: '#112233' }") },
      [],
      /slate is #112233 in Attic and #3b4a57 in Hall and Mat/,
    ],
    [
      'a job that is missing',
      TWO,
      ['hal.job.yaml'],
      /there is no file hal\.job\.yaml \(did you mean hall\.job\.yaml\?\)/,
    ],
  ])('refuses %s and says what to write', (_, files, given, says) => {
    const dir = houseWith(files);
    const { status, out, err } = evenfield(dir, ['house', 'mill-lane.yaml', ...given]);
    expect([status, out]).toEqual([1, '']);
    expect(err).toMatch(says);
    expect(existsSync(join(dir, 'out'))).toBe(false);
  });

  test('tells what is wrong in the house at its line, once, and what of it a job finds wrong only once too', () => {
    const dir = houseWith(TWO, `${HOUSE}surface: rug\n`.replace('1 quart', '1 quark'));
    expect(evenfield(dir, ['house', 'mill-lane.yaml']).err).toMatch(/mill-lane\.yaml is a job, not a house/);
    writeFileSync(join(dir, 'mill-lane.yaml'), HOUSE.replace('1 quart', '1 quark'));
    expect(evenfield(dir, ['house', 'mill-lane.yaml']).err).toMatch(
      /^mill-lane\.yaml:6:21: paint\.on hand\.slate: 1 quark/,
    );
    writeFileSync(join(dir, 'mill-lane.yaml'), HOUSE.replace('#3b4a57', '#3b4a5'));
    const { err } = evenfield(dir, ['house', 'mill-lane.yaml']);
    expect(err.match(/#3b4a5 is not a colour/g)).toHaveLength(1);
  });

  test('refuses a job or a folder in the place of the house, and a house that is missing', () => {
    const dir = houseWith(TWO);
    const err = (words: string[]) => evenfield(dir, ['house', ...words]).err;
    expect(err(['porch/mat.job.yaml'])).toMatch(
      /is a job, not a house \(evenfield house mill-lane\.yaml porch\/mat\.job\.yaml\)/,
    );
    expect(err(['porch'])).toMatch(/porch is a folder, not a house file/);
    expect(err(['mill-lain.yaml'])).toMatch(/there is no file mill-lain\.yaml \(did you mean mill-lane\.yaml\?\)/);
    expect(evenfield(dir, ['house']).status).toBe(2);
  });

  test('leaves out a file that cannot be read, and says so', () => {
    const dir = houseWith(TWO);
    writeFileSync(join(dir, 'old.job.yaml'), Buffer.from([0xff, 0xfe, 0x41, 0x00]));
    const { status, err } = evenfield(dir, ['house', 'mill-lane.yaml']);
    expect([status, err]).toEqual([0, 'old.job.yaml is saved as UTF-16; it is left out.\n']);
  });
});

test('evenfield paint of a job tells which tins it shares with the house, and no longer when the job has its own', () => {
  const dir = houseWith(TWO);
  const shared = /The slate at hand is told by Mill Lane for all its jobs/;
  expect(evenfield(dir, ['paint', 'hall.job.yaml']).out.replaceAll('\n', ' ')).toMatch(shared);
  appendFileSync(join(dir, 'hall.job.yaml'), 'paint: { on hand: { slate: 1 pint } }\n');
  const own = evenfield(dir, ['paint', 'hall.job.yaml']).out;
  expect(own).toContain('Your 1 pint of slate');
  expect(own).not.toContain('Mill Lane');
});

describe('the sample house', () => {
  test.each(SAMPLE_JOBS)(
    '%s is made, every claim of its written files holds, and its paint without files is that of the files',
    async (name) => {
      const path = join(SAMPLE, name);
      const text = readFileSync(path, 'utf8');
      const assets: Assets = async (given) => good(new Uint8Array(readFileSync(join(path, '..', given))));
      const [made, planned] = [await makeFiles(text, name, 1, assets), await planJob(text, name, 1, assets)];
      if (!made.ok || !planned.ok) throw new Error(`${name} is refused`);
      const { plan, job } = planned.value;
      expect(paintAsStated(plan, job)).toEqual(JSON.parse(String(made.value.files.get('layout.json'))).paint);
      const { claims } = await checkFiles(made.value.files);
      expect(claims.filter((claim) => !claim.holds)).toEqual([]);
      expect(claims.length).toBeGreaterThan(100);
    },
  );

  test('has all its jobs on one sheet, and made again the same bytes', () => {
    const dir = folder();
    const words = ['house', join(SAMPLE, 'gable-house.yaml')];
    const read = () =>
      ['house.svg', 'house.png', 'house-paint.csv'].map((name) =>
        readFileSync(join(dir, 'out/gable-house-house', name), 'base64'),
      );
    expect(evenfield(dir, words).status).toBe(0);
    const first = read();
    expect(evenfield(dir, words).out).toContain('the paint of 3 jobs together');
    expect(read()).toEqual(first);
    const svg = Buffer.from(first[0]!, 'base64').toString();
    expect(svg.match(/id="work-\d+"/g)).toHaveLength(SAMPLE_JOBS.length);
  });
});
