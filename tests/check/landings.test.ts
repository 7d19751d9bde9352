import { describe, expect, test } from 'vitest';
import { checkFiles } from '../../src/check/index.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { recheck } from './support/recheck.ts';
import { change, changeLayout, changePath, changeSubpath, type Files } from './support/tamper.ts';

/** Scenarios made up for this test, one for every way to land and every kind of element. */
const JOBS: [name: string, edge: string, job: string][] = [
  [
    'diamonds',
    'half',
    'overall: { across: 1013, along: 1507 }\nfield: { motif: diamond, landing: half, pitch: { across: 120 to 220 } }\nborder: { motif: sawtooth, width: 50 to 90, corner: quarter-fan }',
  ],
  [
    'stars',
    'half',
    'overall: { across: 1013, along: 1507 }\nfield: { motif: eight-point-star, landing: half, pitch: { across: 180 to 320 } }\nborder: { motif: plain-band, width: 50 to 90, corner: quarter-fan }\nreserve: 11',
  ],
  [
    'squares',
    'half',
    'overall: { across: 1013, along: 1507 }\nfield: { motif: checkerboard, landing: half, pitch: { across: 180 to 320 } }\nborder: { motif: none }',
  ],
  [
    'lozenges',
    'whole',
    'overall: { across: 1013, along: 1507 }\nfield: { motif: lozenge, landing: whole, pitch: { across: 100 to 200 } }\nborder: { motif: { name: sawtooth, base: 0.7, height: 1 }, width: 40 to 70, corner: plain }',
  ],
  [
    'one repeat',
    'whole',
    'overall: { across: 400, along: 400 }\nfield: { motif: diamond, repeats: { across: 1, along: 1 }, pitch: { across: 100 to 400, along: 100 to 400 } }\nborder: { motif: none }',
  ],
  [
    'one halved repeat',
    'half',
    'overall: { across: 400, along: 600 }\nfield: { motif: diamond, landing: half, repeats: { across: 1, along: 2 }, pitch: { across: 100 to 400, along: 100 to 400 }, stretch: 0.5 to 2 }\nborder: { motif: none }',
  ],
];

async function make(job: string): Promise<Files> {
  const made = await makeFiles(
    `evenfield: 1\ntitle: Trial\nunits: mm\nsurface: floor-cloth\n${job}\n`,
    'trial.job.yaml',
  );
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.value.files;
}

const refuted = async (files: Files, changed: Files) =>
  (await recheck(files, changed)).claims.filter((one) => !one.holds).map((one) => one.claim);
const EDGES = ['left', 'right', 'near', 'far'] as const;

describe.each(JOBS)('%s landing %s', (_, edge, job) => {
  test('every claim holds, and edges are told apart', async () => {
    const files = await make(job);
    const { claims } = await checkFiles(files);
    expect(claims.filter((claim) => !claim.holds)).toEqual([]);
    for (const side of EDGES)
      expect(claims.map((one) => one.claim)).toContain(`repeats land ${edge} at the ${side} edge`);

    const other = edge === 'half' ? 'whole' : 'half';
    const otherwise = changeLayout(files, ({ layout }) => {
      for (const side of EDGES) layout.landing[side] = other;
    });
    const found = await refuted(files, otherwise);
    for (const side of EDGES) expect(found).toContain(`repeats land ${other} at the ${side} edge`);

    const turned = changeLayout(files, ({ layout: { landing } }) => {
      landing.centreAcross = landing.centreAcross === 'half' ? 'whole' : 'half';
      landing.centreAlong = 'cut';
    });
    const onCentre = await refuted(files, turned);
    expect(onCentre.some((claim) => /^repeats land \w+ on the centre line along$/.test(claim))).toBe(true);
    expect(onCentre).toContain('repeats are cut on the centre line across');
  }, 120_000);
});

test('a half with a corner moved along the edge, or taken away, is found out', async () => {
  const files = await make(JOBS[0]![2]);
  const svg = files.get('plan.svg') as string;
  const fields = [...svg.matchAll(/data-element="field"/g)].length;
  // The regions that an edge cuts come one by one; the edge each touches is among the claims refuted.
  for (let nth = 0; nth < fields; nth++) {
    const gone = change(files, 'plan.svg', (text) =>
      changePath(text, 'data-element="field"', (d) => changeSubpath(d, 0, () => undefined), nth),
    );
    const found = await refuted(files, gone);
    expect(
      found.filter((claim) => /^the field mirrors|^every piece|^every open window/.test(claim)).length,
    ).toBeGreaterThan(1);
  }
}, 240_000);
