import { describe, expect, test } from 'vitest';
import type { Issue } from '../../src/issue.ts';
import { parseTree } from '../../src/job/tree.ts';
import type { JobTree } from '../../src/page/engine/ask.ts';
import { lookAt } from '../../src/page/engine/look.ts';
import { findOffers } from '../../src/page/engine/offers/find.ts';
import type { Offer } from '../../src/page/engine/offers/offer.ts';
import { writeJob } from '../../src/page/engine/write-job.ts';
import { valueAt, withValue } from '../../src/page/state/tree.ts';

function treeOf(text: string): JobTree {
  const read = parseTree(text);
  if (!read.ok) throw new Error(text);
  return read.value.tree;
}

const look = (tree: JobTree) => lookAt(writeJob('', tree), 0);

async function offered(tree: JobTree): Promise<{ issues: Issue[]; offers: Offer[] }> {
  const seen = await look(tree);
  const issues = seen.ok ? [] : seen.issues;
  return { issues, offers: (await findOffers(tree, issues, undefined, async () => true))! };
}

const taken = (tree: JobTree, { changes }: Offer): JobTree =>
  changes.reduce((whole, [path, value]) => withValue(whole, path, value), tree);

/** 300 mm across in 3 repeats of 100; 1025 mm along is 10 repeats of 102.5, or 10 of 100 and 12.5 mm at each end. */
const RUN = treeOf(`
evenfield: 1
units: mm
surface: runner
site: { run: 1025 }
overall: { across: 300 }
end gap: 0
field: { motif: diamond, repeats: { across: 3 }, stretch: 1, landing: whole }
border: none
`);

describe('a run that takes no whole repeats of squares', () => {
  test('is offered just the stretch, and just the gap, that the arithmetic asks for', async () => {
    const { issues, offers } = await offered(RUN);
    expect(issues.map(({ code }) => code)).toEqual(['fit/none']);
    const at = (key: string) => offers.find(({ changes }) => changes.length === 1 && changes[0]![0].join('.') === key);
    // 1025 / 10 / 100 = 1.025, to the next hundredth outwards.
    expect(at('field.stretch')!.changes[0]![1]).toBe('1 to 1.03');
    // (1025 - 10 × 100) / 2 = 12.5, to the next millimetre outwards.
    expect(at('end gap')!.changes[0]![1]).toBe('0 mm to 13 mm');
    // 1025 / 300 × 3 = 10.25 repeats of 100 mm: half ones do not land either.
    expect(at('field.landing')).toBeUndefined();
    expect(offers.map(({ by }) => by)).toEqual(offers.map(({ by }) => by).sort((a, b) => a - b));
  });

  test('every offer leads to a plan', async () => {
    const { offers } = await offered(RUN);
    expect(offers.length).toBeGreaterThan(1);
    for (const offer of offers) {
      const seen = await look(taken(RUN, offer));
      expect([offer.says, seen.ok]).toEqual([offer.says, true]);
      if (seen.ok) expect(seen.value.layouts[0]!.says).toBe(offer.leads);
    }
  });
});

test('where no single limit helps, two are let out together', async () => {
  const tree = treeOf(`
evenfield: 1
units: mm
surface: floor-cloth
overall: { across: 437, along: 1011 }
field: { motif: diamond, pitch: { across: 100, along: 100 }, stretch: 1, landing: whole }
border: none
reserve: 0
`);
  const { issues, offers } = await offered(tree);
  expect(issues.length).toBeGreaterThan(0);
  expect(offers.length).toBeGreaterThan(0);
  for (const offer of offers) expect((await look(taken(tree, offer))).ok).toBe(true);
});

test('a border that leaves no field may be narrower, or left out', async () => {
  const tree = treeOf(`
evenfield: 1
units: in
surface: floor-cloth
overall: { across: 20 to 21, along: 30 }
field: { motif: checkerboard, pitch: { across: 2 to 5 } }
border: { motif: sawtooth, width: 9 to 12, corner: plain }
`);
  const { issues, offers } = await offered(tree);
  expect(issues.length).toBeGreaterThan(0);
  expect(offers.some(({ changes }) => changes.some(([path]) => path[0] === 'border'))).toBe(true);
  for (const offer of offers) expect((await look(taken(tree, offer))).ok).toBe(true);
});

describe('what is typed wrong', () => {
  const tree = treeOf(`
evenfield: 1
units: in
surface: runner
site: { run: 12' 4", openings: { near: 33, far: 31 } }
field: { motif: diamond, repeats: { across: 4 to 6 } }
`);

  test('a range upside down is offered the right way up', async () => {
    const wrong = withValue(tree, ['field', 'repeats', 'across'], '6 to 4');
    const { offers } = await offered(wrong);
    expect(valueAt(taken(wrong, offers[0]!), ['field', 'repeats', 'across'])).toBe('4 to 6');
  });

  test('feet and inches with a dash are offered as such, a range with such an end is not cut down to that end', async () => {
    const run = ['site', 'run'];
    const { offers } = await offered(withValue(tree, run, '12-4'));
    expect(offers.map(({ changes }) => changes)).toEqual([[[run, `12' 4"`]]]);
    const wide = withValue(tree, ['overall'], { across: '2-10 to 3-2' });
    expect((await offered(wide)).offers).toEqual([]);
  });

  test('a measurement that is missing is never made up', async () => {
    for (const path of [
      ['site', 'run'],
      ['site', 'openings'],
    ]) {
      const { issues, offers } = await offered(withValue(tree, path, undefined));
      expect(issues.map(({ code }) => code)).toEqual(['job/missing']);
      for (const { changes } of offers) for (const [place] of changes) expect(place[0]).not.toBe('site');
    }
  });

  test('nothing is offered to a job that stands, and a search that is given up says nothing', async () => {
    expect(await findOffers(tree, [], undefined, async () => true)).toEqual([]);
    const { issues } = await offered(RUN);
    expect(await findOffers(RUN, issues, undefined, async () => false)).toBeUndefined();
  });
});

test('a floor as small as a slip makes it is offered repeats in both directions, in words, and no key that there is not', async () => {
  const floor = treeOf(`
evenfield: 1
units: cm
surface: floor
site: { room: { across: 2.45, along: 2.45 } }
field: { motif: diamond, pitch: { across: 22 to 45 } }
`);
  const { issues, offers } = await offered(floor);
  expect(issues.map(({ code, path }) => `${code} ${path.join('.')}`)).toEqual([
    'fit/none field.pitch.across',
    'fit/none field.pitch.along',
  ]);
  // One repeat of 2.45 cm by 2.45 cm, to the millimetre below, is all that has room.
  expect(offers.map(({ says }) => says)).toEqual(['Let a repeat be 2.4 cm wide', 'Let a repeat be 2.4 cm long']);
  const both = offers.reduce(taken, floor);
  expect(valueAt(both, ['field', 'pitch'])).toEqual({ across: '2.4 cm', along: '2.4 cm' });
  const seen = await look(both);
  expect(seen.ok ? [] : seen.issues).toEqual([]);
});
