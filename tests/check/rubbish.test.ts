import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { recheck } from './support/recheck.ts';
import { smallWork } from './support/small-work.ts';
import { change, changeLayout, type Files } from './support/tamper.ts';

const files = smallWork();
const names = [...files.keys()];

/** Whatever the files hold, every claim is a plain sentence and one of them is refuted. */
async function expectRefuted(touched: Files, what = '') {
  const { holds, claims } = await recheck(files, touched);
  expect(holds, what).toBe(false);
  for (const { claim, measured, allowed } of claims) {
    expect(claim).toMatch(/^[\w ,/-]+$/);
    for (const value of [measured, allowed]) {
      expect(['string', 'number']).toContain(typeof value);
      expect(String(value)).not.toMatch(/NaN|undefined|\[object|Infinity|at \w+ \(|TypeError|Cannot read prop/);
    }
  }
}

test('no files at all', async () => {
  await expectRefuted(new Map());
});

describe.each(names)('%s', (name) => {
  test.each([
    ['one byte', Uint8Array.of(0)],
    ['bytes that are no text', Uint8Array.of(0xff, 0xfe, 0x00, 0xd8)],
    ['null', 'null'],
    ['a list', '[]'],
    ['an empty object', '{}'],
    ['deep brackets', '['.repeat(200_000)],
    ['deep elements', '<g>'.repeat(200_000)],
    ['an entity bomb', '<!DOCTYPE l [<!ENTITY a "aa"><!ENTITY b "&a;&a;">]><svg>&b;</svg>'],
    ['many spaces', ' '.repeat(3_000_000)],
    ['many commas', ','.repeat(1_000_000)],
    ['an SVG of nothing', '<svg xmlns="http://www.w3.org/2000/svg" width="1mm" height="1mm" viewBox="0 0 1 1"/>'],
  ])('%s', async (_, content) => {
    await expectRefuted(new Map(files).set(name, content));
  });
});

test('files larger than any that is written', async () => {
  for (const name of ['layout.json', 'plan.svg', 'marks.csv', 'job-sheet.html', 'stencil-red-1.svg']) {
    const { claims } = await recheck(files, new Map(files).set(name, 'x'.repeat(101_000_000)));
    const read = claims.find((one) => one.file === name && one.claim === 'the file is there and can be read');
    expect(read).toMatchObject({ holds: false, measured: expect.stringMatching(/larger than/) });
  }
});

test('numbers that are none, or far out, in paths', async () => {
  for (const wrong of ['NaN', 'Infinity', '1e999', '9e8', '--1', '']) {
    await expectRefuted(
      change(files, 'plan.svg', (svg) => svg.replace(/(data-element="field".*? d="M)-?[\d.]+/, `$1${wrong}`)),
    );
    await expectRefuted(change(files, 'stencil-blue-1.svg', (svg) => svg.replace(/( d="M)-?[\d.]+/, `$1${wrong}`)));
  }
});

test('paths that shrink to nothing', async () => {
  for (const d of ['', 'M0 0z', 'M5 5h1z', 'M5 5', 'M0 0L0 0L0 0z']) {
    await expectRefuted(
      change(files, 'plan.svg', (svg) => svg.replace(/(data-element="field".*? d=")[^"]*/, `$1${d}`)),
    );
    await expectRefuted(change(files, 'plan.svg', (svg) => svg.replace(/(id="ground".*? d=")[^"]*/, `$1${d}`)));
    await expectRefuted(
      change(files, 'stencil-red-1.svg', (svg) => svg.replace(/(id="window-1".*? d=")[^"]*/, `$1${d}`)),
    );
    await expectRefuted(change(files, 'stencil-red-1.svg', (svg) => svg.replace(/(id="key-1".*? d=")[^"]*/, `$1${d}`)));
    await expectRefuted(change(files, 'template.svg', (svg) => svg.replace(/( d=")[^"]*/, `$1${d}`)));
  }
});

/** Paths to everything in a JSON value that the check reads. */
function places(value: unknown, path: (string | number)[] = []): (string | number)[][] {
  if (typeof value !== 'object' || value === null) return [path];
  return [
    ...(path.length > 0 ? [path] : []),
    ...Object.entries(value).flatMap(([key, inner]) => places(inner, [...path, key])),
  ];
}

const READ = [
  'evenfield',
  'job.units',
  'job.step',
  'job.bridge',
  'job.window',
  'layout',
  'palette',
  'colours',
  'taped',
  'sheets',
];
const UNREAD = /^layout\.(rank|stretch|cost|says|marks)|\.says$|^taped\.\d+\.colour|^layout\.phase/;

test('every value of layout.json replaced by one of another kind', async () => {
  const all = places(JSON.parse(files.get('layout.json') as string))
    .map((path) => path.join('.'))
    .filter((path) => READ.some((read) => path === read || path.startsWith(`${read}.`)) && !UNREAD.test(path))
    .filter((path) => !/^sheets\.[12]|passes\.\d+\.[1-9]/.test(path));
  expect(all.length).toBeGreaterThan(60);
  for (const path of all) {
    for (const wrong of [null, 'x', -7.25, { a: 1 }, [[1]]]) {
      const touched = changeLayout(files, (layout) => {
        const keys = path.split('.');
        const last = keys.pop()!;
        keys.reduce((at, key) => at[key], layout)[last] = wrong;
      });
      await expectRefuted(touched, `${path}: ${JSON.stringify(wrong)}`);
    }
  }
}, 300_000);

test('random damage to any file is never thrown about', async () => {
  const damage = fc.record({
    name: fc.constantFrom(...names),
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    length: fc.integer({ min: 0, max: 40 }),
    put: fc.oneof(
      fc.string({ maxLength: 12 }),
      fc.constantFrom('<', '>', '"', '&', 'M', 'z', '-', '1e9', '{', ']', '\u0000'),
    ),
  });
  await fc.assert(
    fc.asyncProperty(damage, async ({ name, at, length, put }) => {
      const content = files.get(name)!;
      const place = Math.floor(at * content.length);
      const text = typeof content === 'string' ? content : String.fromCharCode(...content);
      const touched = text.slice(0, place) + put + text.slice(place + length);
      const back = typeof content === 'string' ? touched : Uint8Array.from(touched, (one) => one.charCodeAt(0));
      const { claims } = await recheck(files, new Map(files).set(name, back));
      expect(claims.length).toBeGreaterThan(20);
      expect(claims.filter((claim) => /can be measured$/.test(claim.claim))).toEqual([]);
    }),
    { numRuns: 400, seed: 20 },
  );
}, 300_000);
