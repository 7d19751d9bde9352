import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { evenfield, folder } from './support.ts';

const GOOD =
  'evenfield: 1\nsurface: floor-cloth\noverall: { across: 24 in, along: 36 in }\nfield: { motif: diamond }\n';

/** `&a [*b, *b, …]` on every line: nine lines stand for 10⁹ values. */
const BOMB = ['a0: &a0 [x, x, x, x, x, x, x, x, x, x]']
  .concat(Array.from({ length: 9 }, (_, n) => `a${n + 1}: &a${n + 1} [${Array(10).fill(`*a${n}`).join(', ')}]`))
  .join('\n');

const TEXTS: [string, string | Uint8Array, RegExp][] = [
  ['an empty file', '', /bad\.job\.yaml is empty/],
  ['blank lines', '\n  \n', /bad\.job\.yaml is empty/],
  // PNG signature: ISO/IEC 15948, 5.2.
  ['a picture', new Uint8Array([137, 80, 78, 71, 13, 10, 26, 10, 0, 0]), /is not a text file/],
  ['bytes that are no UTF-8', new Uint8Array([...Buffer.from('title: caf'), 0xe9, 10]), /not saved as UTF-8/],
  ['UTF-16', Buffer.from(`\uFEFF${GOOD}`, 'utf16le'), /UTF-16.*UTF-8/],
  ['deep nesting', '['.repeat(100_000), /deep|nest/],
  ['deep nesting of maps', `field: ${'{ a: '.repeat(50_000)}`, /deep|nest/],
  ['an alias bomb', `${GOOD}${BOMB}\n`, /alias|repeat|\*/],
];

test.each(TEXTS)('%s gets one clear line, quickly, and never a stack trace', (_, text, says) => {
  const dir = folder();
  writeFileSync(join(dir, 'bad.job.yaml'), text);
  const began = Date.now();
  for (const command of ['fit', 'make']) {
    const { status, out, err } = evenfield(dir, [command, 'bad.job.yaml']);
    expect([status, out]).toEqual([1, '']);
    expect(err).toMatch(says);
    expect(err).not.toMatch(/^\s+at /m);
    expect(err).not.toContain('should not');
    expect(err).toMatch(/^(evenfield: )?bad\.job\.yaml\b[^\n]*\n$/);
  }
  expect(Date.now() - began).toBeLessThan(15_000);
  expect(readdirSync(dir)).toEqual(['bad.job.yaml']);
});

test('50 MB is refused by its size, before it is read', () => {
  const dir = folder();
  writeFileSync(join(dir, 'big.job.yaml'), '');
  truncateSync(join(dir, 'big.job.yaml'), 50_000_000);
  const { status, err } = evenfield(dir, ['fit', 'big.job.yaml']);
  expect(status).toBe(1);
  expect(err).toBe(
    'evenfield: big.job.yaml holds 50 MB; a job file may hold 1 MB at most (give the *.job.yaml file you wrote)\n',
  );
});

test('a file with a byte order mark reads like one without', () => {
  const dir = folder();
  writeFileSync(join(dir, 'plain.job.yaml'), `title: Mat\n${GOOD}`);
  writeFileSync(join(dir, 'marked.job.yaml'), `\uFEFFtitle: Mat\n${GOOD}`);
  const [plain, marked] = ['plain', 'marked'].map((name) => evenfield(dir, ['fit', `${name}.job.yaml`, '--json']));
  expect(plain!.status).toBe(0);
  expect(marked).toEqual(plain);
});

test('a missing file names the near ones', () => {
  const dir = folder();
  writeFileSync(join(dir, 'hallway.job.yaml'), GOOD);
  const near = evenfield(dir, ['fit', 'halway.job.yaml']);
  expect([near.status, near.err]).toEqual([
    1,
    'evenfield: there is no file halway.job.yaml (did you mean hallway.job.yaml?)\n',
  ]);
  expect(evenfield(dir, ['fit', 'hallway']).err).toContain('did you mean hallway.job.yaml?');
  expect(evenfield(folder(), ['fit', 'hall.job.yaml']).err).toContain('evenfield new hall.job.yaml writes one');
});

test('a folder in place of a file names the job in it', () => {
  const dir = folder();
  mkdirSync(join(dir, 'jobs'));
  writeFileSync(join(dir, 'jobs', 'hall.job.yaml'), GOOD);
  const { status, err } = evenfield(dir, ['make', 'jobs']);
  expect(status).toBe(1);
  expect(err).toBe(
    `evenfield: jobs is a folder, not a job file (give the job file itself, such as ${join('jobs', 'hall.job.yaml')})\n`,
  );
});

test.skipIf(process.platform === 'win32')('a pipe is not waited on', () => {
  const dir = folder();
  execFileSync('mkfifo', [join(dir, 'pipe.job.yaml')]);
  expect(evenfield(dir, ['fit', 'pipe.job.yaml']).err).toBe('evenfield: pipe.job.yaml is not an ordinary file\n');
});

test('all issues of a job come at once, each with its place, and a count', () => {
  const dir = folder();
  writeFileSync(join(dir, 'hall.job.yaml'), GOOD.replace('\nfield:', '\nfeild:').replace('24 in', '-24 in'));
  const { status, out, err } = evenfield(dir, ['fit', 'hall.job.yaml']);
  expect([status, out]).toEqual([1, '']);
  expect(err).toMatch(/^hall\.job\.yaml:3:\d+: overall\.across/m);
  expect(err).toMatch(/^hall\.job\.yaml:4:1: /m);
  expect(err).toMatch(/\n\d things to put right\.\n$/);
});

test('a file name cannot write to the terminal', () => {
  const { err } = evenfield(folder(), ['fit', 'a\u001B[31mb\r.yaml']);
  expect(err).toContain('there is no file a?[31mb?.yaml');
  expect(err).not.toContain('\u001B');
});
