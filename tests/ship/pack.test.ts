import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { endInstalled, installed, ROOT, run } from './installed.ts';

const own = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
let user: Awaited<ReturnType<typeof installed>>;
beforeAll(async () => {
  user = await installed();
}, 600_000);
afterAll(endInstalled);

const inPackage = (path: string) => join(user.folder, 'node_modules/evenfield', path);

test('holds the command, the page, the engine with its types, and the licence, and nothing else', () => {
  const kinds =
    /^(dist\/(evenfield|index)\.js|dist\/parts\/.*\.js|dist\/types\/.*\.d\.ts|dist\/page\/[^/]+|README\.md|LICENSE|package\.json)$/;
  const paths = user.packed.files.map(({ path }) => path);
  expect(paths.filter((path) => !kinds.test(path))).toEqual([]);
  for (const path of [
    'dist/evenfield.js',
    'dist/index.js',
    'dist/types/index.d.ts',
    'dist/page/index.html',
    'dist/page/licences.txt',
    'LICENSE',
  ])
    expect(paths).toContain(path);
  expect(paths.filter((path) => /test|\.map$/.test(path))).toEqual([]);
});

test('tells nothing of the machine it was made on', () => {
  for (const { path } of user.packed.files) {
    const text = readFileSync(inPackage(path), 'latin1');
    for (const place of [ROOT, dirname(user.packed.file), ...(homedir() === '/root' ? ['/root/'] : [homedir()])])
      expect(text.includes(place), `${path} names ${place}`).toBe(false);
    expect(text.includes('sourceMappingURL'), path).toBe(false);
  }
});

test('is 2.2 MB or less to fetch, and 6 MB on the disk', () => {
  const { size, unpackedSize } = user.packed;
  expect(size).toBeLessThan(2.2e6);
  expect(unpackedSize).toBeLessThan(6e6);
});

test('needs no install scripts', () => {
  // docs.npmjs.com/cli/using-npm/scripts: these run where a package is installed.
  for (const name of Object.keys(own.dependencies)) {
    const { scripts = {} } = JSON.parse(readFileSync(join(ROOT, 'node_modules', name, 'package.json'), 'utf8'));
    expect([name, scripts.preinstall, scripts.install, scripts.postinstall]).toEqual([
      name,
      undefined,
      undefined,
      undefined,
    ]);
  }
  expect([own.scripts.preinstall, own.scripts.install, own.scripts.postinstall]).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});

test('its command makes a job and proves it', () => {
  expect(run(user, ['--version'])).toEqual({ status: 0, out: `${own.version}\n`, err: '' });
  const size = ['--surface', 'floor-cloth', '--wide', '14 3/8"', '--long', '23 5/16"', '--motif', 'diamond'];
  expect(run(user, ['new', 'mat.job.yaml', '--title', 'Mat', ...size]).status).toBe(0);
  expect(run(user, ['make', 'mat.job.yaml']).status).toBe(0);
  const [made] = readdirSync(join(user.folder, 'out'));
  const checked = run(user, ['check', `out/${made}`]);
  expect(checked.status, checked.out).toBe(0);
});

test('its page is served', async () => {
  const { child, address } = await user.page();
  const page = await (await fetch(address)).text();
  expect(page).toContain('<title>Evenfield</title>');
  expect(page.length).toBeGreaterThan(1e6);
  child.kill();
  for (let waited = 0; child.exitCode === null && child.signalCode === null && waited < 100; waited++) await pause(50);
});

test('its engine is imported by plain Node', () => {
  const program =
    "const { parseLength } = await import('evenfield'); console.log(JSON.stringify(parseLength('1 in')));";
  writeFileSync(join(user.folder, 'program.mjs'), program);
  const ran = spawnSync(process.execPath, ['program.mjs'], { cwd: user.folder, encoding: 'utf8' });
  // 25.4 mm: 16 CFR 500.19.
  expect(JSON.parse(ran.stdout)).toEqual({ ok: true, mm: 25.4, unit: 'in' });
});

test('a program that imports it is checked against its types', () => {
  const program = `
import { check, fit, make, motifs, parseLength, readJob, writeIssue, writeLength } from 'evenfield';
import type { Claims, Found, Issue, Job, Layout, Result, RoomLayout, Work } from 'evenfield';
const read: Result<Job> = await readJob('', { name: 'hall', named: new Map([['a.svg', '<svg/>']]) });
const found: Result<Found> = await fit('', { most: 3 });
if (found.ok) {
  if (found.value.kind === 'rectangle') { const [one]: Layout[] = found.value.layouts; const mm: number | undefined = one?.pitch.across; void mm; }
  else { const [one]: RoomLayout[] = found.value.layouts; void one?.runs; }
}
const made: Result<Work> = await make('', { choose: 2 });
if (made.ok) { const claims: Claims = await check(made.value.files); void claims; }
else { const issues: Issue[] = made.issues; issues.map((issue) => writeIssue(issue, 'hall')); }
if (read.ok) writeLength(12, read.value.units, read.value.step);
const length = parseLength('1 in'); if (length.ok) { const mm: number = length.mm; void mm; }
for (const { name, parameters } of await motifs()) { const text: string = name; void [text, parameters]; }
// @ts-expect-error a job is text
await fit(12);
// @ts-expect-error a rank is a number
await make('', { choose: 'best' });
`;
  writeFileSync(join(user.folder, 'program.mts'), program);
  const tsc = join(ROOT, 'node_modules/typescript/bin/tsc');
  const words = '--ignoreConfig --noEmit --strict --module nodenext --target es2022 --lib es2023 program.mts'.split(
    ' ',
  );
  const ran = spawnSync(process.execPath, [tsc, ...words], { cwd: user.folder, encoding: 'utf8' });
  expect([ran.status, ran.stdout]).toEqual([0, '']);
});
