import { describe, expect, test } from 'vitest';
import { standsAlone, takesTurns } from '../../src/motif/alone.ts';
import type { Motif } from '../../src/motif/motif.ts';
import { fieldJob, motifsOf } from './support/every.ts';
import { failing, makeDrawn } from './support/make.ts';

/** Refuted claims of the plan and the marks; nothing is cut here. */
const refuted = async (job: string) => failing({ files: await makeDrawn(job), refused: 'not cut' });

const fields = motifsOf('field');
const WAYS = ['row', 'column', 'checker'] as const;

/** Two that draw one and the same in a square: no turns to be seen. */
const SAME = new Set(['diamond lozenge', 'lozenge diamond']);

describe('repeats by turns in exchanged colours: every field that can', () => {
  const cases = fields.filter(takesTurns).map((motif, at) => [motif.name, WAYS[at % 3]!, motif] as const);
  test.each(cases)('%s by %s', async (_, by, motif) => {
    expect(await refuted(fieldJob(motif, { across: 3, along: 4 }, [], `, alternate: ${by}`))).toEqual([]);
  });
  test('more than half of all fields can', () => expect(cases.length).toBeGreaterThan(fields.length / 2));
});

describe('two motifs by turns: every one that stands in its own repeat, with the third after it', () => {
  const alone = fields.filter(standsAlone);
  const pairs = alone
    .map((motif, at): [string, (typeof WAYS)[number], Motif, string] => {
      const other = alone[(at + 3) % alone.length]!;
      return [`${motif.name} ${other.name}`, WAYS[(at + 1) % 3]!, motif, other.name];
    })
    .filter(([pair]) => !SAME.has(pair));
  test.each(pairs)('%s by %s', async (_, by, motif, other) => {
    const job = fieldJob(motif, { across: 3, along: 4 }, [], `, alternate: { by: ${by}, with: ${other} }`);
    expect(await refuted(job)).toEqual([]);
  });

  test('rows said to be of the other motif, or of one by its name in the job file, are refuted', async () => {
    const star = fields.find(({ name }) => name === 'eight-point-star')!;
    const files = await makeDrawn(
      fieldJob(star, { across: 3, along: 4 }, [], ', alternate: { by: row, with: four-petal }'),
    );
    const marks = String(files.get('marks.csv'));
    expect(marks).toContain('row 2 of four-petal flower');
    expect(marks).toContain('row 3 of eight-point star');
    for (const [from, to] of [
      ['row 2 of four-petal flower', 'row 2 of eight-point star'],
      ['row 3 of eight-point star', 'row 3 of eight-point-star'],
    ] as const) {
      const changed = new Map([...files, ['marks.csv', marks.replaceAll(from, to)] as const]);
      expect(await failing({ files: changed, refused: 'not cut' })).not.toEqual([]);
    }
  });
});
