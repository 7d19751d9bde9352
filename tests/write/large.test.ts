import { expect, test } from 'vitest';
import { makeFiles } from '../../src/pipeline.ts';

/** A floor of stars 48 mm wide, from wall to wall. Lengths in m. */
const floor = (across: number, along: number): string => `
evenfield: 1
title: Ballroom
surface: floor
site:
  room:
    near: ${across} m
    far: ${across} m
    left: ${along} m
    right: ${along} m
    diagonals: { near-left to far-right: ${Math.hypot(across, along).toFixed(4)} m }
field:
  motif: eight-point-star
  pitch: { across: { from: 45 mm, to: 51 mm, wish: 48 mm } }
palette: { limewash: '#efe8d8', slate: '#47545c', madder: '#9b4636' }
colours: { ground: limewash, field: slate, alternate: madder }
stencil: { sheet: { across: 24", along: 36", rim: 1" } }
`;

async function sizes(across: number, along: number) {
  const made = await makeFiles(floor(across, along), 'ballroom.job.yaml');
  if (!made.ok) throw new Error(made.issues.map(({ says }) => says).join('\n'));
  const { repeats } = made.value.layout!;
  const size = new Map([...made.value.files].map(([name, content]) => [name, content.length]));
  return { repeats: repeats.across * repeats.along, size };
}

test('a floor of 20,000 repeats has files that can be opened, and four times the floor no more than four times their size', async () => {
  const [small, large] = [await sizes(2.7, 4.5), await sizes(5.4, 9)];
  const share = large.repeats / small.repeats;
  expect(large.repeats).toBeGreaterThan(20_000);
  for (const [name, bytes] of large.size) expect([name, bytes < 4_500_000]).toEqual([name, true]);
  for (const name of ['plan.svg', 'room.svg', 'job-sheet.html', 'job-sheet.pdf', 'layout.json'])
    expect([name, large.size.get(name)! <= 1.2 * share * small.size.get(name)!]).toEqual([name, true]);
  // A repeat takes some 1,500 characters as it stands; drawings that share their rows take under a hundred.
  for (const name of ['plan.svg', 'room.svg']) expect(large.size.get(name)! / large.repeats).toBeLessThan(100);
});
