import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { sharesOfParts } from '../../src/colour/shares.ts';
import type { Job } from '../../src/job/job.ts';
import { readJob } from '../../src/job/read.ts';
import { parseTree } from '../../src/job/tree.ts';
import { allMotifs } from '../../src/motif/library.ts';
import type { Part } from '../../src/motif/motif.ts';
import type { JobTree } from '../../src/page/engine/ask.ts';
import { lookAt } from '../../src/page/engine/look.ts';
import { writeJob } from '../../src/page/engine/write-job.ts';
import {
  addChanges,
  type Changes,
  dropChanges,
  freeNameFor,
  keepChanges,
  makeOwnChanges,
  removeChanges,
  renameChanges,
  usesOf,
} from '../../src/page/parts/colours/palette.ts';
import { withValue } from '../../src/page/state/tree.ts';

const read = (tree: JobTree): Job => {
  const job = readJob(writeJob('', tree), 'x', allMotifs());
  if (!job.ok) throw new Error(job.issues.map(({ says }) => says).join('; '));
  return job.value;
};
const changed = (tree: JobTree, changes: Changes): JobTree =>
  changes.reduce((whole, [path, value]) => withValue(whole, path, value), tree);

/** What the eye sees: the colour of every part, in the job and in each of its colourways. */
const seen = ({ palette, colours, colourways = [] }: Job, parts: readonly Part[]): string[][] =>
  [colours, ...colourways.map((way) => way.colours)].map((one) => parts.map((part) => palette[one[part]]!));

/** The sample with a drawing of its own needs a file, which is not what is tested here. */
const SAMPLES = readdirSync('samples').filter((file) => file.endsWith('.yaml') && !file.startsWith('garden-room'));
const USUAL: JobTree = {
  evenfield: '1',
  units: 'in',
  surface: 'rug',
  overall: { across: '60', along: '84' },
  field: { motif: 'harlequin-with-dots' },
};

const CASES: [string, JobTree][] = [
  ['a job that says no colours', USUAL],
  ...SAMPLES.map((file): [string, JobTree] => {
    const parsed = parseTree(readFileSync(`samples/${file}`, 'utf8'));
    if (!parsed.ok) throw new Error(file);
    return [file, parsed.value.tree];
  }),
];

describe.each(CASES)('%s', (_, tree) => {
  const parts = async (): Promise<Part[]> => {
    const look = await lookAt(writeJob('', tree), 0);
    if (!look.ok) throw new Error(look.issues.map(({ says }) => says).join('; '));
    return [...sharesOfParts(look.value.drawing).keys()];
  };

  test('a colour under another name is the same to the eye, everywhere', async () => {
    const job = read(tree);
    const all = await parts();
    for (const name of Object.keys(job.palette)) {
      const next = read(changed(tree, renameChanges(tree, job, name, 'plum')));
      expect(seen(next, all)).toEqual(seen(job, all));
      expect(Object.keys(next.palette)).toEqual(Object.keys(job.palette).map((one) => (one === name ? 'plum' : one)));
    }
  });

  test('a further colour changes nothing by itself', async () => {
    const job = read(tree);
    const all = await parts();
    const next = read(changed(tree, addChanges(tree, job, all, { plum: '#4b2a4f' })));
    expect(seen(next, all)[0]).toEqual(seen(job, all)[0]);
    expect(next.palette.plum).toBe('#4b2a4f');
  });

  test('what a colour had is in the other one when it is taken out, and nothing else changes', async () => {
    const job = read(tree);
    const all = await parts();
    const names = Object.keys(job.palette);
    if (names.length < 3) return;
    for (const name of names) {
      const uses = usesOf(job, all, name);
      const isUsed = uses.parts.length + uses.ways.length > 0;
      const instead = names.find((one) => one !== name)!;
      const next = read(changed(tree, removeChanges(tree, job, all, name, isUsed ? instead : undefined)));
      expect(Object.keys(next.palette)).toEqual(names.filter((one) => one !== name));
      const wanted = seen(job, all)[0]!.map((hex) => (hex === job.palette[name] ? job.palette[instead] : hex));
      expect([name, seen(next, all)[0]]).toEqual([name, wanted]);
    }
  });

  test('a colourway that is taken changes places with the colours of the job', async () => {
    const all = await parts();
    const start = read(tree);
    const with_ = changed(tree, keepChanges(tree, all, { name: 'Kept', colours: start.colours }));
    const job = read(with_);
    const at = job.colourways!.length - 1;
    const last = seen(job, all);
    const first = changed(with_, makeOwnChanges(with_, job, all, 0, 'As it was'));
    const next = seen(read(first), all);
    expect([next[0], next[1]]).toEqual([last[1], last[0]]);
    expect(next.slice(2)).toEqual(last.slice(2));
    expect(read(changed(with_, dropChanges(with_, at))).colourways?.length ?? 0).toBe(at);
  });
});

test('paint that is told of goes with its colour', () => {
  const tree: JobTree = {
    ...USUAL,
    palette: { cream: '#efe4cc', navy: '#22384f', brick: '#9b4a32' },
    paint: { 'on hand': { navy: '1/2 pint' }, colours: { navy: { coats: '3' } } },
  };
  const job = read(tree);
  const next = changed(tree, renameChanges(tree, job, 'navy', 'night blue'));
  expect(next.paint).toEqual({ 'on hand': { 'night blue': '1/2 pint' }, colours: { 'night blue': { coats: '3' } } });
  const parts: Part[] = ['ground', 'field', 'alternate', 'border'];
  expect(changed(tree, removeChanges(tree, job, parts, 'navy', 'brick')).paint).toBeUndefined();
});

test('names that are not taken', () => {
  expect([freeNameFor('Dusk', []), freeNameFor('Dusk', ['dusk', 'Dusk 2'])]).toEqual(['Dusk', 'Dusk 3']);
});
