import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestColourings, type Problem } from '../../src/colour/assign.ts';
import { difference, labOf } from '../../src/colour/difference.ts';
import { colourPairs } from '../../src/colour/pairs.ts';
import { LEAST_APART, propose } from '../../src/colour/propose.ts';
import { sharesOfParts } from '../../src/colour/shares.ts';
import { touchingParts } from '../../src/colour/touching.ts';
import { judgePair, marginOf } from '../../src/colour/verdict.ts';
import { compose } from '../../src/compose/compose.ts';
import type { Drawing } from '../../src/compose/drawing.ts';
import type { Job } from '../../src/job/job.ts';
import { fitJob } from '../../src/pipeline.ts';

/** The same as plain loops over everything: every colouring made, those not allowed taken out, the rest sorted, then taken one by one. */
function byLoops(problem: Problem): number[][] {
  const { things, edges, margins, known, leastApart, uses, distinct, least, count } = problem;
  let all: number[][] = [[]];
  for (let thing = 0; thing < things; thing++)
    all = all.flatMap((head) => margins.map((_, colour) => [...head, colour]));
  const rated = all
    .filter((colours) => new Set(colours).size === distinct)
    .filter((colours) => uses === undefined || colours.includes(uses))
    .filter((colours) => edges.every(({ one, other, parted }) => parted || colours[one] !== colours[other]))
    .map((colours) => ({
      colours,
      worstFirst: edges
        .filter(({ one, other }) => colours[one] !== colours[other])
        .map(({ one, other }) => margins[colours[one]!]![colours[other]!]!)
        .sort((a, b) => a - b),
    }));
  const allowed = rated.filter(({ worstFirst }) => worstFirst.every((margin) => margin >= least));
  allowed.sort((one, other) => {
    for (let at = 0; at < edges.length; at++) {
      const [a, b] = [one.worstFirst[at] ?? 1e9, other.worstFirst[at] ?? 1e9];
      if (a !== b) return b - a;
    }
    const along = (colours: readonly number[]) => {
      let sum = 0;
      for (const edge of edges) sum += edge.share * margins[colours[edge.one]!]![colours[edge.other]!]!;
      return sum;
    };
    if (along(one.colours) !== along(other.colours)) return along(other.colours) - along(one.colours);
    return one.colours.join() < other.colours.join() ? -1 : 1;
  });
  const taken: number[][] = [];
  const standing = [...known];
  for (const { colours } of allowed) {
    if (taken.length === count) break;
    const far = standing.every((from) => {
      let distance = 0;
      for (let thing = 0; thing < things; thing++) distance += from[thing]![colours[thing]!]!;
      return distance >= leastApart;
    });
    if (!far) continue;
    taken.push(colours);
    standing.push(problem.distances(colours));
  }
  return taken;
}

/** Problems of up to five things and five colours; margins come in few sizes, so that many are equal. */
const problems = fc
  .record({ things: fc.integer({ min: 1, max: 5 }), colours: fc.integer({ min: 2, max: 5 }), seed: fc.integer() })
  .chain(({ things, colours }) =>
    fc.record({
      things: fc.constant(things),
      colours: fc.constant(colours),
      beside: fc.array(fc.constantFrom('no', 'touch', 'parted'), { minLength: 10, maxLength: 10 }),
      margins: fc.array(fc.integer({ min: 1, max: 8 }), { minLength: 10, maxLength: 10 }),
      apart: fc.array(fc.integer({ min: 5, max: 60 }), { minLength: 10, maxLength: 10 }),
      uses: fc.option(fc.integer({ min: 0, max: colours - 1 }), { nil: undefined }),
      known: fc.boolean(),
      distinct: fc.integer({ min: 1, max: Math.min(things, colours) }),
      least: fc.constantFrom(0, 0.5, 1),
    }),
  )
  .map(({ things, colours, beside, margins, apart, uses, known, distinct, least }): Problem => {
    const pair = (list: readonly number[], a: number, b: number): number => {
      const [low, high] = [Math.min(a, b), Math.max(a, b)];
      return low === high ? 0 : list[(high * (high - 1)) / 2 + low]!;
    };
    const edges = Array.from({ length: 10 }, (_, at) => at).flatMap((at) => {
      const high = [1, 2, 2, 3, 3, 3, 4, 4, 4, 4][at]!;
      const low = at - (high * (high - 1)) / 2;
      return high < things && beside[at] !== 'no'
        ? [{ one: low, other: high, parted: beside[at] === 'parted', share: (1 + (at % 3)) / 8 }]
        : [];
    });
    const all = Array.from({ length: colours }, (_, at) => at);
    const distances = (from: readonly number[]) =>
      from.map((colour, thing) => all.map((to) => (pair(apart, colour, to) * (thing + 1)) / 15));
    return {
      things,
      edges,
      margins: all.map((one) => all.map((other) => pair(margins, one, other) / 4)),
      known: known ? [distances(Array(things).fill(0))] : [],
      distances,
      leastApart: 6,
      distinct,
      least,
      count: 4,
      ...(uses === undefined ? {} : { uses }),
    };
  });

