import { expect, test } from 'vitest';
import { checkFiles } from '../../src/check/index.ts';
import { makeFiles } from '../../src/pipeline.ts';

/** A field of so many diamonds each way, 100 mm each. */
async function field(repeats: number) {
  const job = [
    'evenfield: 1',
    'title: Hall',
    'units: mm',
    'surface: floor-cloth',
    `overall: { across: ${(repeats + 2) * 100}, along: ${(repeats + 2) * 100} }`,
    `field: { motif: diamond, repeats: { across: ${repeats}, along: ${repeats} } }`,
    'border: { motif: plain-band, width: 100 }',
    'stencil: { sheet: { across: 900, along: 900, rim: 25 } }',
  ];
  const made = await makeFiles(`${job.join('\n')}\n`, 'hall.job.yaml');
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.value.files;
}

async function quickest(files: Awaited<ReturnType<typeof field>>): Promise<number> {
  let best = Infinity;
  for (let round = 0; round < 3; round++) {
    const start = performance.now();
    const { claims } = await checkFiles(files);
    best = Math.min(best, performance.now() - start);
    expect(claims.filter((claim) => !claim.holds)).toEqual([]);
  }
  return best;
}

test('a plan of 10,000 repeats is proved in time that grows with its size, not with its square', async () => {
  const [small, large] = [await field(50), await field(100)];
  const [quarter, whole] = [await quickest(small), await quickest(large)];
  // Four times the pieces: 16 times the time would be quadratic.
  expect(whole / quarter).toBeLessThan(8);
  expect(whole).toBeLessThan(8000);
}, 240_000);
