import { describe, expect, test } from 'vitest';
import { makeFiles } from '../../src/pipeline.ts';
import { borderJob, type Edge, motifsOf, runsOf, saysOf, TURNS, twoBordersJob } from './support/every.ts';
import { failing, make, makeDrawn } from './support/make.ts';
import { changePaint, shift } from './support/paint.ts';
import { change } from './support/tamper.ts';

const borders = motifsOf('border');
const corners = motifsOf('corner').map(({ name }) => name);

/** Every border with every turn and every way to run, and what it says of that itself. */
const turns = borders.flatMap((motif) =>
  runsOf(motif).flatMap((run) =>
    TURNS.map((turn) => {
      const edge: Edge = { motif: motif.name, turn, ...(run ? { run } : {}) };
      return { edge, name: [motif.name, turn, run].filter(Boolean).join(', '), why: saysOf(motif, turn, run) };
    }),
  ),
);
const allowed = turns.filter(({ why }) => why === undefined);
const refused = turns.filter(({ why }) => why !== undefined);

describe('every border that may turn so, with all its files', () => {
  // Blocks are cut for one border each; how they stand with all others is drawn below.
  const cases = [
    ...allowed.filter(({ edge }) => edge.turn !== 'block').map(({ edge, name }) => [name, edge] as const),
    ...corners.map((corner, at): [string, Edge] => {
      const motif = borders[(at * 5) % borders.length]!.name;
      return [`${motif}, ${corner} at its corners`, { motif, turn: 'block', corner }];
    }),
  ];
  test.each(cases)('%s', async (_, edge) => {
    const made = await make(borderJob(edge));
    expect(made.refused).toBeUndefined();
    expect(await failing(made)).toEqual([]);
  });
});

describe('every border with every corner block, drawn and marked', () => {
  // Sheets of a border and of a block know nothing of each other, so these are made above, once. Two pairings to a work: the second is its inner border.
  const pairs = borders.flatMap(({ name }) => corners.map((corner): Edge => ({ motif: name, turn: 'block', corner })));
  const half = Math.ceil(pairs.length / 2);
  const works = pairs.slice(0, half).map((outer, at) => [outer, pairs[half + at] ?? pairs[0]!] as const);
  const says = ({ motif, corner }: Edge) => `${motif} with ${corner}`;
  test.each(works.map(([outer, inner]) => [`${says(outer)}, inside it ${says(inner)}`, outer, inner] as const))(
    '%s',
    async (_, outer, inner) => {
      const files = await makeDrawn(twoBordersJob(outer, inner));
      expect(await failing({ files, refused: 'not cut' })).toEqual([]);
    },
  );
});

test('a border drawn out along its sides runs on into its own corners, which are not', async () => {
  const job = borderJob({ motif: 'leaf-vine', turn: 'own' }, '{ across: 1310, along: 1570 }');
  const files = await makeDrawn(job);
  expect(await failing({ files, refused: 'not cut' })).toEqual([]);
});

test('sides drawn out otherwise than the others stand otherwise clear of the edge, but lie as far in', async () => {
  // A square work: the near and far sides run through and have a length of their own, hence lozenges of another slant.
  const edge: Edge = { motif: 'lozenge-chain', turn: 'butt' };
  const made = await make(borderJob(edge, '{ across: 900, along: 900 }'));
  expect(await failing(made)).toEqual([]);
  const out = change(made.files, 'plan.svg', (svg) =>
    changePaint(svg, ({ element, d }) =>
      /^border-(near|far)$/.test(element) ? { d: shift(d, 0, element === 'border-near' ? 0.15 : -0.15) } : undefined,
    ),
  );
  const refuted = await failing({ files: out });
  expect(refuted.map(({ claim }) => claim)).toContain('the border is even on four sides');
});

describe('every border that must not turn so says why', () => {
  test.each(refused.map(({ edge, name, why }) => [name, edge, why!] as const))('%s', async (_, edge, why) => {
    for (const job of [borderJob(edge), twoBordersJob({ motif: 'sawtooth', turn: 'block' }, edge)]) {
      const made = await makeFiles(job, 'small.job.yaml');
      expect(made.ok).toBe(false);
      if (made.ok) return;
      expect(made.issues).toHaveLength(1);
      const { code, says, hint } = made.issues[0]!;
      expect(code).toBe('job/turn');
      expect(says.toLowerCase()).toContain(edge.motif.replaceAll('-', ' '));
      expect(says).toContain(why);
      expect(says).toMatch(
        { own: /corner of its own/, mitre: /mitre|diagonal/, butt: /butt/, block: /block/ }[edge.turn],
      );
      // What it is told to write instead is allowed.
      const turn = /^turn: (\w+)$/.exec(hint ?? '')?.[1];
      expect(
        allowed.some((one) => one.edge.motif === edge.motif && one.edge.turn === turn && one.edge.run === edge.run),
      ).toBe(true);
    }
  });

  test('some are allowed and some refused of every turn but the block, which all take', () => {
    for (const turn of TURNS) {
      expect(allowed.some(({ edge }) => edge.turn === turn)).toBe(true);
      expect(refused.some(({ edge }) => edge.turn === turn)).toBe(turn !== 'block');
    }
  });
});
