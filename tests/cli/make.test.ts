import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { BUILT, evenfield, folder, smallJob } from './support.ts';

const state = (dir: string) =>
  Object.fromEntries(
    readdirSync(dir)
      .sort()
      .map((name) => [name, readFileSync(join(dir, name)).toString('latin1')]),
  );

let once: string | undefined;

/** A folder with a small job that has been made. Made once, then copied. */
function made(): { dir: string; out: string } {
  const dir = folder();
  if (once === undefined) {
    once = mkdtempSync(join(tmpdir(), 'evenfield-'));
    smallJob(once);
    expect(evenfield(once, ['make', 'mat.job.yaml'])).toMatchObject({ status: 0, err: '' });
  }
  cpSync(once, dir, { recursive: true });
  return { dir, out: join(dir, 'out', 'mat') };
}
afterAll(() => once !== undefined && rmSync(once, { recursive: true, force: true }));

test('make writes the files it names, says what it found, and check proves them', () => {
  const dir = folder();
  smallJob(dir);
  const made = evenfield(dir, ['make', 'mat.job.yaml']);
  expect([made.status, made.err]).toEqual([0, '']);
  const names = readdirSync(join(dir, 'out', 'mat')).filter((name) => !name.startsWith('.'));
  for (const name of [
    'layout.json',
    'plan.svg',
    'plan.png',
    'template.svg',
    'marks.csv',
    'marks.svg',
    'job-sheet.html',
  ])
    expect(names).toContain(name);
  for (const name of names) expect(made.out).toContain(`  ${name}`);
  expect(made.out.split('\n').length).toBeLessThan(40);
  expect(made.out).toContain(`evenfield check ${join('out', 'mat')}`);

  const again = evenfield(dir, ['make', 'mat.job.yaml', '--json']);
  expect([again.status, again.err]).toEqual([0, '']);
  expect(JSON.parse(again.out)).toStrictEqual({ out: join('out', 'mat'), files: names.sort() });

  const checked = evenfield(dir, ['check', 'out/mat']);
  expect([checked.status, checked.err]).toEqual([0, '']);
  expect(checked.out).toMatch(/\nAll \d+ claims hold\.\n$/);
});

