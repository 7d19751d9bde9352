import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Layout } from '../../src/fit/layout.ts';
import { BUILT, evenfield, folder, HAS_TERMINAL, onTerminal, smallJob } from './support.ts';

const FIELDS = {
  rank: expect.any(Number),
  overall: { across: expect.any(Number), along: expect.any(Number) },
  border: expect.any(Number),
  reserve: { across: expect.any(Number), along: expect.any(Number) },
  endGap: expect.any(Number),
  field: { across: expect.any(Number), along: expect.any(Number) },
  repeats: { across: expect.any(Number), along: expect.any(Number) },
  pitch: { across: expect.any(Number), along: expect.any(Number) },
  stretch: expect.any(Number),
  landing: Object.fromEntries(
    ['left', 'right', 'near', 'far', 'centreAcross', 'centreAlong'].map((side) => [
      side,
      expect.stringMatching(/^(whole|half|cut)$/),
    ]),
  ),
  borderRepeats: { across: expect.any(Number), along: expect.any(Number) },
  cost: expect.any(Number),
  says: expect.any(String),
};

test('--json has exactly the promised fields, and its identities hold to 1e-6 mm', () => {
  const dir = folder();
  const run = ['--run', `19' 7 3/8"`, '--near', '32 1/2"', '--far', '30"', '--border', 'sawtooth'];
  evenfield(dir, ['new', 'hall', '--surface', 'runner', ...run]);
  const { status, out, err } = evenfield(dir, ['fit', 'hall.job.yaml', '--json']);
  expect([status, err]).toEqual([0, '']);
  const told = JSON.parse(out) as { searched: number; proof: string; layouts: Layout[] };
  expect(Object.keys(told)).toEqual(['searched', 'proof', 'layouts']);
  expect(told.proof).toBe('exhaustive');
  expect(told.searched).toBeGreaterThan(0);
  expect(told.layouts.length).toBeGreaterThan(0);
  for (const layout of told.layouts) {
    expect(layout).toStrictEqual(FIELDS);
    const { overall, border, reserve, endGap, field, repeats, pitch } = layout;
    for (const way of ['across', 'along'] as const) {
      expect(Math.abs(field[way] - repeats[way] * pitch[way])).toBeLessThan(1e-6);
      const gaps = way === 'along' ? 2 * endGap : 0;
      expect(Math.abs(overall[way] - field[way] - 2 * (border + reserve[way]) - gaps)).toBeLessThan(1e-6);
      expect(Number.isInteger(repeats[way] * 2)).toBe(true);
    }
    // 19' 7 3/8" = 235 3/8 in × 25.4 (16 CFR 500.19).
    expect(overall.along).toBeCloseTo(5978.525, 6);
  }
  expect(told.layouts.map((one) => one.rank)).toEqual(told.layouts.map((_, at) => at + 1));
  expect(evenfield(dir, ['fit', 'hall.job.yaml', '--json'])).toEqual({ status, out, err });
});

test('the table shows what --json says: a row and its line each, what was covered, and the proof', () => {
  const dir = folder();
  smallJob(dir);
  const told = JSON.parse(evenfield(dir, ['fit', 'mat.job.yaml', '--json', '--best', '3']).out);
  const { status, out, err } = evenfield(dir, ['fit', 'mat.job.yaml', '--best', '3']);
  expect([status, err]).toEqual([0, '']);
  expect(told.layouts).toHaveLength(3);
  expect(out.match(/^ *\d {2}/gm)).toHaveLength(3);
  const flat = out.replace(/\s+/g, ' ');
  for (const { says } of told.layouts) expect(flat).toContain(says);
  expect(flat).toContain(`${told.searched.toLocaleString('en')} combinations covered`);
  expect(flat).toContain('(exhaustive)');
  expect(out).not.toContain('\u001B');
});

test.skipIf(!HAS_TERMINAL)('colour on a terminal, and none with NO_COLOR', async () => {
  const dir = folder();
  smallJob(dir);
  // ECMA-48: control sequences begin with ESC [ and those that set colour or weight end with m.
  const colours = new RegExp(`${String.fromCharCode(27)}\\[\\d+m`);
  expect((await onTerminal(dir, ['fit', 'mat.job.yaml'])).out).toMatch(colours);
  expect((await onTerminal(dir, ['fit', 'mat.job.yaml'], { NO_COLOR: '1' })).out).not.toMatch(colours);
});

test('a reader that has seen enough is no trouble', () => {
  const dir = folder();
  smallJob(dir);
  const script = `"$0" "$1" fit mat.job.yaml | head -c 1; echo " \${PIPESTATUS[0]}"`;
  const ran = spawnSync('bash', ['-c', script, process.execPath, BUILT], { cwd: dir, encoding: 'utf8' });
  expect([ran.stdout, ran.stderr]).toEqual(['M 0\n', '']);
});

test.skipIf(!existsSync('/dev/full'))('a full disk behind standard output is told in one line', () => {
  const dir = folder();
  smallJob(dir);
  const ran = spawnSync('bash', ['-c', '"$0" "$1" fit mat.job.yaml > /dev/full', process.execPath, BUILT], {
    cwd: dir,
    encoding: 'utf8',
  });
  expect([ran.status, ran.stderr]).toEqual([1, 'evenfield: cannot print the result: the disk is full\n']);
});

test('schema prints a JSON Schema that knows the keys a new job has', () => {
  const { status, out, err } = evenfield(folder(), ['schema']);
  expect([status, err]).toEqual([0, '']);
  const schema = JSON.parse(out);
  // JSON Schema core, 2020-12, section 8.1.1.
  expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  expect(Object.keys(schema.properties)).toEqual(
    expect.arrayContaining(['evenfield', 'surface', 'site', 'field', 'border']),
  );
});
