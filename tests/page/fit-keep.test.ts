import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parseTree } from '../../src/job/tree.ts';
import type { JobTree } from '../../src/page/engine/ask.ts';
import { type Look, lookAt } from '../../src/page/engine/look.ts';
import { writeJob } from '../../src/page/engine/write-job.ts';
import { type Changes, fingerprint, isKept, keepChanges, letGo } from '../../src/page/parts/fit/keep.ts';
import { differences, numbersOf } from '../../src/page/parts/fit/numbers.ts';
import { withValue } from '../../src/page/state/tree.ts';

const treeOf = (file: string): JobTree => {
  const read = parseTree(readFileSync(`samples/${file}`, 'utf8'));
  if (!read.ok) throw new Error(file);
  return read.value.tree;
};

const changed = (tree: JobTree, changes: Changes): JobTree =>
  changes.reduce((whole, [path, value]) => withValue(whole, path, value), tree);

async function look(tree: JobTree): Promise<Look> {
  const seen = await lookAt(writeJob('', tree), 0);
  if (!seen.ok) throw new Error(seen.issues.map(({ says }) => says).join('; '));
  return seen.value;
}

/** The sample with a drawing of its own needs a file, which is not what is tested here. */
const SAMPLES = readdirSync('samples').filter((file) => file.endsWith('.yaml') && !file.startsWith('garden-room'));

describe.each(SAMPLES)('%s', (file) => {
  test('a layout that is kept is the first, and is let go again without a trace', async () => {
    const tree = treeOf(file);
    const seen = await look(tree);
    for (const at of [1, 4]) {
      const wanted = seen.layouts[at];
      if (!wanted) continue;
      const kept = changed(tree, keepChanges(tree, wanted, seen.job));
      const again = await look(kept);
      const place = again.layouts.map(fingerprint).indexOf(fingerprint(wanted));
      expect([at, place]).toEqual([at, 0]);
      if (seen.job.surface !== 'room-border') {
        expect(isKept(kept)).toBe(true);
        // Compared as read: keys that were not there before come last.
        if (!isKept(tree)) expect(changed(kept, letGo(kept, [kept, tree]))).toEqual(tree);
      }
    }
  }, 60_000);
});

test('numbers of a layout follow from each other', async () => {
  const { layouts, job } = await look(treeOf('passage-runner.job.yaml'));
  // 17' 9 7/16" is 213 7/16 in, by the foot of 12 in; every layout of a runner fills its run.
  for (const one of layouts) {
    const { overall, field, border, endGap, repeats, pitch } = one.layout!;
    expect(overall.along / 25.4).toBeCloseTo(213 + 7 / 16, 6);
    expect(field.along + 2 * (border + endGap)).toBeCloseTo(overall.along, 6);
    expect(repeats.along * pitch.along).toBeCloseTo(field.along, 6);
    expect(numbersOf(one, job).find(({ key }) => key === 'size')!.says).toContain(`17' 9 7/16"`);
  }
  const [a, b] = [numbersOf(layouts[0]!, job), numbersOf(layouts[1]!, job)];
  expect(differences(a, a)).toEqual([]);
  for (const { label, a: one, b: other } of differences(a, b)) expect([label, one]).not.toEqual([label, other]);
  expect(differences(a, b).length).toBeGreaterThan(0);
});
