import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { evenfield, folder, HAS_TERMINAL, onTerminal } from './support.ts';

const RUNNER = ['--surface', 'runner', '--run', `12' 7 3/8"`, '--near', '32 1/2"', '--far', '30 in'];
const read = (dir: string, name = 'hall.job.yaml') => readFileSync(join(dir, name), 'utf8');

test('with options it asks nothing and writes a job that fits', () => {
  const dir = folder();
  const made = evenfield(dir, ['new', 'hall.job.yaml', ...RUNNER, '--motif', 'diamond', '--across', '5']);
  expect([made.status, made.out]).toEqual([0, 'hall.job.yaml\n']);
  expect(made.err).not.toContain('?');
  // Read by the `yaml` library: what was typed stands in the file as it was typed.
  expect(parse(read(dir))).toMatchObject({
    evenfield: 1,
    surface: 'runner',
    site: { run: `12' 7 3/8"`, openings: { near: '32 1/2"', far: '30 in' } },
    field: { motif: 'diamond', repeats: { across: 5 } },
  });
  expect(read(dir)).toMatch(/^# /m);
  const fit = evenfield(dir, ['fit', 'hall.job.yaml', '--json', '--best', '1']);
  expect(fit.status).toBe(0);
  expect(JSON.parse(fit.out).layouts[0].repeats.across).toBe(5);
});

test('a rug and a floor-cloth take their own measurements, metric as well', () => {
  const dir = folder();
  const rug = [
    '--surface',
    'rug',
    '--wide',
    '150.4 cm',
    '--long',
    '2.13 m',
    '--room-across',
    '3.61m',
    '--room-along',
    '427',
  ];
  expect(evenfield(dir, ['new', 'rug', ...rug, '--units', 'cm', '--border', 'none']).status).toBe(0);
  expect(parse(read(dir, 'rug.job.yaml'))).toMatchObject({
    units: 'cm',
    site: { room: { across: '3.61m', along: 427 } },
    overall: { across: '150.4 cm', along: '2.13 m' },
    border: 'none',
  });
  const cloth = ['new', 'mat', '--surface', 'floor-cloth', '--wide', '24"', '--long', '36"', '--motif', 'checkerboard'];
  expect(evenfield(dir, cloth).status).toBe(0);
  expect(evenfield(dir, ['fit', 'mat.job.yaml']).status).toBe(0);
});

test('a whole floor, a room border and stairs take what each needs', () => {
  const dir = folder();
  const walls = [
    '--near-wall',
    '84 1/4',
    '--right-wall',
    '107 7/8',
    '--far-wall',
    '84 11/16',
    '--left-wall',
    '108 1/2',
  ];
  const floor = ['new', 'floor', '--surface', 'floor', ...walls, '--diagonal', '137', '--other-diagonal', '137 9/16'];
  expect(evenfield(dir, floor)).toMatchObject({ status: 0, out: 'floor.job.yaml\n' });
  expect(parse(read(dir, 'floor.job.yaml')).site.room).toEqual({
    near: '84 1/4',
    right: '107 7/8',
    far: '84 11/16',
    left: '108 1/2',
    diagonals: { 'near-left to far-right': 137, 'near-right to far-left': '137 9/16' },
  });
  const band = ['new', 'band', '--surface', 'room-border', '--room-across', '11 ft', '--room-along', '13 ft'];
  expect(evenfield(dir, band).err).toContain('Written.');
  expect(parse(read(dir, 'band.job.yaml')).site.walls).toHaveLength(4);
  // Put one after the other on a pipe, with nothing asked that stairs do not need.
  const answers = ['stairs', 'in', '8.5', '8', '36', '7 1/2', '', '', ''];
  const stairs = evenfield(dir, ['new', 'stairs'], { input: `${answers.join('\n')}\n` });
  expect([stairs.status, stairs.out]).toEqual([0, 'stairs.job.yaml\n']);
  expect(stairs.err).toContain('8.5 is no number of steps');
  expect(parse(read(dir, 'stairs.job.yaml'))).toMatchObject({
    site: { steps: 8, riser: { across: 36, high: '7 1/2' } },
  });
});

test('piped answers are said back in both systems, and asked again when they do not read', () => {
  const dir = folder();
  const answers = ['runer', 'runner', 'in', '12 frogs', `12' 7 3/8"`, '32.5', '', 'damond', 'diamond', '5', 'none'];
  const { status, out, err } = evenfield(dir, ['new', 'hall'], { input: `${answers.join('\n')}\n` });
  expect([status, out]).toEqual([0, 'hall.job.yaml\n']);
  // 12' 7 3/8" = 151 3/8 in × 25.4 = 3844.925 mm and 32.5 in = 825.5 mm (1 in = 25.4 mm exactly, 16 CFR 500.19).
  expect(err).toContain(`12' 7 3/8", which is 3845 mm`);
  expect(err).toMatch(/32 1\/2", which is 82[56] mm/);
  expect(err).toMatch(/frogs.*\n {2}try: /);
  expect(err.match(/How long is the run/g)).toHaveLength(2);
  expect(err.match(/What will you paint/g)).toHaveLength(2);
  expect(parse(read(dir))).toMatchObject({ site: { openings: { near: 32.5, far: 32.5 } }, border: 'none' });
});

test('answers that end too early write nothing', () => {
  const dir = folder();
  const { status, out, err } = evenfield(dir, ['new', 'hall'], { input: 'runner\nin\n12 ft\n' });
  expect([status, out]).toEqual([1, '']);
  expect(err).toContain('evenfield: the answers ended too early; nothing was written\n');
  expect(readdirSync(dir)).toEqual([]);
});

test.skipIf(!HAS_TERMINAL)(
  'typed on a terminal: answers are taken one at a time, and Ctrl-C writes nothing',
  async () => {
    const dir = folder();
    const done = await onTerminal(dir, ['new', 'mat'], {}, [
      ['What will you paint', 'floor-cloth\r'],
      ['without a unit mean', 'cm\r'],
      ['How wide', '60\r'],
      ['How long', '90\r'],
      ['Which motif', '\r'],
      ['How many', '\r'],
      ['Which motif', 'none\r'],
    ]);
    expect(done.out).toContain('60 cm, which is 23 5/8"');
    expect([done.status, readdirSync(dir)]).toEqual([0, ['mat.job.yaml']]);
    const stopped = await onTerminal(dir, ['new', 'hall'], {}, [
      ['What will you paint', 'runner\r'],
      ['without a unit mean', '\u0003'],
    ]);
    expect(stopped.out).toContain('stopped; nothing was written');
    // 128 and the number of the signal, as shells count it (POSIX.1-2017, 2.8.2).
    expect([stopped.status, readdirSync(dir)]).toEqual([130, ['mat.job.yaml']]);
  },
);

test('a file that is there is never written over unasked, and no question is put', () => {
  const dir = folder();
  writeFileSync(join(dir, 'hall.job.yaml'), 'mine');
  const refused = evenfield(dir, ['new', 'hall.job.yaml'], { input: 'runner\n' });
  expect(refused).toMatchObject({ status: 1, out: '' });
  expect(refused.err).toMatch(/^evenfield: there is a file hall\.job\.yaml already \(.*--replace\)\n$/);
  expect(read(dir)).toBe('mine');
  expect(evenfield(dir, ['new', 'hall.job.yaml', ...RUNNER, '--replace']).status).toBe(0);
  expect(read(dir)).toContain('evenfield: 1');
  expect(readdirSync(dir)).toEqual(['hall.job.yaml']);
});

test.each([
  ['a length that does not read', ['--run', '12 frogs', '--near', '30"'], '--run: 12 frogs'],
  [
    'a wall without the first',
    ['--surface', 'floor', '--left-wall', '9 ft'],
    '--near-wall is missing, which goes with --left-wall',
  ],
  ['a floor without a room', ['--surface', 'floor', '--motif', 'diamond'], '--room-across or --near-wall is missing'],
  ['a length of nothing', ['--run', '0', '--near', '30"'], '--run: 0 is nothing'],
  ['a missing length', ['--near', '30"'], '--run is missing'],
  ['no width at all', ['--run', '12 ft'], '--wide or --near is missing'],
  ['an unknown motif', [...RUNNER, '--motif', 'damond'], 'try: diamond'],
  ['an unknown surface', ['--surface', 'rog', '--wide', '1 m', '--long', '2 m'], 'runner, rug, floor-cloth'],
  ['a unit that is none', [...RUNNER, '--units', 'cubits'], '--units: cubits'],
  ['a count that is none', [...RUNNER, '--across', '2.3'], '--across: 2.3'],
  [
    'an option of another surface',
    ['--surface', 'rug', '--run', '12 ft', '--wide', '1 m', '--long', '2 m'],
    '--run does not belong to a rug',
  ],
])('%s is wrong usage, and nothing is written', (_, words, says) => {
  const dir = folder();
  const { status, out, err } = evenfield(dir, ['new', 'hall', ...words]);
  expect([status, out]).toEqual([2, '']);
  expect(err).toContain(says);
  expect(readdirSync(dir)).toEqual([]);
});

test('a folder that is not there, or a folder of that name, is told in one line', () => {
  const dir = folder();
  mkdirSync(join(dir, 'here.yaml'));
  expect(evenfield(dir, ['new', 'nowhere/hall', ...RUNNER]).err).toBe('evenfield: there is no folder nowhere\n');
  const inTheWay = evenfield(dir, ['new', 'here.yaml', ...RUNNER, '--replace']);
  expect([inTheWay.status, inTheWay.err]).toEqual([
    1,
    'evenfield: here.yaml is a folder or a link (choose another name)\n',
  ]);
});
