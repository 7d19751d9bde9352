import { cpSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { evenfield, folder } from './support.ts';

const SAMPLES = resolve(import.meta.dirname, '../../samples');

const filesIn = (dir: string): Map<string, Buffer> =>
  new Map(
    readdirSync(dir)
      .filter((name) => !name.startsWith('.'))
      .sort()
      .map((name) => [name, readFileSync(join(dir, name))]),
  );

/** Half-hour zones and dotless i are where clocks and letter cases slip. */
const ELSEWHERE = { TZ: 'Pacific/Chatham', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8', LANGUAGE: 'tr' };
const HERE = { TZ: 'UTC', LANG: 'C', LC_ALL: 'C' };

test.each([
  ['passage-runner', 'back-passage'],
  ['scullery-floor', 'scullery-floor'],
])('%s: the same bytes in another time zone and language, from another folder', (sample, name) => {
  const top = folder();
  const [near, far] = [join(top, 'near'), join(top, 'far', 'house of mine', 'jobs')];
  for (const dir of [near, far]) mkdirSync(dir, { recursive: true });
  for (const dir of [near, far]) cpSync(join(SAMPLES, `${sample}.job.yaml`), join(dir, `${sample}.job.yaml`));
  const made = [
    evenfield(near, ['make', `${sample}.job.yaml`], { env: { ...process.env, ...HERE } }),
    evenfield(top, ['make', join(far, `${sample}.job.yaml`), '--out', join(top, 'there')], {
      env: { ...process.env, ...ELSEWHERE },
    }),
  ];
  expect(made.map(({ status, err }) => [status, err])).toEqual([
    [0, ''],
    [0, ''],
  ]);
  const [one, two] = [filesIn(join(near, 'out', name)), filesIn(join(top, 'there', name))];
  expect([...two.keys()]).toEqual([...one.keys()]);
  expect(one.size).toBeGreaterThan(10);
  const other = [...one].filter(([file, bytes]) => !bytes.equals(two.get(file)!)).map(([file]) => file);
  expect(other).toEqual([]);
});
