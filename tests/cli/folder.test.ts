import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type Files, writeFolder } from '../../src/write/folder.ts';

let top: string;
let dir: string;
beforeEach(() => {
  top = mkdtempSync(join(tmpdir(), 'evenfield-'));
  dir = join(top, 'out', 'hall');
});
afterEach(() => rmSync(top, { recursive: true, force: true }));

const set = (files: Record<string, string | Uint8Array>): Files => new Map(Object.entries(files));
const FIRST = set({ 'plan.svg': '<svg/>', 'layout.json': '{"a":1}', 'plan.png': new Uint8Array([137, 80, 78, 71]) });
const SECOND = set({ 'plan.svg': '<svg id="2"/>', 'layout.json': '{"a":2}', 'marks.csv': 'line,datum' });

/** Every file of a folder with its bytes, so that two states can be compared. */
const state = (path = dir) =>
  Object.fromEntries(
    readdirSync(path)
      .sort()
      .map((name) => [name, readFileSync(join(path, name)).toString('latin1')]),
  );
const names = (path = dir) => readdirSync(path).sort();
const codes = (result: Awaited<ReturnType<typeof writeFolder>>) =>
  result.ok ? [] : result.issues.map((one) => one.code);

test('writes every file whole and records the SHA-256 of each', async () => {
  const result = await writeFolder(dir, set({ 'abc.txt': 'abc', 'b.bin': new Uint8Array([0, 255]) }));
  expect(result).toEqual({ ok: true, value: { written: ['abc.txt', 'b.bin'], removed: [], kept: [] } });
  expect(names()).toEqual(['.written.json', 'abc.txt', 'b.bin']);
  expect([...readFileSync(join(dir, 'b.bin'))]).toEqual([0, 255]);
  // FIPS 180-4, the example for the message "abc".
  expect(JSON.parse(readFileSync(join(dir, '.written.json'), 'utf8')).files['abc.txt']).toBe(
    'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
  );
});

test('a second run changes what changed and takes away what is no longer made', async () => {
  await writeFolder(dir, FIRST);
  writeFileSync(join(dir, 'photo.jpg'), 'mine');
  const result = await writeFolder(dir, SECOND);
  expect(result).toMatchObject({ ok: true, value: { removed: ['plan.png'], kept: [] } });
  expect(names()).toEqual(['.written.json', 'layout.json', 'marks.csv', 'photo.jpg', 'plan.svg']);
  expect(state()).toMatchObject({ 'plan.svg': '<svg id="2"/>', 'photo.jpg': 'mine' });
});

test('the same run again leaves the same bytes', async () => {
  await writeFolder(dir, FIRST);
  const before = state();
  await writeFolder(dir, FIRST);
  expect(state()).toEqual(before);
});

test('an edited file is named and left alone, and so is everything else; replace writes over it', async () => {
  await writeFolder(dir, FIRST);
  writeFileSync(join(dir, 'plan.svg'), '<svg>my notes</svg>');
  const before = state();
  const refused = await writeFolder(dir, SECOND);
  expect(codes(refused)).toEqual(['write/edited']);
  expect(refused).toMatchObject({ issues: [{ path: ['plan.svg'], hint: expect.stringContaining('--replace') }] });
  expect(state()).toEqual(before);
  expect((await writeFolder(dir, SECOND, { replace: true })).ok).toBe(true);
  expect(state()['plan.svg']).toBe('<svg id="2"/>');
});

test('a file of somebody else is named and left alone', async () => {
  mkdirSync(dir, { recursive: true });
  writeFileSync(join(dir, 'layout.json'), 'not yours');
  writeFileSync(join(dir, 'plan.svg'), 'nor this');
  const before = state();
  expect(codes(await writeFolder(dir, FIRST))).toEqual(['write/stranger', 'write/stranger']);
  expect(state()).toEqual(before);
});

test('an edited file that is no longer made is kept and named', async () => {
  await writeFolder(dir, FIRST);
  writeFileSync(join(dir, 'plan.png'), 'touched up');
  expect(await writeFolder(dir, SECOND)).toMatchObject({ ok: true, value: { removed: [], kept: ['plan.png'] } });
  expect(state()['plan.png']).toBe('touched up');
});

test('a link or a folder in the way is refused even with replace, and nothing is written through it', async () => {
  mkdirSync(dir, { recursive: true });
  const elsewhere = join(top, 'precious.txt');
  writeFileSync(elsewhere, 'precious');
  symlinkSync(elsewhere, join(dir, 'plan.svg'));
  mkdirSync(join(dir, 'layout.json'));
  expect(codes(await writeFolder(dir, FIRST, { replace: true }))).toEqual(['write/in-the-way', 'write/in-the-way']);
  expect(readFileSync(elsewhere, 'utf8')).toBe('precious');
  expect(names()).toEqual(['layout.json', 'plan.svg']);
});

test.each(['.written.json', '.writing.json', '.lock'])('a link under the name %s is refused', async (name) => {
  mkdirSync(dir, { recursive: true });
  symlinkSync(join(top, 'nowhere'), join(dir, name));
  expect(codes(await writeFolder(dir, FIRST))).toEqual(['write/in-the-way']);
  expect(existsSync(join(top, 'nowhere'))).toBe(false);
});

