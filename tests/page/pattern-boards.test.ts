import { readFileSync } from 'node:fs';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test } from 'vitest';
import { good } from '../../src/issue.ts';
import { parseTree } from '../../src/job/tree.ts';
import type { JobTree } from '../../src/page/engine/ask.ts';
import { type Board, boardsOf, refusalsOf } from '../../src/page/engine/motifs.ts';
import { type Slot, takeChanges } from '../../src/page/engine/motifs-slots.ts';
import { withValue } from '../../src/page/state/tree.ts';
import type { Assets } from '../../src/pipeline.ts';

const treeOf = (file: string): JobTree => {
  const read = parseTree(readFileSync(`samples/${file}`, 'utf8'));
  if (!read.ok) throw new Error(file);
  return read.value.tree;
};
const assets: Assets = async (path) => good(new Uint8Array(readFileSync(`samples/${path}`)));
const scale = { pitch: { across: 200, along: 200 }, border: 60, inner: 30 };

const boards = (tree: JobTree, slot: Slot, own: string[] = []): Promise<Board[]> =>
  boardsOf({ tree }, { slot, scale, own }, assets);
const board = async (tree: JobTree, slot: Slot, name: string): Promise<Board> =>
  (
    await boards(
      tree,
      slot,
      [name].filter((one) => one.endsWith('.svg')),
    )
  ).find((one) => one.name === name)!;

/** Share of a board that is painted, counted in a picture that a library for SVG draws of it. */
function painted({ patch: { across, along, shapes } }: Board, part?: string): number {
  const uses = shapes
    .filter((shape) => part === undefined || shape.part === part)
    .flatMap(({ d, at }) =>
      at.flatMap((x, n) => (n % 2 === 0 ? [`<path transform="translate(${x} ${at[n + 1]})" d="${d}"/>`] : [])),
    );
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${across}" height="${along}">${uses.join('')}</svg>`;
  const { pixels, width, height } = new Resvg(svg).render();
  let sum = 0;
  for (let at = 3; at < pixels.length; at += 4) sum += pixels[at]!;
  return sum / 255 / width / height;
}

const passage = treeOf('passage-runner.job.yaml');

describe('boards', () => {
  test('show two repeats across, at the pitch of the plan', async () => {
    for (const { patch } of await boards(passage, 'field')) expect([patch.across, patch.along]).toEqual([400, 500]);
  });

  // Plain geometry: two triangles base to base take half of the rectangle round them, and squares by turns half of a floor.
  test.each(['diamond', 'checkerboard'])('%s paints half of its board', async (name) => {
    expect(painted(await board(passage, 'field', name))).toBeCloseTo(0.5, 2);
  });

  // The same, of which the board shows one repeat and a part of the next, from its tip on: √3 times as long as wide, so the rest is 500 / (200 √3) - 1 repeats.
  test('lozenges are true to shape on it', async () => {
    const rest = 500 / (200 * Math.sqrt(3)) - 1;
    expect(painted(await board(passage, 'field', 'lozenge'))).toBeCloseTo((0.5 + rest ** 2) / (1 + rest), 3);
  });

  // Plain geometry: a board of 4.2 by 5.25 widths has a band of one width along its far side and one down its left side.
  test('a plain band stands at the far side and at the left of its board', async () => {
    const tree = withValue(passage, ['border'], { motif: 'sawtooth', turn: 'butt' });
    expect(painted(await board(tree, 'border', 'plain-band'))).toBeCloseTo((4.2 + 4.25) / (4.2 * 5.25), 2);
  });

  test('by turns, a board shows the other motif in every second place', async () => {
    const tree = withValue(passage, ['field'], { motif: 'checkerboard', alternate: { by: 'checker' } });
    const mixed = painted(await board(tree, 'alternate', 'basketweave'));
    const [one, other] = [await board(passage, 'field', 'checkerboard'), await board(passage, 'field', 'basketweave')];
    // As many places of the one as of the other.
    expect(mixed).toBeCloseTo((painted(one) + painted(other)) / 2, 2);
    expect(Math.abs(painted(one) - painted(other))).toBeGreaterThan(0.1);
  });

  test('a drawing of the person’s own hangs among the others', async () => {
    const tree = treeOf('garden-room-rug.job.yaml');
    const own = await board(tree, 'field', './three-leaves.svg');
    expect(own.patch.shapes.length).toBeGreaterThan(0);
    expect(painted(own)).toBeGreaterThan(0.05);
  });

  test('a job that cannot be read still shows what there is', async () => {
    const broken = withValue(passage, ['site', 'run'], 'long');
    const found = await boards(broken, 'field');
    expect(found.map(({ name }) => name)).toEqual((await boards(passage, 'field')).map(({ name }) => name));
    expect(painted(found.find(({ name }) => name === 'checkerboard')!)).toBeCloseTo(0.5, 2);
  });
});

describe('what cannot go together', () => {
  const why = (tree: JobTree, slot: Slot) => refusalsOf({ tree }, { slot, own: [] }, assets);

  test('is told in the words of reading the job with it', async () => {
    const { readJob } = await import('../../src/job/read.ts');
    const { allMotifs } = await import('../../src/motif/library.ts');
    const { writeJob } = await import('../../src/page/engine/write-job.ts');
    const tree = withValue(passage, ['border'], { motif: 'greek-key', turn: 'block' });
    const refused = (await why(tree, 'turn'))!;
    expect(Object.keys(refused).sort()).toEqual(['butt', 'mitre']);
    for (const [name, words] of Object.entries(refused)) {
      const tried = takeChanges(tree, 'turn', name).reduce((all, [path, value]) => withValue(all, path, value), tree);
      const read = readJob(writeJob('', tried), 'x', allMotifs());
      const says = read.ok ? [] : read.issues.map((issue) => issue.says);
      expect(words.map((word) => word.replace(/\.$/, '').toLowerCase())).toEqual(says.map((one) => one.toLowerCase()));
    }
  });

  test('what is not refused reads without an issue more', async () => {
    const { readJob } = await import('../../src/job/read.ts');
    const { allMotifs } = await import('../../src/motif/library.ts');
    const { writeJob } = await import('../../src/page/engine/write-job.ts');
    const tree = withValue(passage, ['field'], {
      motif: 'checkerboard',
      alternate: { by: 'row', with: 'basketweave' },
    });
    for (const slot of ['field', 'alternate', 'inset', 'border', 'corner', 'inner', 'medallion'] as const) {
      const refused = (await why(tree, slot))!;
      const known = readJob(writeJob('', tree), 'x', allMotifs());
      const before = known.ok ? 0 : known.issues.length;
      for (const { name } of await boards(tree, slot)) {
        const tried = takeChanges(tree, slot, name).reduce((all, [path, value]) => withValue(all, path, value), tree);
        const read = readJob(writeJob('', tried), 'x', allMotifs());
        const more = (read.ok ? 0 : read.issues.length) > before;
        expect([slot, name, Object.hasOwn(refused, name)]).toEqual([slot, name, more]);
      }
    }
  });

  test('it is given up when it is asked anew', async () => {
    let left = 3;
    const found = await refusalsOf({ tree: passage }, { slot: 'field', own: [] }, assets, async () => {
      left -= 1;
      return left > 0;
    });
    expect(found).toBeUndefined();
  });
});
