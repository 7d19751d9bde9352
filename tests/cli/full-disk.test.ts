import { spawnSync } from 'node:child_process';
import { chmodSync, cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { BUILT, evenfield, type Ran, smallJob } from './support.ts';

// What a system says when it refuses is the system's own doing here: a small disk, a limit to the size of files, a folder to be read only, another person.

const LINUX = process.platform === 'linux';
const ROOT = process.getuid?.() === 0;

const tries = (command: string, ...words: string[]): boolean => spawnSync(command, words).status === 0;

/** Everything that lies in a folder, hidden or not, by its bytes. */
const state = (path: string): [string, string][] =>
  readdirSync(path)
    .sort()
    .map((name) => [name, readFileSync(join(path, name)).toString('latin1')]);

let dir: string;
/** A folder as it was made of another job, to be written over. */
let first: string;
const mounts: string[] = [];
/** A disk of its own of so many kilobytes; undefined where this machine lets nobody have one. */
function smallDisk(name: string, kilobytes: number): string | undefined {
  const path = join(dir, name);
  mkdirSync(path);
  if (!(LINUX && ROOT && tries('mount', '-t', 'tmpfs', '-o', `size=${kilobytes}k`, 'tmpfs', path))) return undefined;
  mounts.push(path);
  return path;
}

beforeAll(() => {
  dir = mkdtempSync(join(tmpdir(), 'evenfield-'));
  chmodSync(dir, 0o755);
  const job = smallJob(dir, 'lozenge', 'before.job.yaml');
  expect(evenfield(dir, ['make', job, '--out', 'first'])).toMatchObject({ status: 0, err: '' });
  first = join(dir, 'first', 'mat');
  smallJob(dir, 'diamond', 'mat.job.yaml');
});
afterAll(() => {
  for (const path of mounts) tries('umount', path);
  rmSync(dir, { recursive: true, force: true });
});

/** Makes the job in a shell that lays hindrances in its way first, into a folder that holds the other one; that must be left as it was. */
function hindered(out: string, shell = '', as: string[] = []): Ran {
  const folder = resolve(dir, out, 'mat');
  const before = state(folder);
  const [command, ...words] = [...as, 'sh', '-c', `${shell} exec "$@"`, 'sh', process.execPath, BUILT];
  const { status, stdout, stderr } = spawnSync(command!, [...words, 'make', 'mat.job.yaml', '--out', out], {
    cwd: dir,
    encoding: 'utf8',
  });
  expect(state(folder)).toEqual(before);
  return { status, out: stdout, err: stderr };
}

const refusal = (folder: string, why: string): Ran => ({
  status: 1,
  out: '',
  err: `evenfield: cannot write to ${folder}: ${why} (nothing there was changed)\n`,
});

test.skipIf(process.platform === 'win32')('a limit to the size of files: one line, and nothing is lost', () => {
  cpSync(first, join(dir, 'limited', 'mat'), { recursive: true });
  const largest = Math.max(...state(first).map(([, bytes]) => bytes.length));
  // POSIX, ulimit: in blocks of 512 bytes; some shells take 1024.
  expect(hindered('limited', `ulimit -f ${Math.floor(largest / 2048)};`)).toEqual(
    refusal(join('limited', 'mat'), 'the disk takes no file that large'),
  );
});

test('a disk that is full: one line, nothing is lost, and there is room again', (context) => {
  const size = state(first).reduce((sum, [, bytes]) => sum + bytes.length, 0) / 1000;
  const disk = smallDisk('small', Math.round(size * 1.5));
  if (disk === undefined) return context.skip('only root on Linux can have a disk of its own for this');
  cpSync(first, join(disk, 'mat'), { recursive: true });
  expect(hindered(disk)).toEqual(refusal(join(disk, 'mat'), 'the disk is full'));
  writeFileSync(join(disk, 'room'), new Uint8Array(Math.round(size * 300)));
});

test('a disk to be read only: one line', (context) => {
  const disk = smallDisk('fixed', 20_000);
  if (disk === undefined) return context.skip('only root on Linux can have a disk of its own for this');
  cpSync(first, join(disk, 'mat'), { recursive: true });
  expect(tries('mount', '-o', 'remount,ro', disk)).toBe(true);
  expect(hindered(disk)).toEqual(refusal(join(disk, 'mat'), 'it can only be read, not written to'));
});

test.skipIf(process.platform === 'win32')('a folder of somebody else: one line', (context) => {
  const other = ROOT ? ['setpriv', '--reuid=65534', '--regid=65534', '--clear-groups'] : [];
  if (ROOT && !tries(other[0]!, ...other.slice(1), process.execPath, BUILT, '--version'))
    return context.skip('root may write everywhere, and cannot do this as somebody else here');
  cpSync(first, join(dir, 'theirs', 'mat'), { recursive: true });
  chmodSync(join(dir, 'theirs', 'mat'), 0o555);
  expect(hindered('theirs', '', other)).toEqual(refusal(join('theirs', 'mat'), 'you have no permission there'));
  chmodSync(join(dir, 'theirs', 'mat'), 0o755);
});

// Linux, null(4): /dev/full says that the disk is full to whoever writes to it.
test.skipIf(!LINUX)('an answer that finds no room is told in one line', () => {
  const { status, stderr } = spawnSync(
    'sh',
    ['-c', '"$@" > /dev/full', 'sh', process.execPath, BUILT, 'fit', 'mat.job.yaml', '--json'],
    { cwd: dir, encoding: 'utf8' },
  );
  expect([status, stderr]).toEqual([1, 'evenfield: cannot print the result: the disk is full\n']);
});

test.each<[string, string, RegExp]>([
  ['a file', 'mat.job.yaml', /^evenfield: cannot write to mat\.job\.yaml: part of the path is a file, not a folder/],
  // POSIX, limits.h: NAME_MAX is 255 on the file systems in use, PATH_MAX 4096.
  ['a name of 300 letters', 'x'.repeat(300), /^evenfield: cannot write to x{60}…x{59}: the name is too long/],
  [
    'a path of 4500 letters',
    `${'d'.repeat(99)}/`.repeat(45),
    /^evenfield: cannot write to .{1,130}: the name is too long/,
  ],
  [
    'a name of two lines',
    `mat.job.yaml/a\nb\u001b[31m`,
    /^evenfield: cannot write to mat\.job\.yaml.a\?b\?\[31m: part/,
  ],
])('--out that is %s: one line, and nothing is written', (_, out, says) => {
  const before = readdirSync(dir);
  const { status, err, out: said } = evenfield(dir, ['make', 'mat.job.yaml', '--out', out]);
  expect([status, said]).toEqual([1, '']);
  expect(err).toMatch(says);
  expect(err).toMatch(/^\P{Cc}{1,250}\n$/u);
  expect(readdirSync(dir)).toEqual(before);
});
