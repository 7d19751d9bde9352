import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { judge } from './judge.ts';
import { toBytes } from './kind.ts';
import { caseOf, KINDS, shareOut } from './kinds.ts';
import { randomOf } from './random.ts';

const SEED = 20;
const CASES = 300;
const FIXTURES = 'tests/fuzz/fixtures';
const fixtures = readdirSync(FIXTURES).sort();

/** A whole work takes long to make; what is made is proved in tests/check. */
const names = [...KINDS.keys()].filter((name) => name !== 'make');

describe.each([...shareOut(CASES, names)])('%s', (name, count) => {
  const kind = KINDS.get(name)!;
  // What is loaded and compiled on first use belongs to no case.
  beforeAll(async () => judge(kind, await caseOf(name, SEED, -1)));

  test(`${count} cases: ${kind.says}`, async () => {
    for (let number = 0; number < count; number++) {
      const { wrong } = await judge(kind, await caseOf(name, SEED, number));
      expect(wrong, `${name}:${number}, seed ${SEED}`).toBeUndefined();
    }
  });
});

describe('what once went wrong', () => {
  test.each(fixtures)('%s', async (file) => {
    const kind = KINDS.get(file.split('.')[0]!)!;
    const bytes = new Uint8Array(readFileSync(`${FIXTURES}/${file}`));
    // What is loaded and compiled on first use belongs to no case; a whole work has time for that.
    if (kind.limit < 10) await judge(kind, bytes);
    expect((await judge(kind, bytes)).wrong).toBeUndefined();
  });
});

test('a seed gives the same cases again, and others give others', async () => {
  for (const name of names) {
    const [once, again, other] = await Promise.all([caseOf(name, 1, 7), caseOf(name, 1, 7), caseOf(name, 2, 7)]);
    expect(again).toEqual(once);
    expect(other).not.toEqual(once);
  }
});

test('without damage the written files hold', async () => {
  const kind = KINDS.get('check')!;
  expect(await judge(kind, toBytes('[]'))).toMatchObject({ ended: 'holds' });
});

test('what a case must not do is seen', async () => {
  const kind = KINDS.get('length')!;
  const saying = (line: string) =>
    judge({ ...kind, run: async () => ({ ended: 'taken', lines: [line] }) }, new Uint8Array());
  for (const line of [
    'a\n    at x (y)',
    'TypeError: x',
    'it is NaN mm',
    '[object Object]',
    'a\u001b[2J',
    'x'.repeat(4000),
  ])
    expect((await saying(line)).wrong, line).toMatch(/^says /);
  expect((await saying('3 1/2" is allowed')).wrong).toBeUndefined();
  const slow = async () => {
    const end = process.cpuUsage().user + 60_000;
    while (process.cpuUsage().user < end) randomOf('busy').number();
    return { ended: 'taken', lines: [] };
  };
  expect((await judge({ ...kind, limit: 0.05, run: slow }, new Uint8Array())).wrong).toMatch(/^took 0\.\d s/);
  const thrown = await judge({ ...kind, run: () => Promise.reject(new Error('tripped')) }, new Uint8Array());
  expect(thrown).toMatchObject({ ended: 'thrown', wrong: expect.stringContaining('tripped') });
});
