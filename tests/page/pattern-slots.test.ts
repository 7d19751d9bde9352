import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/read.ts';
import { allMotifs } from '../../src/motif/library.ts';
import type { JobTree } from '../../src/page/engine/ask.ts';
import {
  besideChanges,
  type Change,
  NONE,
  namedAt,
  type Slot,
  settingChanges,
  takeChanges,
} from '../../src/page/engine/motifs-slots.ts';
import { writeJob } from '../../src/page/engine/write-job.ts';
import { withValue } from '../../src/page/state/tree.ts';

const JOB: JobTree = {
  evenfield: '1',
  units: 'in',
  surface: 'rug',
  overall: { across: '60', along: '84' },
  field: { motif: 'diamond' },
};
const changed = (tree: JobTree, changes: readonly Change[]): JobTree =>
  changes.reduce((whole, [path, value]) => withValue(whole, path, value), tree);
const take = (tree: JobTree, slot: Slot, name: string): JobTree => changed(tree, takeChanges(tree, slot, name));
const read = (tree: JobTree) => {
  const job = readJob(writeJob('', tree), 'rug', allMotifs());
  if (!job.ok) throw new Error(job.issues.map(({ says }) => says).join('; '));
  return job.value;
};

describe('taking a motif', () => {
  test('the job reads it, wherever it stands', () => {
    const whole = [
      ['field', 'checkerboard'],
      ['alternate', 'basketweave'],
      ['border', 'greek-key'],
      ['inner', 'dentil'],
      ['inner-corner', 'knot'],
      ['medallion', 'compass-rose'],
    ] as const;
    const job = read(whole.reduce((tree, [slot, name]) => take(tree, slot, name), JOB));
    expect(job.field.motif).toBe('checkerboard');
    expect(job.field.alternation).toMatchObject({ by: 'checker', other: { motif: 'basketweave' } });
    expect([job.border.motif, job.border.turn]).toEqual(['greek-key', 'own']);
    expect([job.inner?.motif, job.inner?.corner.motif]).toEqual(['dentil', 'knot']);
    expect(job.medallion?.motif).toBe('compass-rose');
  });

  test('what was said beside it stays, also where it was written short', () => {
    const short = { ...JOB, border: 'sawtooth' };
    expect(take(short, 'corner', 'knot').border).toEqual({ motif: 'sawtooth', corner: 'knot' });
    const wide = { ...JOB, border: { motif: 'sawtooth', width: '4' } };
    expect(take(wide, 'border', 'rope').border).toEqual({ motif: 'rope', width: '4' });
    const turns = { ...JOB, field: { motif: 'checkerboard', alternate: 'row' } };
    expect(take(turns, 'alternate', 'basketweave').field).toEqual({
      motif: 'checkerboard',
      alternate: { by: 'row', with: 'basketweave' },
    });
  });

  test('settings of the motif before are not those of the next', () => {
    const set = { ...JOB, border: { motif: { name: 'greek-key', turns: '3' } } };
    expect(take(set, 'border', 'sawtooth').border).toEqual({ motif: 'sawtooth' });
  });

  test('a corner of its own is asked of no border that has none', () => {
    const own = { ...JOB, border: { motif: 'greek-key', turn: 'own' } };
    expect(read(take(own, 'border', 'sawtooth')).border.turn).toBe('block');
  });

  test('what is put back leaves no trace', () => {
    for (const slot of ['inset', 'medallion', 'inner'] as const) {
      const name = slot === 'medallion' ? 'compass-rose' : slot === 'inner' ? 'dentil' : 'eight-point-star';
      expect(take(take(JOB, slot, name), slot, '')).toEqual(JOB);
    }
    expect(read(take(JOB, 'border', NONE)).border.motif).toBe('none');
  });
});

describe('settings', () => {
  test('are said with the name, and go with the last of them', () => {
    const one = changed(
      { ...JOB, border: 'greek-key' },
      settingChanges({ ...JOB, border: 'greek-key' }, 'border', 'turns', '3'),
    );
    expect(namedAt(one, 'border')).toEqual({ name: 'greek-key', settings: { turns: '3' } });
    expect(read(one).border.settings.turns).toBe(3);
    const none = changed(one, settingChanges(one, 'border', 'turns', undefined));
    expect(none.border).toEqual({ motif: 'greek-key' });
  });

  test('beside the motif', () => {
    const tree = { ...JOB, field: { motif: 'checkerboard', alternate: 'row' } };
    expect(changed(tree, besideChanges(tree, 'alternate', 'by', 'column')).field).toEqual({
      motif: 'checkerboard',
      alternate: { by: 'column' },
    });
  });
});