describe('the search', () => {
  test('gives what plain loops over every colouring give', () => {
    let some = 0;
    fc.assert(
      fc.property(problems, (problem) => {
        const found = bestColourings(problem);
        expect(found.whole).toBe(true);
        expect(found.colourings.map(({ colours }) => colours)).toEqual(byLoops(problem));
        if (found.colourings.length > 1) some += 1;
      }),
      { numRuns: 400, seed: 3 },
    );
    expect(some).toBeGreaterThan(60);
  });

  // A wheel with an even rim has the chromatic number 3, one with an odd rim 4 (F. Harary, Graph Theory, 1969).
  test.each([
    [5, 4],
    [6, 3],
  ])('a wheel of %d spokes needs %d colours', (spokes, needed) => {
    const edges = Array.from({ length: spokes }, (_, at) => [
      { one: at, other: (at + 1) % spokes, parted: false, share: 1 },
      { one: at, other: spokes, parted: false, share: 1 },
    ]).flat();
    const with_ = (colours: number) =>
      bestColourings({
        things: spokes + 1,
        edges,
        margins: Array.from({ length: colours }, () => Array(colours).fill(1)),
        known: [],
        distances: () => Array(spokes + 1).fill(Array(colours).fill(100)),
        leastApart: 1,
        distinct: colours,
        least: 0,
        count: 1,
      }).colourings.length;
    expect(with_(needed)).toBe(1);
    expect(with_(needed - 1)).toBe(0);
  });

  test('eight colours for eight parts are searched whole, whether all touch, or only the ground, or their next two', () => {
    const colours = ['#efe8d6', '#23303f', '#a2492a', '#5d6b4a', '#d8a13a', '#7d94a8', '#111111', '#f7f7f7'];
    const margins = colours.map((one) => colours.map((other) => (one === other ? 0 : marginOf(judgePair(one, other)))));
    const far = colours.map((one) => colours.map((other) => difference(labOf(one), labOf(other))));
    const every = Array.from({ length: 8 }, (_, high) => Array.from({ length: high }, (_, low) => [low, high])).flat();
    for (const [kept, distinct] of [
      [every, 8],
      [every.filter(([low]) => low === 0), 4],
      [every.filter(([low, high]) => high! - low! < 3), 6],
    ] as const) {
      const found = bestColourings({
        things: 8,
        edges: kept.map(([one, other]) => ({ one: one!, other: other!, parted: false, share: 1 })),
        margins,
        known: [],
        distances: (from) => from.map((colour) => far[colour]!.map((value) => value / 8)),
        leastApart: LEAST_APART,
        distinct,
        least: 0,
        count: 3,
      });
      expect(found.whole).toBe(true);
      expect(found.colourings).toHaveLength(3);
    }
  });
});

async function draw(lines: readonly string[]): Promise<{ drawing: Drawing; job: Job }> {
  const fitted = await fitJob(['evenfield: 1', 'units: mm', 'surface: floor-cloth', ...lines].join('\n'), 'a.job.yaml');
  if (!fitted.ok) throw new Error(JSON.stringify(fitted.issues));
  const { job, motifs, fit } = fitted.value;
  return { drawing: await compose(fit.layouts[0]!, job, motifs), job };
}

