import { expect, test } from 'vitest';
import guideLines from '../../src/check/claims/guide-lines.ts';
import { fileSet } from '../../src/check/file-set.ts';
import { smallWork } from './support/small-work.ts';
import { change, type Files } from './support/tamper.ts';

const refuted = async (files: Files): Promise<string[]> =>
  (await guideLines(fileSet(files))).filter(({ holds }) => !holds).map(({ claim }) => claim);

/** Lines between two repeats moved on by so many mm, on every line of marks alike. */
const moved = (files: Files, by: number): Files =>
  change(files, 'marks.csv', (csv) =>
    csv.replace(
      /(\d+) mm,(\d+(?:\.\d+)?),(between repeats)/g,
      (_, tape, mm, use) => `${Number(tape) + by} mm,${Number(mm) + by},${use}`,
    ),
  );

test('lines where repeats meet hold', async () => {
  expect(await refuted(smallWork())).toEqual([]);
});

test('lines between repeats 3 mm onward are refuted', async () => {
  expect(await refuted(moved(smallWork(), 3))).toContain('lines between repeats run where repeats of the plan meet');
});