test('check refutes a file that was tampered with: exit 1, and JSON as promised', () => {
  const { dir, out } = made();
  const plan = join(out, 'plan.svg');
  const before = readFileSync(plan, 'utf8');
  writeFileSync(plan, before.replace(/viewBox="(\S+ \S+) (\d)/, 'viewBox="$1 9$2'));
  expect(readFileSync(plan, 'utf8')).not.toBe(before);
  const told = evenfield(dir, ['check', 'out/mat', '--json']);
  expect([told.status, told.err]).toEqual([1, '']);
  const result = JSON.parse(told.out);
  expect(Object.keys(result)).toEqual(['holds', 'claims']);
  expect(result.holds).toBe(false);
  for (const claim of result.claims)
    expect(Object.keys(claim)).toEqual(['claim', 'holds', 'measured', 'allowed', 'file']);
  expect(
    result.claims.filter((one: { holds: boolean }) => !one.holds).map((one: { file: string }) => one.file),
  ).toContain('plan.svg');
  const shown = evenfield(dir, ['check', 'out/mat']);
  expect(shown.status).toBe(1);
  expect(shown.out).toMatch(/^REFUTED plan\.svg: .*\n {2}measured .*; allowed /m);
  expect(shown.out).toMatch(/\d+ of \d+ claims refuted/);
});

test('check of what is no written folder is refused in one line, with the folder that is', () => {
  const { dir } = made();
  for (const [path, says] of [
    ['out', `there is no layout.json in out (did you mean ${join('out', 'mat')}?)`],
    ['nowhere', 'there is no folder nowhere (evenfield make writes one)'],
    ['mat.job.yaml', 'mat.job.yaml is a file (give the folder that evenfield make wrote)'],
  ])
    expect(evenfield(dir, ['check', path!])).toEqual({ status: 1, out: '', err: `evenfield: ${says}\n` });
});

test('--out and --choose: another place, another layout', () => {
  const dir = folder();
  smallJob(dir);
  const told = evenfield(dir, ['make', 'mat.job.yaml', '--out', 'deep/down', '--choose', '2', '--json']);
  expect(JSON.parse(told.out).out).toBe(join('deep', 'down', 'mat'));
  const { layout } = JSON.parse(readFileSync(join(dir, 'deep', 'down', 'mat', 'layout.json'), 'utf8'));
  expect(layout.rank).toBe(2);
});

test('an edited file is left alone, named, and with it all the others; --replace writes over it', () => {
  const { dir, out } = made();
  writeFileSync(join(out, 'marks.csv'), 'my own notes');
  smallJobAgain(dir, 'lozenge');
  const before = state(out);
  const refused = evenfield(dir, ['make', 'mat.job.yaml']);
  expect([refused.status, refused.out]).toEqual([1, '']);
  expect(refused.err).toMatch(/^evenfield: out\/mat\/marks\.csv was edited since it was written, .*--replace\)\n$/);
  expect(state(out)).toEqual(before);
  expect(evenfield(dir, ['make', 'mat.job.yaml', '--replace']).status).toBe(0);
  expect(state(out)['marks.csv']).not.toBe('my own notes');
});

function smallJobAgain(dir: string, motif: string): void {
  rmSync(join(dir, 'mat.job.yaml'));
  smallJob(dir, motif);
}

test('a run that fails leaves earlier output as it was', () => {
  const { dir, out } = made();
  const before = state(out);
  const job = readFileSync(join(dir, 'mat.job.yaml'), 'utf8');
  for (const [bad, words] of [
    [job.replace('motif: diamond', 'motif: damond'), []],
    [job.replace('motif: diamond', 'motif: diamond\n  pitch: { across: 300 in }'), []],
    [job, ['--choose', '99']],
    ['', []],
  ] as const) {
    writeFileSync(join(dir, 'mat.job.yaml'), bad);
    const { status, out: said, err } = evenfield(dir, ['make', 'mat.job.yaml', ...words]);
    expect([status, said]).toEqual([1, '']);
    expect(err).not.toBe('');
    expect(state(out)).toEqual(before);
  }
});

test('a link in place of the folder, or of a file in it, is not followed', () => {
  const dir = folder();
  smallJob(dir);
  mkdirSync(join(dir, 'elsewhere'));
  mkdirSync(join(dir, 'out'));
  symlinkSync(join(dir, 'elsewhere'), join(dir, 'out', 'mat'));
  const refused = evenfield(dir, ['make', 'mat.job.yaml', '--replace']);
  expect([refused.status, readdirSync(join(dir, 'elsewhere'))]).toEqual([1, []]);
  expect(refused.err).toMatch(/^evenfield: out\/mat is a link to somewhere else, [^\n]*\n$/);
});

test.each([
  ['a file in place of the folder', 'mat.job.yaml', 'part of the path is a file, not a folder'],
  ['a place that takes no folders', '/proc/nothing', ''],
])('%s is told in one line', (_, out, says) => {
  const dir = folder();
  smallJob(dir);
  const { status, out: said, err } = evenfield(dir, ['make', 'mat.job.yaml', '--out', out]);
  expect([status, said]).toEqual([1, '']);
  expect(err).toMatch(/^evenfield: cannot write to [^\n]*\n$/);
  expect(err).toContain(says);
});

test.skipIf(process.platform === 'win32')(
  'no permission to write is told in one line, earlier output untouched',
  () => {
    const dir = folder();
    smallJob(dir);
    evenfield(dir, ['make', 'mat.job.yaml']);
    smallJobAgain(dir, 'lozenge');
    const out = join(dir, 'out', 'mat');
    const before = state(out);
    chmodSync(dir, 0o755);
    chmodSync(out, 0o555);
    // The owner of all things may write everywhere, so such a one steps down first.
    const user = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};
    const ran = spawnSync(process.execPath, [BUILT, 'make', 'mat.job.yaml'], { cwd: dir, encoding: 'utf8', ...user });
    chmodSync(out, 0o755);
    expect([ran.status, ran.stdout, ran.stderr]).toEqual([
      1,
      '',
      `evenfield: cannot write to ${join('out', 'mat')}: you have no permission there (nothing there was changed)\n`,
    ]);
    expect(state(out)).toEqual(before);
  },
);
