import { describe, expect, test } from 'vitest';
import { nameLongRuns } from '../../../src/check/read/long-runs.ts';
import { readPath } from '../../../src/check/read/path.ts';

const outlines = (d: string) => {
  const found = readPath(d);
  if (!found.ok) throw new Error(found.says);
  return found.value.outlines.map(({ corners, handles }) => [...corners, ...handles]);
};

/** Sides of one command after another, and the same with the command named each time (SVG 2, paths: a command may be left out when it repeats). */
function runs(command: string, side: (i: number) => string, count: number): [short: string, long: string] {
  const sides = Array.from({ length: count }, (_, i) => side(i));
  return [`M0 0${command}${sides.join(' ')}Z`, `M0 0${sides.map((one) => command + one).join('')}Z`];
}

describe('one command with very many sides behind it', () => {
  test.each([
    ['l', (i: number) => `${(i % 7) - 3} 1.5`],
    ['L', (i: number) => `${i},${i % 11}`],
    ['h', (i: number) => `${(i % 5) + 1}.25`],
    ['C', (i: number) => `${i} 1 ${i}.5-1 ${i + 1} ${i % 3}`],
    ['q', (i: number) => `.5.5 1e0 ${i % 3}`],
    // The flags of an arc may stand without anything between them.
    ['a', (i: number) => `5 5 0 0${i % 2}${(i % 3) + 1}-1`],
  ] as const)('%s draws what it draws when named each time', (command, side) => {
    const [short, long] = runs(command, side, 2000);
    expect(nameLongRuns(short)).not.toBe(short);
    expect(outlines(short)).toEqual(outlines(long));
  });

  test('pairs behind a move are lines', () => {
    const pairs = Array.from({ length: 2000 }, (_, i) => `${i} ${i % 13}`);
    expect(outlines(`M${pairs.join(' ')}Z`)).toEqual(
      outlines(
        `M${pairs[0]}${pairs
          .slice(1)
          .map((p) => `L${p}`)
          .join('')}Z`,
      ),
    );
  });

  test('numbers too few, or none at all, are refused as ever', () => {
    const many = '1 2 '.repeat(3000);
    expect(readPath(`M0 0l${many}3z`).ok).toBe(false);
    expect(readPath(`M0 0l${many}..z`).ok).toBe(false);
    expect(readPath(`M0 0l${many},,1 2z`).ok).toBe(false);
  });

  test('five megabytes behind one command take seconds, not minutes', () => {
    const d = `M0 0l${'1 .25-1 .5 '.repeat(450_000)}z`;
    expect(d.length).toBeGreaterThan(4_900_000);
    const begun = performance.now();
    expect(readPath(d).ok).toBe(true);
    // As it was, a quarter of this took more than ten seconds on a quiet machine and the whole sixteen times as long.
    expect(performance.now() - begun).toBeLessThan(30_000);
  });
});