test('an output folder that is itself a link is refused', async () => {
  mkdirSync(join(top, 'elsewhere'));
  mkdirSync(join(top, 'out'));
  symlinkSync(join(top, 'elsewhere'), dir);
  expect(codes(await writeFolder(dir, FIRST))).toEqual(['write/in-the-way']);
  expect(names(join(top, 'elsewhere'))).toEqual([]);
});

test.each([
  '../plan.svg',
  'a/b.svg',
  '..',
  '.',
  '.hidden',
  '',
  'Plan.svg',
  'c:plan.svg',
  'a\\b.svg',
  'a b.svg',
  'ü.svg',
])('the name %j is refused before anything is made', async (name) => {
  expect(codes(await writeFolder(dir, set({ 'plan.svg': 'fine', [name]: 'not' })))).toEqual(['write/name']);
  expect(names(top)).toEqual([]);
});

test('an output folder under a file is refused in one line', async () => {
  writeFileSync(join(top, 'out'), 'a file');
  const result = await writeFolder(dir, FIRST);
  expect(codes(result)).toEqual(['write/failed']);
  expect(result).toMatchObject({
    issues: [{ says: expect.stringMatching(/^cannot write to .*: .*a file, not a folder$/) }],
  });
});

test('two runs at once come one after the other', async () => {
  const results = await Promise.all([writeFolder(dir, FIRST), writeFolder(dir, SECOND), writeFolder(dir, FIRST)]);
  expect(results.map((one) => one.ok)).toEqual([true, true, true]);
  const { '.written.json': _, ...left } = state();
  const wholes = [FIRST, SECOND].map((files) =>
    Object.fromEntries([...files].map(([name, bytes]) => [name, Buffer.from(bytes as string).toString('latin1')])),
  );
  expect(wholes).toContainEqual(left);
});

test('a lock of a living process is respected and named', async () => {
  await writeFolder(dir, FIRST);
  writeFileSync(join(dir, '.lock'), `${process.ppid} ${hostname()}\n`);
  const before = state();
  const result = await writeFolder(dir, SECOND, { patience: 120 });
  expect(codes(result)).toEqual(['write/busy']);
  expect(result).toMatchObject({ issues: [{ says: expect.stringContaining(`process ${process.ppid}`) }] });
  expect(state()).toEqual(before);
});

test('a lock of a process that is gone is cleared', async () => {
  const { pid } = spawnSync(process.execPath, ['-e', '0']);
  mkdirSync(dir, { recursive: true });
  writeFileSync(join(dir, '.lock'), `${pid} ${hostname()}\n`);
  expect((await writeFolder(dir, FIRST, { patience: 120 })).ok).toBe(true);
  expect(names()).toEqual(['.written.json', ...[...FIRST.keys()].sort()]);
});

test.each([
  ['without text', '', 2_000, 60_000],
  ['from another machine', '1 some-other-machine\n', 120_000, 3_600_000],
])('a lock %s counts while it is new, and not when it is old', async (_, text, fresh, old) => {
  mkdirSync(dir, { recursive: true });
  const lock = join(dir, '.lock');
  writeFileSync(lock, text);
  const ago = (ms: number) => utimesSync(lock, (Date.now() - ms) / 1000, (Date.now() - ms) / 1000);
  ago(fresh);
  expect(codes(await writeFolder(dir, FIRST, { patience: 120 }))).toEqual(['write/busy']);
  ago(old);
  expect((await writeFolder(dir, FIRST, { patience: 120 })).ok).toBe(true);
});

test('a run that was cut short between two files does not make the next one refuse', async () => {
  await writeFolder(dir, FIRST);
  const recorded = readFileSync(join(dir, '.written.json'));
  await writeFolder(join(top, 'twin'), SECOND);
  // As it stands when the process ends in the middle: the intent is on disk, one file is new, one is old, one waits.
  writeFileSync(join(dir, '.written.json'), recorded);
  writeFileSync(join(dir, '.writing.json'), readFileSync(join(top, 'twin', '.written.json')));
  writeFileSync(join(dir, 'plan.svg'), SECOND.get('plan.svg')!);
  writeFileSync(join(dir, '.stage-marks.csv'), 'line,da');
  writeFileSync(join(dir, '.keep-plan.svg'), FIRST.get('plan.svg')!);
  const third = set({ 'plan.svg': '<svg id="3"/>', 'layout.json': '{"a":3}' });
  expect(await writeFolder(dir, third)).toMatchObject({ ok: true, value: { removed: ['plan.png'] } });
  expect(names()).toEqual(['.written.json', 'layout.json', 'plan.svg']);
});

test('a record that cannot be read makes every file a stranger', async () => {
  await writeFolder(dir, FIRST);
  writeFileSync(join(dir, '.written.json'), '{"files": [');
  expect(new Set(codes(await writeFolder(dir, SECOND)))).toEqual(new Set(['write/stranger']));
});
