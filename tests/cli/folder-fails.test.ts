import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeEach, expect, test, vi } from 'vitest';

/** What the disk refuses: the n-th call of one kind, counted from 1, with an error of the system. */
const disk = vi.hoisted(() => ({ refuse: '', at: 0, code: '', calls: 0 }));
const call = vi.hoisted(() => (kind: string) => {
  if (disk.refuse !== kind || ++disk.calls !== disk.at) return;
  throw Object.assign(new Error(`${disk.code}: made up for the test`), { code: disk.code });
});

vi.mock('node:fs/promises', async (original) => {
  const real = await original<typeof import('node:fs/promises')>();
  const open: typeof real.open = async (path, flags, mode) => {
    const file = await real.open(path, flags, mode);
    if (!String(path).includes('.stage-')) return file;
    const { writeFile, sync } = file;
    file.writeFile = async (...given) => {
      if (disk.refuse === 'write' && disk.calls + 1 === disk.at) await writeFile.call(file, 'half a fi');
      call('write');
      return writeFile.apply(file, given);
    };
    file.sync = async () => {
      call('sync');
      return sync.call(file);
    };
    return file;
  };
  return { ...real, open };
});
vi.mock('node:fs', async (original) => {
  const real = await original<typeof import('node:fs')>();
  const renameSync: typeof real.renameSync = (from, to) => {
    call('rename');
    real.renameSync(from, to);
  };
  return { ...real, renameSync };
});

// Test files share what they have loaded: here everything is loaded anew, on the disk made up above, and nothing of it is left to the files that follow.
vi.resetModules();
const { writeFolder } = await import('../../src/write/folder.ts');
afterAll(() => vi.resetModules());

let top: string;
let dir: string;
beforeEach(() => {
  top = mkdtempSync(join(tmpdir(), 'evenfield-'));
  dir = join(top, 'out', 'hall');
});
afterEach(() => {
  Object.assign(disk, { refuse: '', at: 0, code: '', calls: 0 });
  rmSync(top, { recursive: true, force: true });
});

const FIRST = new Map([
  ['a.svg', 'first a'],
  ['b.svg', 'first b'],
  ['gone.svg', 'first gone'],
]);
const SECOND = new Map([
  ['a.svg', 'second a'],
  ['b.svg', 'second b'],
  ['new.svg', 'second new'],
]);
const state = () => readdirSync(dir).map((name) => [name, readFileSync(join(dir, name), 'utf8')]);

const CASES = [
  ...[1, 2, 3, 4, 5].map((at) => ['write', at, 'ENOSPC', 'the disk is full'] as const),
  ...[1, 3].map((at) => ['sync', at, 'EIO', 'the disk reports a fault'] as const),
  ...[1, 2, 3, 4, 5, 6].map((at) => ['rename', at, 'EBUSY', 'another program has it open'] as const),
];

test.each(CASES)('when %s %i fails with %s, earlier files stay as they were', async (refuse, at, code, says) => {
  await writeFolder(dir, FIRST);
  const before = state();
  Object.assign(disk, { refuse, at, code, calls: 0 });
  const result = await writeFolder(dir, SECOND);
  expect(disk.calls).toBeGreaterThanOrEqual(at);
  expect(result).toMatchObject({ ok: false, issues: [{ code: 'write/failed' }] });
  expect(result.ok ? '' : result.issues[0]!.says).toBe(`cannot write to ${dir}: ${says}`);
  disk.refuse = '';
  expect(state()).toEqual(before);
  expect(await writeFolder(dir, SECOND)).toMatchObject({ ok: true, value: { removed: ['gone.svg'] } });
});

test.each(CASES)('when %s %i fails on a first run, no folder is left behind', async (refuse, at, code) => {
  Object.assign(disk, { refuse, at, code, calls: 0 });
  const result = await writeFolder(dir, SECOND);
  if (disk.calls < at) expect(result.ok).toBe(true);
  else expect([result.ok, readdirSync(top)]).toEqual([false, []]);
});