const CLOTH = [
  'overall: { across: 600, along: 900 }',
  'field: { motif: octagon-and-dot, pitch: { across: 90 to 130 } }',
  'border: { motif: sawtooth, width: 60 }',
];

describe('proposals for a drawing', () => {
  test('every pair reads well, none is near another, parts of one colour stay together', async () => {
    const { drawing, job } = await draw([
      ...CLOTH,
      "palette: { bone: '#efe8d6', ink: '#23303f', rust: '#a2492a', moss: '#5d6b4a', sky: '#b9cfdc' }",
      'colours: { ground: bone, field: ink, alternate: rust, border: ink, corner: rust }',
    ]);
    const found = propose(drawing, job, job.palette, { count: 20 });
    expect(found).toMatchObject({ well: true, whole: true });
    expect(found.colours.length).toBeGreaterThan(2);
    const touching = touchingParts(drawing);
    const shares = sharesOfParts(drawing);
    const ways = [job.colours, ...found.colours];
    for (const [at, colours] of ways.entries()) {
      if (at > 0) expect(colourPairs(touching, job, colours).filter(({ reads }) => reads !== 'well')).toEqual([]);
      expect(colours.border).toBe(colours.field);
      expect(colours.corner).toBe(colours.alternate);
      for (const before of ways.slice(0, at)) {
        let distance = 0;
        for (const [part, share] of shares)
          distance += share * difference(labOf(job.palette[colours[part]]!), labOf(job.palette[before[part]]!));
        expect(distance).toBeGreaterThanOrEqual(LEAST_APART);
      }
    }
  });

  test('every colouring that reads well is proposed or near one that is', async () => {
    const { drawing, job } = await draw([
      ...CLOTH,
      "palette: { bone: '#efe8d6', ink: '#23303f', rust: '#a2492a', sky: '#b9cfdc' }",
      'colours: { ground: bone, field: ink, alternate: rust, border: ink, corner: rust }',
    ]);
    const { colours: found } = propose(drawing, job, job.palette, { count: 100 });
    const touching = touchingParts(drawing);
    const shares = [...sharesOfParts(drawing)];
    const names = Object.keys(job.palette);
    let well = 0;
    for (const ground of names)
      for (const field of names)
        for (const alternate of names) {
          const colours = { ...job.colours, ground, field, border: field, alternate, corner: alternate };
          const same = touching.some(
            ({ parts: [a, b], parted }) => !parted && colours[a] === colours[b] && job.colours[a] !== job.colours[b],
          );
          if (same || colourPairs(touching, job, colours).some(({ reads }) => reads !== 'well')) continue;
          well += 1;
          const nearest = Math.min(
            ...[job.colours, ...found].map((other) =>
              shares.reduce(
                (sum, [part, share]) =>
                  sum + share * difference(labOf(job.palette[colours[part]]!), labOf(job.palette[other[part]]!)),
                0,
              ),
            ),
          );
          expect(nearest).toBeLessThan(LEAST_APART);
        }
    expect(well).toBeGreaterThan(3);
  });

  test('where no colouring reads well the best are given, and it is said', async () => {
    const { drawing, job } = await draw([
      ...CLOTH,
      "palette: { grey: '#808080', drab: '#8a7f74', stone: '#94907f' }",
      'colours: { ground: grey, field: drab, alternate: stone, border: drab, corner: stone }',
    ]);
    const found = propose(drawing, job, job.palette, { count: 3 });
    expect(found.well).toBe(false);
  });
});

test('the shares of the parts add up to the whole work', async () => {
  const { drawing } = await draw(CLOTH);
  const shares = [...sharesOfParts(drawing).values()];
  expect(shares.length).toBeGreaterThan(3);
  expect(shares.reduce((a, b) => a + b)).toBeCloseTo(1, 9);
});

test('two colours read well exactly from a margin of 1 on', () => {
  const hex = fc.integer({ min: 0, max: 0xffffff }).map((value) => `#${value.toString(16).padStart(6, '0')}`);
  fc.assert(
    fc.property(hex, hex, (one, other) => {
      const verdict = judgePair(one, other);
      expect(marginOf(verdict) >= 1).toBe(verdict.reads === 'well');
    }),
    { numRuns: 300, seed: 2 },
  );
});
